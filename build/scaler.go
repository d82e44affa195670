package build

import (
	"math/big"
	"slices"
	"strings"

	"stillroom/build/amount"
	"stillroom/content"
	"stillroom/validate"
)

// A Scaler is what a reader may ask for in place of one batch: batches, jars,
// produce on hand, other measures. It does nothing without the page's script.
type Scaler struct {
	Ways    []ScaledWay
	Apart   bool     // several batches are cooked one by one
	Canned  bool     // and canned so
	Produce string   // Tomatoes; empty if no line gives an amount of it
	Have    string   // that amount: see amount.Amount.Data
	Units   []Choice // in which the reader may say how much of it there is
	Systems []Choice
}

// A ScaledWay is a way of keeping that a batch may be made for.
type ScaledWay struct {
	ID, Name string
	Making   string // see amount.Making.Data
}

// A Choice is an entry of a list to choose from.
type Choice struct{ Value, Name string }

// systemNames are what readers call the systems of measures.
var systemNames = map[amount.System]string{
	amount.Written: "As written", amount.US: "US", amount.Metric: "Metric", amount.Weight: "By weight",
}

func scaler(r *content.Recipe, lines [][]amount.Line) *Scaler {
	s := &Scaler{}
	ids := keepingIDs(r)
	for i, m := range amount.Makings(r) {
		s.Ways = append(s.Ways, ScaledWay{ids[i], nameWay(r.Keeping[i].Way.V).name, m.Data()})
		s.Apart = s.Apart || m.Apart
		s.Canned = s.Canned || m.Canned
	}
	for _, system := range amount.Systems {
		s.Systems = append(s.Systems, Choice{string(system), systemNames[system]})
	}
	s.takeProduce(r, lines)
	return s
}

// takeProduce finds the line of the main produce.
func (s *Scaler) takeProduce(r *content.Recipe, lines [][]amount.Line) {
	if len(r.Produce) == 0 {
		return
	}
	food, ok := validate.LookUpProduce(r.Produce[0].V)
	if !ok {
		return
	}
	for _, group := range lines {
		for _, l := range group {
			i, a := l.Item, l.Amount
			if !l.Known || validate.ClassifyItem(i.Item, i.Note).Produce.Name != food.Name {
				continue
			}
			for _, m := range amount.InNote(i) { // from about 2½ lb: as it is bought
				a.Ways = append(slices.Clone(m.Amount.Ways), a.Ways...)
			}
			s.Produce, s.Have, s.Units = capital(food.Plural), a.Data(), unitsFor(a)
			return
		}
	}
}

// unitsFor gives the units in which an amount may be told, the recipe's first.
func unitsFor(a amount.Amount) []Choice {
	weight, volume := a.Grams != nil, a.Grams != nil
	var all []Choice
	for _, q := range a.Ways {
		switch q.Unit.Dimension() {
		case content.WeightDim:
			weight = true
		case content.VolumeDim:
			volume = true
		case content.Count:
			many := content.Quantity{Low: several, High: several, Unit: q.Unit}
			name := many.UnitName()
			if name == "" {
				name = "whole"
			}
			all = append(all, Choice{string(q.Unit), name})
		}
	}
	if weight {
		all = append(all, unitChoices(content.Pound, content.Ounce, content.Kilogram, content.Gram)...)
	}
	if volume {
		all = append(all, unitChoices(content.Cup, content.Quart)...)
	}
	first := string(a.Ways[0].Unit)
	slices.SortStableFunc(all, func(a, b Choice) int {
		switch first {
		case a.Value:
			return -1
		case b.Value:
			return 1
		}
		return 0
	})
	return all
}

func unitChoices(units ...content.Unit) []Choice {
	var all []Choice
	for _, u := range units {
		all = append(all, Choice{string(u), content.Quantity{Low: several, High: several, Unit: u}.UnitName()})
	}
	return all
}

var asWritten, several = big.NewRat(1, 1), big.NewRat(2, 1)

// A WeightNote says what a cup of an ingredient weighs, and who says so.
type WeightNote struct {
	Item   string
	Grams  string
	Source string
}

// weightNotes are for the ingredients given by volume.
func weightNotes(lines [][]amount.Line) []WeightNote {
	var notes []WeightNote
	for _, group := range lines {
		for _, l := range group {
			i, a := l.Item, l.Amount
			if !l.Known || a.Grams == nil || a.Source == (validate.Source{}) || i.Amount.Unit.Dimension() != content.VolumeDim {
				continue
			}
			source, _, _ := strings.Cut(a.Source.Title, "; brix") // what follows is of its sugar
			source, _, _ = strings.Cut(source, "; sugar")
			notes = append(notes, WeightNote{i.Item, a.Grams.FloatString(0) + "\u00a0g", source})
		}
	}
	return notes
}
