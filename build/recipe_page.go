package build

import (
	"html/template"
	"slices"

	"stillroom/content"
)

// A RecipePage is all that the page of a recipe shows.
type RecipePage struct {
	Shell
	Name        string
	Summary     string
	Kind        Link   // to its shelf in the larder
	Card        string // address of its card
	Fill        string
	Picture     *Picture
	Pictures    []Picture
	Corrections []Correction
	Facts       []Fact // makes, times
	HeadNote    template.HTML
	Scaler      *Scaler
	Ingredients []IngredientGroup
	Weights     []WeightNote // where the weight of a cup is from
	Gear        []string
	Method      []Part
	Keeping     []KeepingBlock
	Points      string   // where water boils and jelly sets, by altitude; empty where nothing has to set
	Cautions    []string // the recipe's own, then the usual ones
	Canned      bool     // at least one way is shelf-stable
	Safety      Link     // the site's page on canning; zero if it has none
	Asked       Asked
	Notes       template.HTML
	Log         []LogEntry
	Heard       []EpisodeCard
	Produce     []Link
	Season      []Link
	Ring        *SeasonRing // nil for what is made all year
	Day         *DayLine    // nil where too little is said of times
	Ways        []Link
	Tags        []string
	Credit      string
	Published   Day
	Updated     Day
	Checked     Day   // when it was last checked against the tables of tested processes
	Beside      []Jar // others that use the same produce, or are of the same kind
}

func (e *edition) recipePage(t told) *RecipePage {
	r, ways := t.Recipe, waysOf(t.Recipe)
	p := &RecipePage{
		Name:        r.Name.V,
		Summary:     r.Summary.V,
		Kind:        Link{Name: nameKind(r.Kind.V).one, Address: recipesAddress + "#" + string(r.Kind.V)},
		Card:        cardAddress(r),
		Fill:        fill(r),
		Picture:     e.picture(r.Picture),
		Pictures:    e.pictures(r.Pictures),
		Corrections: corrections(r),
		Facts:       recipeFacts(r),
		HeadNote:    t.method.Before,
		Scaler:      scaler(r, t.lines),
		Ingredients: t.ingredients,
		Weights:     weightNotes(t.lines),
		Gear:        typesetAll(r.Gear),
		Method:      markedSteps(r, t.lines, t.method.Parts),
		Keeping:     t.keeping,
		Points:      points(r),
		Cautions:    append(texts(r.Cautions), cautionsFor(ways)...),
		Canned:      slices.ContainsFunc(ways, content.Way.Canned),
		Safety:      e.safetyPage(),
		Asked:       t.asked,
		Notes:       t.method.After,
		Log:         kitchenLog(r.Batches),
		Heard:       e.heardIn(r),
		Produce:     produceLinks(r),
		Season:      seasonLinks(r),
		Ring:        seasonRing(r),
		Day:         dayLine(r, e.settings.Altitude.V),
		Ways:        wayLinks(ways),
		Tags:        texts(r.Tags),
		Credit:      r.InspiredBy.V,
		Published:   day(r.Published.V),
		Updated:     day(r.Updated.V),
		Checked:     day(r.Checked.Date.V),
		Beside:      jars(e.beside(r)),
	}
	p.Shell = e.shell(leaf{
		address:     recipeAddress(r),
		name:        r.Name.V,
		description: r.Summary.V,
		trail:       []Link{{Name: "Recipes", Address: recipesAddress}},
		picture:     r.Picture,
		article:     true,
		nodes:       []node{e.recipeInJSON(r)},
		scripts:     []string{"kept.js", "amount.js", "altitude.js", "scaler.js", "stove.js", "drawings.js"},
		styles:      append([]string{"drawings.css"}, noticeStyles(p.Corrections)...),
	})
	p.Vessels = vessels(p.Beside)
	return p
}

func recipeFacts(r *content.Recipe) []Fact {
	makes := measure("Makes", r.Yield.V.Quantity, "")
	makes.ID = "makes"
	all := []Fact{
		makes,
		measure("Hands on", r.Times.HandsOn.V.Quantity, ""),
		measure("Cooking", r.Times.Cooking.V.Quantity, ""),
		measure("Waiting", r.Times.Waiting.V.Quantity, ""),
	}
	return slices.DeleteFunc(all, func(f Fact) bool { return f.Number == "" })
}

func waysOf(r *content.Recipe) []content.Way {
	var ways []content.Way
	for _, k := range r.Keeping {
		if !slices.Contains(ways, k.Way.V) {
			ways = append(ways, k.Way.V)
		}
	}
	return ways
}

func texts(fields []content.Field[string]) []string {
	var all []string
	for _, f := range fields {
		all = append(all, f.V)
	}
	return all
}

func typesetAll(fields []content.Field[string]) []string {
	all := texts(fields)
	for i := range all {
		all[i] = typeset(all[i])
	}
	return all
}

func produceLinks(r *content.Recipe) []Link {
	var links []Link
	for _, p := range r.Produce {
		links = append(links, Link{Name: p.V, Address: produceAddress(p.V)})
	}
	return links
}

func seasonLinks(r *content.Recipe) []Link {
	var links []Link
	for _, m := range Season(r) {
		links = append(links, Link{Name: m.String(), Address: monthAddress(m)})
	}
	return links
}

func wayLinks(ways []content.Way) []Link {
	var links []Link
	for _, w := range ways {
		links = append(links, Link{Name: nameWay(w).name, Address: wayAddress(w)})
	}
	return links
}

// safetyPages are the slugs under which a site keeps its page on canning.
var safetyPages = []string{"canning-safely", "canning-safety", "safety"}

func (e *edition) safetyPage() Link {
	for _, s := range safetyPages {
		for _, p := range e.pages {
			if p.Slug == s {
				return Link{Name: p.Name.V, Address: pageAddress(p)}
			}
		}
	}
	return Link{}
}
