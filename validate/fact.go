package validate

import (
	"sync"

	"stillroom/content"
)

// An Acidity says how a food stands to the pH of 4.6 that parts boiling water
// from pressure. The zero Acidity is not known.
type Acidity int

// The acidities.
const (
	UnknownAcidity Acidity = iota
	Acid                   // 4.6 or lower by nature
	Acidified              // brought to 4.6 or lower by the acid of the recipe, of the jar, or by fermenting
	Borderline             // on both sides of 4.6
	LowAcid                // over 4.6
)

// String gives the word of the tables.
func (a Acidity) String() string {
	return [...]string{"unknown", "acid", "acidified", "borderline", "low-acid"}[a]
}

var acidities = map[string]Acidity{
	"unknown": UnknownAcidity, "acid": Acid, "acidified": Acidified, "borderline": Borderline, "low-acid": LowAcid,
}

// Facts are what holds for the food of a process whatever the method.
type Facts struct {
	Acidity Acidity        // as processed: Acid, Acidified or LowAcid
	Produce []string       // the produce that it stands for, by the names of LookUpProduce; any one of them will do
	Others  []string       // other produce that may stand beside it; "any" is any at all
	Kinds   []content.Kind // what such a recipe makes
	General bool           // one of the general jam and jelly processes of acid fruit
	Lists   []ItemKind     // what the published recipe itself holds although it is generally kept out of jars
	Basis   string         // where the facts are from
}

// processFacts gives the facts of each process ID.
var processFacts = sync.OnceValue(func() map[string]Facts {
	m := map[string]Facts{}
	for _, r := range readTable("process-facts.tsv") {
		f := Facts{
			Acidity: word(r, "acidity", acidities),
			Produce: r.list("produce"),
			Others:  r.list("others"),
			General: r.text("general") == "yes",
			Basis:   r.text("basis"),
		}
		for _, k := range r.list("kinds") {
			f.Kinds = append(f.Kinds, content.Kind(k))
		}
		for _, k := range r.list("lists") {
			f.Lists = append(f.Lists, ItemKind(k))
		}
		m[r.text("process")] = f
	}
	return m
})
