package amount

import (
	"encoding/json"
	"math/big"
	"strings"

	"stillroom/content"
)

// Data writes the amount for the script of a page: its ways, what a cup of it
// weighs, and marks for its rounding (+ or -), for what is poured (q) and for
// what is spooned (s).
//
//	9/2 cup;900 g|200|s
//	6..8 head/heads||-
func (a Amount) Data() string {
	var ways []string
	for _, q := range a.Ways {
		ways = append(ways, quantityData(q))
	}
	grams := ""
	if a.Grams != nil {
		grams = a.Grams.RatString()
	}
	return strings.Join(ways, ";") + "|" + grams + "|" + a.marks()
}

func (a Amount) marks() string {
	marks := [...]string{Nearest: "", Up: "+", Down: "-"}[a.Round]
	if a.Pours {
		marks += "q"
	}
	if a.Spoons {
		marks += "s"
	}
	return marks
}

func quantityData(q content.Quantity) string {
	s := q.Low.RatString()
	if q.IsRange() {
		s += ".." + q.High.RatString()
	}
	if q.Unit == "" {
		return s
	}
	s += " " + string(q.Unit)
	if q.Unit.Dimension() == content.Count {
		s += "/" + content.Quantity{Low: two, High: two, Unit: q.Unit}.UnitName()
	}
	return s
}

var two = big.NewRat(2, 1)

// makingData is a Making as the script of a page reads it. Numbers that need
// not be whole are written as fractions.
type makingData struct {
	Factor   string    `json:"factor"`
	Smallest string    `json:"smallest"`
	Largest  string    `json:"largest"`
	Apart    bool      `json:"apart,omitempty"`
	Canned   bool      `json:"canned,omitempty"`
	About    bool      `json:"about,omitempty"`
	Yield    string    `json:"yield,omitempty"`
	Yields   string    `json:"yields,omitempty"` // the words of the recipe
	Minutes  int64     `json:"minutes,omitempty"`
	Jars     []jarData `json:"jars,omitempty"`
}

type jarData struct {
	One     string `json:"one"`
	Many    string `json:"many"`
	Low     string `json:"low"`
	High    string `json:"high"`
	Load    int64  `json:"load,omitempty"`
	Minutes int64  `json:"minutes,omitempty"`
}

// Data writes the making for the script of a page, as JSON.
func (m Making) Data() string {
	d := makingData{
		Factor:   m.Factor.RatString(),
		Smallest: m.Smallest.RatString(),
		Largest:  m.Largest.RatString(),
		Apart:    m.Apart,
		Canned:   m.Canned,
		About:    m.About,
		Minutes:  m.Minutes,
	}
	if m.Yield != nil {
		d.Yield, d.Yields = m.Yield.Data(), m.Yield.Ways[0].Text
	}
	for _, j := range m.Jars {
		d.Jars = append(d.Jars, jarData{j.One, j.Many, j.Low.RatString(), j.High.RatString(), j.Load, j.Minutes})
	}
	text, err := json.Marshal(d)
	if err != nil {
		panic(err) // strings, numbers and truths can be written
	}
	return string(text)
}
