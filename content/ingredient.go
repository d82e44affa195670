package content

import (
	"strings"
	"unicode/utf8"
)

// A Group is a part of the ingredients with a heading of its own: "the brine".
type Group struct {
	For   Field[string] // empty for a plain list
	Items []Ingredient
}

// An Ingredient is one line of the list, read as far as it can be.
//
// The Text of each amount is a piece of the line: the number and the unit that
// directly follows it. It is the number alone where the unit stands further
// on, as in 2 x 400 g tins, and empty where no number was written, as in
// 14-oz can.
type Ingredient struct {
	Pos      Pos
	Text     string     // the whole line as written but for its spaces, or as put together from its keys
	Amount   Quantity   // the first amount of the line: 1 1/2 cups; the count of 2 x 400 g tins is 2
	Manner   string     // how the amount is meant: "about", "heaped", "packed"; empty if it was not said
	Each     Quantity   // the size of each piece or container: 400 g of 2 x 400 g tins; zero if none
	Same     []Quantity // the same amount in other units, as given in brackets or after a stroke: (225 g)
	Item     string     // what it is: "sugar"; never empty if the line is not
	Note     string     // what is said after it: "divided"
	Optional bool
	ToTaste  bool   // "to taste", "as needed", "a little": no exact amount on purpose
	Unread   string // what stands where an amount should and could not be read
}

// ParseIngredient reads a line of an ingredient list as people write them:
// 1 1/2 cups (340 g) sugar, divided. It never fails. An amount that cannot be
// read without a guess is left in Unread, and the rest is read as usual.
func ParseIngredient(s string) Ingredient {
	if len(s) > longestLine {
		return Ingredient{Text: s, Item: s, Unread: clip(s)}
	}
	l := line{in: Ingredient{Text: singleSpaced(s)}}
	l.rest = trimLine(l.in.Text)
	l.cutOpening()
	if !l.cutVague() {
		l.cutAmount()
	}
	l.cutItem()
	return l.finish()
}

// longestLine is the most bytes of a line that are read: ten times those of a
// long one.
const longestLine = 1000

// A line is an ingredient line that is being read.
type line struct {
	in     Ingredient
	rest   string   // what is not read yet
	before string   // what stands before the amount and belongs to the item: "juice of"
	each   bool     // the amount is that of each of several items
	notes  []string // in order
}

// trimLine cuts the mark of a list from the start of a line, and the full stop
// or the star of a footnote from its end.
func trimLine(s string) string {
	for _, bullet := range [...]string{"-", "–", "*", "•", "·", "▢", "☐", "□"} {
		if rest, ok := strings.CutPrefix(s, bullet); ok && skipSpace(rest) != rest {
			s = skipSpace(rest)
			break
		}
	}
	return strings.TrimRight(s, " \t.,;*†‡")
}

// cutOpening reads a bracket, or the word optional, that stands before the
// amount.
func (l *line) cutOpening() {
	if inside, rest, ok := cutBracket(l.rest); ok && skipSpace(rest) != "" {
		if !l.takeBracket(inside) {
			l.notes = append(l.notes, tidy(inside))
		}
		l.rest = skipSpace(rest)
	}
	if rest, ok := cutWord(l.rest, "optional"); ok && strings.HasPrefix(rest, ":") {
		l.in.Optional = true
		l.rest = skipSpace(rest[1:])
	}
}

// finish gives what was read, with something for an item in any case.
func (l *line) finish() Ingredient {
	in := l.in
	in.Note = strings.Join(l.notes, ", ")
	if in.Item == "" && in.Amount.Unit != "" && in.Amount.Unit.Dimension() == Count {
		in.Item = in.Amount.UnitName() // 6 cloves are the spice, not the unit
		in.Amount.Unit = ""
		in.Amount.Text = trimSpace(strings.TrimRightFunc(in.Amount.Text, isLetterOrPoint))
	}
	if in.Item == "" {
		in.Item = in.Text
	}
	return in
}

func isLetterOrPoint(r rune) bool { return r == '.' || r < utf8.RuneSelf && isLetter(byte(r)) }
