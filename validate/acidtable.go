package validate

import (
	"math/big"
	"strings"
	"sync"

	"stillroom/content"
)

// An AcidNeed says where the acid of a process comes from, and how much of it
// was published. Nobody may change what it points to.
type AcidNeed struct {
	Origin          AcidOrigin
	Choices         []AcidChoice // any one of them will do; empty where no amount is published or needed
	LemonForVinegar bool         // bottled lemon or lime juice may stand for the vinegar, in equal volume
}

// An AcidOrigin is where the acid of a tested food comes from.
type AcidOrigin string

// The origins.
const (
	AcidFromFood       AcidOrigin = "natural"    // the food is acid enough; none is added
	AcidInEachJar      AcidOrigin = "each-jar"   // a dose into every jar, whichever canner is used
	AcidFromRecipe     AcidOrigin = "recipe"     // among the ingredients, for safety
	AcidForTaste       AcidOrigin = "taste"      // among the ingredients of a food that is acid anyhow: for set or taste
	AcidFromFermenting AcidOrigin = "fermenting" // made by fermenting in the tested salt
	AcidNotNeeded      AcidOrigin = "pressure"   // the process is that of a low-acid food
	AcidAndCold        AcidOrigin = "cold"       // no process for the shelf, however much acid
)

// An AcidChoice is one published way to bring the acid: all of its doses
// together.
type AcidChoice struct {
	Doses     []AcidDose
	Per       string   // jar, batch, or cup of juice
	Jar       string   // the size of the jar, or of those that the batch fills; empty if not published
	Low, High *big.Rat // how many of them a batch fills; 1 for a jar; nil if not published
	Note      string   // what the publication says beside it
	Source    Source
	Evidence  string

	least, most *big.Rat // what PerPint gives
}

// An AcidDose is an amount of one acid.
type AcidDose struct {
	Kind    ItemKind // ItemCitrusJuice, ItemCitricAcid, ItemVinegar
	Amount  *big.Rat // nil where the amount was not seen
	Unit    content.Unit
	Bottled bool   // the publication says bottled
	Words   string // as published: "white distilled vinegar, 5 percent"

	perPint *big.Rat // in tablespoons to a pint at the largest published yield; nil where an amount or a yield was not seen
}

// AcidFor gives the acid of a process.
func AcidFor(p *Process) AcidNeed {
	if n, ok := acidNeeds()[p.ID]; ok {
		return n
	}
	if p.Acidity == LowAcid {
		return AcidNeed{Origin: AcidNotNeeded}
	}
	return AcidNeed{Origin: AcidFromFood}
}

// ForJar gives the doses for a size of jar, any one of which will do. An acid
// that was published for a larger jar only is given in that amount, which is
// more than the smaller jar needs.
func (n AcidNeed) ForJar(jar string) []AcidChoice {
	best := map[ItemKind]int{}
	size := JarOunces(jar)
	if size == nil || n.Origin != AcidInEachJar {
		return nil
	}
	var out []AcidChoice
	for _, c := range n.Choices {
		kind := c.Doses[0].Kind
		if JarOunces(c.Jar).Cmp(size) < 0 {
			continue
		}
		i, known := best[kind]
		switch {
		case !known:
			best[kind] = len(out)
			out = append(out, c)
		case JarOunces(c.Jar).Cmp(JarOunces(out[i].Jar)) < 0:
			out[i] = c
		}
	}
	return out
}

// PerPint gives the acid of a choice in tablespoons of bottled lemon juice to
// a pint: what it comes to at the largest published yield, and at the
// smallest. Both are nil where an amount or a yield was not seen. Nobody may
// change them.
func (c AcidChoice) PerPint() (least, most *big.Rat) { return c.least, c.most }

// reckon works out what a choice and its doses come to.
func (c *AcidChoice) reckon() {
	for i := range c.Doses {
		c.Doses[i].perPint = c.dosePerPint(c.Doses[i])
	}
	c.least, c.most = c.juicePerPint()
}

func (c *AcidChoice) juicePerPint() (least, most *big.Rat) {
	size := JarOunces(c.Jar)
	if size == nil || c.Low == nil {
		return nil, nil
	}
	sum := new(big.Rat)
	for _, d := range c.Doses {
		juice, ok := LemonJuice(d.Kind, d.Amount, d.Unit)
		if !ok {
			return nil, nil
		}
		sum.Add(sum, juice)
	}
	sum.Mul(sum, JarOunces("pint"))
	over := func(jars *big.Rat) *big.Rat {
		return new(big.Rat).Quo(sum, new(big.Rat).Mul(jars, size))
	}
	return over(c.High), over(c.Low)
}

// dosePerPint is a dose in tablespoons to a pint at the largest published
// yield; nil where an amount or a yield was not seen.
func (c *AcidChoice) dosePerPint(d AcidDose) *big.Rat {
	size := JarOunces(c.Jar)
	if d.Amount == nil || size == nil || c.High == nil {
		return nil
	}
	tbsp, ok := content.Quantity{Low: d.Amount, High: d.Amount, Unit: d.Unit}.In(content.Tablespoon)
	if !ok {
		return nil
	}
	x := new(big.Rat).Mul(tbsp.Low, JarOunces("pint"))
	return x.Quo(x, new(big.Rat).Mul(size, c.High))
}

// An AcidEquivalent is an amount of an acid that does as much as the others.
type AcidEquivalent struct {
	Kind   ItemKind
	Amount *big.Rat
	Unit   content.Unit
	Name   string
	Source Source
}

// AcidEquivalents gives what is equal in a jar: 1 tablespoon of bottled lemon
// or lime juice, 1/4 teaspoon of citric acid, 2 tablespoons of 5 per cent
// vinegar. Nobody may change them.
func AcidEquivalents() []AcidEquivalent { return acidEquivalents() }

// LemonJuice gives what an amount of an acid comes to in tablespoons of
// bottled lemon juice. It reports false for what is no acid of the table, or
// is not measured by volume.
func LemonJuice(kind ItemKind, amount *big.Rat, unit content.Unit) (*big.Rat, bool) {
	for _, e := range acidEquivalents() {
		if e.Kind != kind || amount == nil {
			continue
		}
		q, ok := content.Quantity{Low: amount, High: amount, Unit: unit}.In(e.Unit)
		if !ok {
			return nil, false
		}
		return new(big.Rat).Quo(q.Low, e.Amount), true
	}
	return nil, false
}

var acidEquivalents = sync.OnceValue(func() []AcidEquivalent {
	var es []AcidEquivalent
	for _, r := range readTable("acid-equivalents.tsv") {
		es = append(es, AcidEquivalent{
			Kind:   ItemKind(r.text("kind")),
			Amount: r.rat("amount"),
			Unit:   content.Unit(r.text("unit")),
			Name:   r.text("name"),
			Source: r.source("publication"),
		})
	}
	return es
})

// acidNeeds gives the need of each process that has a row. Rows without a
// process are general rulings, kept for their source.
var acidNeeds = sync.OnceValue(func() map[string]AcidNeed {
	m := map[string]AcidNeed{}
	open := map[string]int{} // process, name and jar of a choice to its index, from 1
	for _, r := range readTable("acid.tsv") {
		for _, id := range r.list("processes") {
			n := m[id]
			n.Origin = AcidOrigin(r.text("from"))
			n.LemonForVinegar = n.LemonForVinegar || r.text("lemon_for_vinegar") == "yes"
			if r.text("kind") != "" {
				key := strings.Join([]string{id, r.text("choice"), r.text("jar")}, "\t")
				if open[key] == 0 {
					n.Choices = append(n.Choices, choiceOf(r))
					open[key] = len(n.Choices)
				}
				c := &n.Choices[open[key]-1]
				c.Doses = append(c.Doses, doseOf(r))
			}
			m[id] = n
		}
	}
	for _, n := range m {
		for i := range n.Choices {
			n.Choices[i].reckon()
		}
	}
	return m
})

func choiceOf(r row) AcidChoice {
	return AcidChoice{
		Per:      r.text("per"),
		Jar:      r.text("jar"),
		Low:      r.rat("low"),
		High:     r.rat("high"),
		Note:     r.text("note"),
		Source:   r.source("publication"),
		Evidence: evidence(r.text("evidence")),
	}
}

func doseOf(r row) AcidDose {
	return AcidDose{
		Kind:    ItemKind(r.text("kind")),
		Amount:  r.rat("amount"),
		Unit:    content.Unit(r.text("unit")),
		Bottled: r.text("bottled") == "yes",
		Words:   r.text("acid_as_published"),
	}
}
