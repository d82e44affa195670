package validate

import (
	"math/big"
	"slices"
	"strings"

	"stillroom/content"
)

// A mention is a number in a running text with its unit, or a range of numbers:
// 10 minutes, half an inch, 3 to 4 weeks. A bare number has no unit.
type mention struct {
	low, high ratio
	unit      content.Unit
	measures  content.Dimension // what the unit does; Count for a bare number
	from, to  int               // its tokens
}

// quantity gives the figure in the measures of package content.
func (f mention) quantity() content.Quantity {
	q := content.Quantity{Low: f.low.rat(), Unit: f.unit}
	q.High = q.Low
	if f.high != f.low {
		q.High = f.high.rat()
	}
	return q
}

// in gives the lower end in a unit; nil if the figure measures something else.
func (f mention) in(u content.Unit) *big.Rat {
	low := f.low.rat()
	if f.unit == u {
		return low
	}
	q, ok := content.Quantity{Low: low, High: low, Unit: f.unit}.In(u)
	if !ok {
		return nil
	}
	return q.Low
}

// is reports whether the figure is that whole number of a unit.
func (f mention) is(n int64, u content.Unit) bool {
	if f.unit == u {
		return f.low.num == n*f.low.den
	}
	if f.measures != u.Dimension() {
		return false
	}
	x := f.in(u)
	return x != nil && compareWhole(x, int(n)) == 0
}

// unitWords are the units that are looked for in running text, in the
// spellings that package content knows. Of those of one letter only F and C
// are taken, and they need a degree or a large number.
const unitWords = `minute minutes min mins hour hours hr hrs second seconds sec secs day days week weeks wk wks month months
	year years yr yrs inch inches in mm cm millimetre millimetres millimeter millimeters centimetre centimetres centimeter
	centimeters cup cups tablespoon tablespoons tbsp tbs tbl teaspoon teaspoons tsp quart quarts qt qts pint pints pt pts
	gallon gallons gal ml millilitre millilitres milliliter milliliters litre litres liter liters lb lbs pound pounds oz
	ounce ounces g gram grams kg kilo kilos kilogram kilograms kilogramme kilogrammes f fahrenheit c celsius ft foot feet
	metre metres meter meters m psi psig kpa % percent pct`

// learnUnits notes which words name a unit.
func (l *lexicon) learnUnits() {
	name := func(w string, u content.Unit) {
		id := l.id(w)
		n := slices.Index(l.units, u)
		if n < 0 {
			n = len(l.units)
			l.units = append(l.units, u)
		}
		l.words[id].unit = uint8(n)
	}
	for _, w := range strings.Fields(unitWords) {
		q, err := content.ParseQuantity("2 " + w)
		if err != nil {
			panic(err)
		}
		name(w, q.Unit)
	}
	name(`"`, content.Inch)
	name("″", content.Inch)
	name("c", content.Celsius) // a cup only in a list of ingredients
}

// figures gives the figures of the sentence, in order. They are read once.
func (s *sentence) figures() []mention {
	if s.counted {
		return s.figs
	}
	s.counted = true
	if !s.counts {
		return nil
	}
	figs := s.rooms.figures.list(4)
	for i := 0; i < s.len(); {
		if t := s.at(i); t.counts && (t.number().set() || s.isNumeral(i) && !s.isBare(i)) {
			if f, ok := s.figureAt(i); ok {
				figs = append(figs, f)
				i = f.to
				continue
			}
		}
		i++
	}
	s.figs = s.rooms.figures.kept(figs)
	return s.figs
}

// afterArticles are the words beside units and numbers that make a figure of an
// article: a generous pint, a half.
var afterArticles = fewOf("per to or and couple dozen hundred thousand half halves quarter quarters third thirds eighth eighths degrees degree °")

// isBare reports whether a word is an article and no figure can follow from it.
func (s *sentence) isBare(i int) bool {
	if !s.isOne(i, &articles) {
		return false
	}
	if i+1 >= s.len() {
		return true
	}
	t := s.at(i + 1)
	return !t.counts && !t.joined && s.lex.words[t.id].unit == 0 && !s.isOne(i+1, &afterArticles) && !s.isOne(i+1, &generous)
}

// figureAt reads the figure that begins at a token.
func (s *sentence) figureAt(i int) (mention, bool) {
	low, next, ok := s.numberFrom(i)
	if !ok {
		return mention{}, false
	}
	f := mention{low: low, high: low, from: i}
	if u, after, ok := s.unitFrom(next, low); ok {
		f.unit, next = u, after
	}
	if high, after, ok := s.upperEnd(next); ok {
		u, end, hasUnit := s.unitFrom(after, high)
		if hasUnit && (f.unit == "" || f.unit == u) || !hasUnit && f.unit == "" {
			f.high, f.unit, next = high, u, end
			if !hasUnit {
				next = after
			}
		}
	}
	f.to = next
	if f.unit != "" {
		f.measures = f.unit.Dimension()
	}
	s.addTerm(&f)
	article := s.isOne(i, &articles)
	return f, !article || f.unit != ""
}

// upperEnd reads the other end of a range: to 4, -4, or 4.
func (s *sentence) upperEnd(i int) (ratio, int, bool) {
	if i > 0 && s.at(i-1).after != 0 || i >= s.len() {
		return ratio{}, i, false
	}
	if s.at(i).joined && s.at(i).number().set() {
		return s.at(i).number(), i + 1, true
	}
	if !s.isOne(i, &rangeWords) || s.at(i).after != 0 {
		return ratio{}, i, false
	}
	return s.numberFrom(i + 1)
}

// addTerm adds what follows in a smaller unit of time: 1 h 30 min, an hour and
// a half.
func (s *sentence) addTerm(f *mention) {
	if f.unit != content.Hour || f.low != f.high || f.to >= s.len() || s.at(f.to-1).after != 0 {
		return
	}
	next := f.to
	if s.isAny(next, "and") {
		next++
	}
	n, after, ok := s.numberFrom(next)
	if !ok {
		return
	}
	if u, end, ok := s.unitFrom(after, n); ok && u == content.Minute {
		*f = mention{low: ratio{f.low.num*60*n.den + n.num*f.low.den, f.low.den * n.den}, unit: content.Minute, measures: content.TimeDim, from: f.from, to: end}
		f.high = f.low
	} else if n == (ratio{1, 2}) && next > f.to && f.low.den == 1 {
		f.low = ratio{f.low.num*2 + 1, 2}
		f.high, f.to = f.low, after
	}
}

// generous are the words that a cook puts before a unit: one extra minute.
var generous = fewOf("extra additional more full good generous scant whole")

var (
	rangeWords  = fewOf("to or")
	degreeWords = fewOf("degrees degree °")
	articles    = fewOf("a an")
)

// unitFrom reads the unit of a number: after it, or after "of an".
func (s *sentence) unitFrom(i int, n ratio) (content.Unit, int, bool) {
	if i >= s.len() || i > 0 && parts(s.at(i-1).after) {
		return "", i, false
	}
	if n.den > 1 && s.isAny(i, "of a an") {
		for i < s.len() && s.isAny(i, "of a an") {
			i++
		}
	}
	if s.isOne(i, &generous) && s.at(i).after == 0 {
		i++ // one extra minute
	}
	if s.isOne(i, &degreeWords) {
		return s.degrees(i + 1)
	}
	if s.word(i) == "per" && s.isAny(i+1, "cent") {
		return content.Percent, i + 2, true
	}
	if i >= s.len() {
		return "", i, false
	}
	u := s.lex.units[s.lex.words[s.at(i).id].unit]
	if u == "" || !s.fits(u, i, n) {
		return "", i, false
	}
	if u == content.Pound {
		return s.pounds(i)
	}
	return u, i + 1, true
}

// degrees reads the scale of a temperature; Fahrenheit where none is said.
func (s *sentence) degrees(i int) (content.Unit, int, bool) {
	switch {
	case s.isAny(i, "f fahrenheit"):
		return content.Fahrenheit, i + 1, true
	case s.isAny(i, "c celsius centigrade"):
		return content.Celsius, i + 1, true
	}
	return content.Fahrenheit, i, true
}

// fits reports whether a word that may be a unit is one here.
func (s *sentence) fits(u content.Unit, i int, n ratio) bool {
	switch s.word(i) {
	case "in":
		return s.at(i).joined || s.isAny(i+1, "headspace head of space from pieces lengths") || n.den > 1 && !s.is(i+1, famDetermine)
	case "f", "c":
		return n.num >= 30*n.den || s.at(i).joined
	case "m":
		return n.num >= 50*n.den
	case "g", "pt", "c.":
		return s.at(i - 1).number().set()
	case "second":
		return n.num != n.den
	}
	return true
}

// pounds tells pounds of pressure from pounds of weight.
func (s *sentence) pounds(i int) (content.Unit, int, bool) {
	for k := i + 1; k < i+3; k++ {
		if s.isAny(k, "pressure psi") {
			return content.PSI, k + 1, true
		}
		if !s.isAny(k, "of") {
			break
		}
	}
	if s.isAny(i+1, "weight gauge") || s.find(famCanner, 0, s.len()) >= 0 && s.isAny(i+1, "dial") {
		return content.PSI, i + 1, true
	}
	return content.Pound, i + 1, true
}
