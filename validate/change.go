package validate

import "stillroom/content"

// A Change is something that readers ask whether they may change in a recipe,
// and what is published on it.
type Change struct {
	ID      string // double-batch; never reused
	Topic   string // "Jars and batches": what it belongs to, as a heading
	Asks    string // "A double batch": what would be changed, as a heading
	Verdict Verdict
	Says    string // a sentence or two for readers; never that anything is safe
	Source  Source
}

// A Verdict says what is published on a change.
type Verdict string

// The verdicts. Unknown is a verdict of its own: nobody has tested it, or
// nobody has published that they did, so nobody can say that it may be done.
const (
	May     Verdict = "may"
	MayNot  Verdict = "may-not"
	Unknown Verdict = "unknown"
)

// WayChanges are the changes to one way of keeping a recipe.
type WayChanges struct {
	Keeping *content.Keeping
	Changes []Change
}

// Changes gives, for each way of keeping a recipe, in their order, what its
// readers may change, what they may not, and what nobody has tested. All of it
// follows from the process that is cited and from the ingredients; what does
// not come into question for the recipe is left out. A canned way that cites no
// known process has no changes: it cannot be published.
//
// The recipe must have passed Check. Changes changes nothing in it.
func Changes(r *content.Recipe) []WayChanges {
	items := itemsOf(r)
	all := make([]WayChanges, len(r.Keeping))
	for i := range r.Keeping {
		k := &r.Keeping[i]
		all[i] = WayChanges{Keeping: k, Changes: changesOf(&asking{recipe: r, Match: match(k, items)})}
	}
	return all
}

func changesOf(a *asking) []Change {
	if a.Keeping.TestedBy != nil {
		return []Change{anything.change(a, pick("letter"))}
	}
	if a.canned() && a.Process == nil {
		return nil
	}
	var changes []Change
	for _, t := range topics {
		for _, q := range t.questions {
			if p := q.pick(a); p.which != "" {
				c := q.change(a, p)
				c.Topic = t.name
				changes = append(changes, c)
			}
		}
	}
	return changes
}

// An asking is a way of keeping a recipe that changes are asked of.
type asking struct {
	*Match
	recipe *content.Recipe
}

func (a *asking) canned() bool { return a.Keeping.Way.V.Canned() }

// A question is a change that readers ask for. Its pick finds the row of
// answers.tsv that answers it, or none where it does not come into question.
type question struct {
	id, asks string
	pick     func(*asking) picked
}

// A picked answer is a row by its case, and the words for its braces.
type picked struct {
	which  string
	words  []string // name, value, name, value: see filledIn
	source Source   // of what the answer speaks of, where that is another process than the cited one
}

// pick picks a row. Each pair is the name of a brace and what stands for it.
func pick(which string, pairs ...string) picked {
	return picked{which: which, words: pairs}
}

// anything is asked of a process that an authority set for one recipe.
var anything = question{id: "anything", asks: "Anything"}

// topics hold the questions in the order in which readers ask most (a tally of
// public question lists and forums), those that belong together beside one
// another.
var topics = []struct {
	name      string
	questions []question
}{
	{"What goes in", []question{
		{"fewer-vegetables", "Fewer onions, peppers or other vegetables", fewerVegetables},
		{"more-vegetables", "More onions, peppers or other vegetables", moreVegetables},
		{"other-vegetables", "Another vegetable", otherVegetables},
		{"pepper-kinds", "Another kind of pepper", pepperKinds},
		{"other-food", "Another fruit or vegetable in its place", otherFoodInstead},
		{"dried-spices", "More or less dried spice", driedSpices},
		{"fresh-herbs", "Fresh herbs or garlic", freshHerbs},
	}},
	{"Acid", []question{
		{"fresh-juice", "Fresh juice for bottled", freshForBottled},
		{"lemon-for-vinegar", "Lemon juice for vinegar", lemonForVinegar},
		{"vinegar-for-lemon", "Vinegar for lemon juice", vinegarForLemon},
		{"citric-acid", "Citric acid for lemon juice", citricAcid},
		{"less-acid", "Less vinegar or lemon juice", lessAcid},
		{"more-vinegar", "More vinegar to the water", moreVinegar},
		{"other-vinegar", "Another kind of vinegar", otherVinegar},
	}},
	{"Sugar, salt and set", []question{
		{"less-sugar", "Less sugar", lessSugar},
		{"more-sugar", "More sugar", moreSugar},
		{"sweetener", "A sweetener for the sugar", sweetenerForSugar},
		{"less-salt", "Less salt, or none", lessSalt},
		{"other-pectin", "Another kind of pectin", otherPectin},
	}},
	{"Jars and batches", []question{
		{"smaller-jar", "A smaller jar", smallerJar},
		{"tested-jar", "Another tested jar", testedJar},
		{"larger-jar", "A larger jar", largerJar},
		{"double-batch", "A double batch", doubleBatch},
		{"half-batch", "Half a batch", halfBatch},
	}},
	{"Pack, pieces and thickness", []question{
		{"raw-pack", "Raw pack for hot", rawPack},
		{"hot-pack", "Hot pack for raw", hotPack},
		{"smaller-pieces", "Smaller pieces", smallerPieces},
		{"larger-pieces", "Larger pieces", largerPieces},
		{"thicken", "Thickening it before canning", thicken},
		{"thicker-salsa", "A thicker salsa", thickerSalsa},
		{"oil", "Oil or fat", addOil},
		{"when-opened", "Rice, pasta, cream or flour", whenOpened},
	}},
	{"Other ways", []question{
		{"steam", "A steam canner", steamInstead},
		{"boiling-water", "A boiling-water canner", boilingInstead},
		{"pressure-canner", "A pressure canner", pressureInstead},
		{"oven", "Oven, dishwasher, open kettle", ovenInstead},
		{"multi-cooker", "An electric multi-cooker", multiCookerInstead},
		{"freeze", "The freezer instead", freezeInstead},
		{"shelf", "The shelf instead", shelfInstead},
		{"blanching", "No blanching", noBlanching},
		{"larger-box", "A larger box", largerBox},
	}},
}
