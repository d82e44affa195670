package validate

import (
	"math/big"
	"slices"
	"strings"
	"sync"
)

// A Density is what a US cup of a food weighs in one form of it.
type Density struct {
	Food   string // sugar, brown
	Form   string // packed
	Grams  *big.Rat
	Solids string // soluble solids or sugar in per cent: brix:13.3, sugar:9.4; empty if not listed
	Source Source

	is    meaning  // what the food is
	base  []string // the words that name it, in the singular
	said  []string // the words that tell its rows apart
	plain bool     // the row that is meant where none of them is said
}

// Densities gives every row, in the order of the table. Nobody may change
// them.
func Densities() []Density { return densities() }

// GramsPerCup gives what a US cup of an ingredient weighs: by the row of the
// same food of whose form most is said. It reports false for a food that is
// not listed, and where the words leave open which of several rows is meant
// whose weights do not agree.
func GramsPerCup(item string) (grams *big.Rat, source Source, ok bool) {
	var best []*Density
	most := 0
	words := wordsOf(item)
	for _, d := range densitiesOf()[headOf(item)] {
		n := d.fits(words)
		if n > most {
			best, most = nil, n
		}
		if n > 0 && n == most {
			best = append(best, d)
		}
	}
	if len(best) == 0 || !agree(best) {
		return nil, Source{}, false
	}
	return best[0].Grams, best[0].Source, true
}

// fits counts how much of a row was said, each word of the food's name
// weighing more than all of its form; 0 if the row is of another food, or of
// a state of it that would have been said.
func (d *Density) fits(words itemSaid) int {
	for _, w := range d.base {
		if !slices.Contains(words.all, w) {
			return 0
		}
	}
	for _, w := range words.broken {
		if !slices.Contains(d.said, w) && !slices.Contains(d.base, w) {
			return 0
		}
	}
	said := 0
	for _, w := range d.said {
		switch {
		case slices.Contains(words.all, w):
			said += 2
		case states[w]:
			return 0
		}
	}
	if d.plain {
		said++
	}
	return 100*len(d.base) + said
}

// states are words of a form that changes the weight of a cup so much that
// nobody leaves them out.
var states = map[string]bool{
	"boiled": true, "cooked": true, "dried": true, "dry": true, "frozen": true, "mashed": true,
	"pureed": true, "stewed": true, "powdered": true,
}

// broken are words for what has no longer the gaps of the whole food between
// its pieces: no row that does not say them tells its weight.
var broken = map[string]bool{
	"boiled": true, "cider": true, "cooked": true, "crushed": true, "juice": true, "mashed": true, "pulp": true,
	"puree": true, "pureed": true, "stewed": true,
}

// agree reports whether the weights of some rows are one amount for a cook:
// the first stands for all.
func agree(ds []*Density) bool {
	for _, d := range ds[1:] {
		off := new(big.Rat).Sub(d.Grams, ds[0].Grams)
		if off.Abs(off).Cmp(new(big.Rat).Mul(cupsApart(), ds[0].Grams)) > 0 {
			return false
		}
	}
	return true
}

// cupsApart is by what part of itself one amount may differ from another and
// still be the same for a cook.
var cupsApart = sync.OnceValue(func() *big.Rat {
	return new(big.Rat).Quo(LimitRat("cups-grams-agree"), big.NewRat(100, 1))
})

// densitiesOf leads from what a food is to its rows, in the order of the table.
var densitiesOf = sync.OnceValue(func() map[meaning][]*Density {
	of := map[meaning][]*Density{}
	all := densities()
	for i := range all {
		of[all[i].is] = append(of[all[i].is], &all[i])
	}
	return of
})

// headOf gives what a text speaks of, without its amounts.
func headOf(text string) meaning {
	book := kitchen().book
	m, _ := book.head(book.cut(text, nil))
	return meaning{kind: m.kind, produce: m.produce}
}

// An itemSaid holds the words of an ingredient, in the singular.
type itemSaid struct {
	all    []string
	broken []string // those that are
}

func wordsOf(text string) itemSaid {
	said := itemSaid{all: singulars(text)}
	for _, w := range said.all {
		if broken[w] {
			said.broken = append(said.broken, w)
		}
	}
	return said
}

func singulars(text string) []string {
	var ws []string
	for w := range strings.FieldsFuncSeq(plain(text), notWord) {
		ws = append(ws, singular(w))
	}
	return ws
}

func notWord(r rune) bool { return (r < 'a' || r > 'z') && (r < '0' || r > '9') }

var densities = sync.OnceValue(func() []Density {
	var ds []Density
	for _, r := range readTable("food-density.tsv") {
		base, kind, _ := strings.Cut(r.text("food"), ", ")
		ds = append(ds, Density{
			Food:   r.text("food"),
			Form:   r.text("form"),
			Grams:  r.rat("grams_per_cup"),
			Solids: r.text("solids"),
			Source: r.source("source"),
			is:     headOf(kind + " " + base),
			base:   singulars(base),
			said:   singulars(kind + " " + strings.TrimPrefix(r.text("form"), "not packed")),
			plain:  r.text("plain") == "yes",
		})
	}
	return ds
})
