package validate

import (
	"math/big"
	"strings"
	"sync"
)

// A Limit is one published figure or ruling that rules stand on. Nobody may
// change it.
type Limit struct {
	ID        string
	Statement string   // what it says, in our words
	Value     string   // as in the table: 10, 40-120, not allowed
	Low, High *big.Rat // the figure, or the ends of its range; nil where the value is a word
	Unit      string   // with what it bounds: "min max" is minutes, at most
	Source    Source
	Evidence  string // address of a published copy, "memory", or that it is common practice

	days *big.Rat // of a time, its upper end in days; nil for others
}

// LimitOf gives a limit by its ID. It panics if there is none: an ID is ours,
// not the cook's.
func LimitOf(id string) Limit {
	l, ok := limits().byID[id]
	if !ok {
		panic("no limit " + id)
	}
	return l
}

// LimitRat gives the figure of a limit: of a range, the lower end.
func LimitRat(id string) *big.Rat {
	l := LimitOf(id)
	if l.Low == nil {
		panic("limit " + id + " is no number: " + l.Value)
	}
	return l.Low
}

// LimitInt gives the figure of a limit that is a whole number.
func LimitInt(id string) int {
	n := LimitRat(id)
	if !n.IsInt() {
		panic("limit " + id + " is no whole number: " + n.RatString())
	}
	return int(n.Num().Int64())
}

// Limits gives every limit, in the order of its table. Nobody may change them.
func Limits() []Limit { return limits().all }

type limitTable struct {
	all  []Limit
	byID map[string]Limit
}

var limits = sync.OnceValue(func() limitTable {
	t := limitTable{byID: map[string]Limit{}}
	for _, r := range readTable("limits.tsv") {
		seen := evidence(r.text("evidence"))
		l := Limit{
			ID:        r.text("limit"),
			Statement: r.text("statement"),
			Value:     r.text("value"),
			Unit:      r.text("unit"),
			Source:    sourceOf(r.text("publication"), seen),
			Evidence:  seen,
		}
		l.Low, l.High = ends(l.Value)
		l.days = l.inDays()
		t.all = append(t.all, l)
		t.byID[l.ID] = l
	}
	return t
})

// ends reads a figure, or a range of two: 4.6, 40-120. Of anything else it
// makes nil.
func ends(value string) (low, high *big.Rat) {
	from, to, isRange := strings.Cut(value, "-")
	low, ok := new(big.Rat).SetString(from)
	if !ok {
		return nil, nil
	}
	if !isRange {
		return low, low
	}
	high, ok = new(big.Rat).SetString(to)
	if !ok {
		return nil, nil
	}
	return low, high
}
