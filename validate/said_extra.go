package validate

import (
	"slices"

	"stillroom/content"
)

// saidExtra reports readers told to put into jars what no process was tested
// with: as many peppers as they like, flour, a knob of butter.
var saidExtra = &Rule{
	ID:       "said-extra",
	Severity: Error,
	Summary:  "readers told to add vegetables, starch or fat to a canned recipe",
	Doc: `A note that says "add as many peppers as you like" makes another recipe of the one
that was tested: more vegetables bring less acid, and starch and fat keep the heat
out of the middle of the jar. Less of a vegetable is always allowed, another kind of
pepper as well, and anything at all may be stirred in when the jar is opened.`,
	Source: Source{
		Title:   "Preserve it: how to make safe personalized recipes, UC Master Food Preservers of the Central Sierra",
		Address: "https://www.ucanr.edu/site/uc-master-food-preservers-central-sierra/article/preserve-it-series-how-make-safe-personalized",
	},
	Practice: &Practice{
		Phrases: `add~|use~|put~|throw~|toss~|stir~ .. as_many|as_much|extra|more|twice|double|another|plenty_of|a_few_more|any_amount_of|lots_of .. @vegetable
			as_many|as_much .. @vegetable .. as_you_like|as_you_please|as_you_want|as_you_wish; @vegetable .. to_taste|to_your_taste|as_you_like|as_you_please
			add~|put~|throw~|toss~|stir~ .. can|tin|cup|handful|bunch|pound of .. corn|beans|peas|mushrooms|carrots|celery|onions|peppers
			tuck~|slip~|drop~|push~|poke~ .. few|several|handful .. @vegetable .. in|into .. @jar
			thicken~ .. with .. flour|cornstarch|corn_starch|cornflour|arrowroot|tapioca ... before|jar~|jars|can|canning|process~; flour|cornstarch|corn_starch|cornflour|arrowroot .. to|in|into .. each|every .. @jar
			butter|cream|milk|cheese|lard|bacon|oil .. in|into|to .. each|every .. @jar; add~|put~|drop~ .. butter|cream|milk|cheese|lard|bacon .. @jar
			with|like|likes|want|wants|prefer .. extra|another|more|twice|double .. @vegetable; can|tin|cup|handful|bunch|pound of .. corn|beans|peas|mushrooms|carrots|celery|onions|peppers .. thrown|tossed|stirred|added|mixed in`,
		Where:   addedForJars,
		Message: "the process was not tested with that",
		Advice:  "Say: stir it in when the jar is opened, or leave it out.",
	},
}

// addedForJars leaves out what goes in when a jar is opened, what stays cold, and
// more of what fills the jars.
func addedForJars(t *Text, s *sentence, h hit) bool {
	if t.Recipe == nil || !inCanned(t, s, h) || s.has(famOpened) || s.has(famEat) && !s.isAny(h.from, "use") || t.fillsMoreJars(s, h) {
		return false
	}
	return !s.anyOf("fewer less cut reduce dried powder powdered flakes serve supper dinner soup stew plate pot skillet pan toast bread water salt")
}

// fillsMoreJars reports whether the vegetable of a hit is the only one of a
// recipe for a pressure canner: more of it fills more jars. More of it in every
// jar is another pack, and under vinegar it takes more acid.
func (t *Text) fillsMoreJars(s *sentence, h hit) bool {
	if !t.hasWay(content.PressureCanner) || t.hasWay(content.BoilingWater, content.AtmosphericSteam) || len(t.Recipe.Produce) != 1 {
		return false
	}
	if s.has(famJar) && s.anyOf("each every") {
		return false
	}
	more := false
	for i := h.from; i < h.to; i++ {
		if !s.is(i, famVegetable) {
			continue
		}
		if more = t.isTheProduce(s, i); !more {
			return false
		}
	}
	return more
}

// isTheProduce reports whether a vegetable is the one of the recipe: beans are
// its green beans, and kidney beans or a can of beans are not.
func (t *Text) isTheProduce(s *sentence, i int) bool {
	name := t.Recipe.Produce[0].V
	if !slices.Contains(singulars(name), singular(s.word(i))) || s.anyIn("can cans tin tins canned", i-3, i) {
		return false
	}
	alone, _ := LookUpProduce(s.word(i))
	called, ok := LookUpProduce(s.words(max(i-1, 0), i+1))
	its, _ := LookUpProduce(name)
	return !ok || called.Name == alone.Name || called.Name == its.Name
}
