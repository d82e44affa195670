package intake

import (
	"fmt"
	"slices"
	"strings"

	"stillroom/content"
)

// A Blank is what is known of a recipe that nobody has written yet.
type Blank struct {
	Name           string
	Kind           content.Kind // empty if it is not known
	KindGuessed    bool
	Produce        []string // empty if it is not known
	ProduceGuessed bool
	Keeping        Keeping   // how it keeps; the zero Keeping if it is not known
	Candidates     []Keeping // if it is not known: ways that it may keep
	Caution        string    // what the author has to know before taking one of them
}

// A Keeping is a way of keeping without its figures.
type Keeping struct {
	Way     content.Way
	Process string // the ID of the tested process; empty where food is not canned
	About   string // what the process is for
}

// Slug is the name that the recipe's file gets, without its ending; empty if
// none can be made.
func (b Blank) Slug() string { return content.Slug(b.Name) }

// Recipe begins the recipe as a draft. What its author has to fill in is left
// blank, which the validator reports; what was guessed, or is no more than a
// start, is marked.
func (b Blank) Recipe() File {
	f := new(front)
	f.WriteString("---\n")
	f.key("", "name", b.Name, "")
	f.WriteString("summary:\nstatus: draft\n")
	guessed(f, b.KindGuessed, "the kind is guessed from the name")
	f.blank("", "kind", string(b.Kind))
	guessed(f, b.ProduceGuessed, "the produce is guessed from the name")
	f.blank("", "produce", inBrackets(b.Produce))
	f.WriteString("yield:\n")
	b.writeItems(f)
	b.writeKeeping(f)
	f.WriteString("---\n\n<!-- check: write the steps, each in a line of its own -->\n\n")
	f.WriteString("1. Wash your hands" + rinse(b.Produce) + ".\n")
	return File{"content/recipes/" + b.Slug() + ".md", []byte(f.String())}
}

func guessed(f *front, is bool, says string) {
	if is {
		f.check("", says)
	}
}

// blank writes a key and its value, which may be empty.
func (f *front) blank(indent, name, text string) {
	f.WriteString(strings.TrimRight(indent+name+": "+text, " ") + "\n")
}

func inBrackets(words []string) string {
	if len(words) == 0 {
		return ""
	}
	var all []string
	for _, w := range words {
		all = append(all, scalar(w))
	}
	return "[" + strings.Join(all, ", ") + "]"
}

func rinse(produce []string) string {
	if len(produce) == 0 {
		return ""
	}
	return " and rinse the " + strings.Join(produce, " and the ")
}

// usualItems are what recipes of a kind are made of besides their produce:
// common practice, no source. Those of a recipe are its author's.
var usualItems = map[content.Kind][]string{
	content.Jam: {"sugar"}, content.Jelly: {"sugar"}, content.Marmalade: {"water", "sugar"}, content.Conserve: {"sugar"},
	content.FruitButter: {"sugar"}, content.Syrup: {"water", "sugar"}, content.Cordial: {"water", "sugar"},
	content.Pickle: {"vinegar (5%)", "water", "pickling salt"}, content.Relish: {"vinegar (5%)", "sugar", "pickling salt"},
	content.Chutney: {"vinegar (5%)", "sugar"}, content.Ketchup: {"vinegar (5%)", "sugar"},
	content.Ferment: {"pickling salt"}, content.Vinegar: {"vinegar (5%)"},
}

// writeItems writes what such a recipe is likely to be made of.
func (b Blank) writeItems(f *front) {
	items := slices.Concat(b.Produce, usualItems[b.Kind])
	if len(items) == 0 {
		f.WriteString("ingredients:\n")
		return
	}
	f.check("", "write the amounts, and what else goes in; take out what does not")
	writeIngredients(f, []group{{lines: items}})
}

// writeKeeping writes the way that the food keeps with its figures left blank,
// or offers ways to choose from.
func (b Blank) writeKeeping(f *front) {
	if b.Keeping.Way != "" {
		f.WriteString("keeping:\n" + b.Keeping.entry("  ", "    "))
		return
	}
	f.WriteString("keeping:\n")
	f.check("  ", strings.TrimSpace(b.Caution+" Choose how it keeps: take the # off the lines of that way, and this mark and the other ways away"))
	for _, k := range b.Candidates {
		if k.About != "" {
			f.WriteString("  # " + k.About + "\n")
		}
		f.WriteString(k.entry("  # ", "  #   "))
	}
}

// entry writes an entry of keeping.
func (k Keeping) entry(first, rest string) string {
	text := first + "- way: " + string(k.Way) + "\n"
	if k.Process != "" {
		text += rest + "process: " + k.Process + "\n"
	}
	for _, name := range figures[k.Way] {
		text += fmt.Sprintf("%s%s:\n", rest, name)
	}
	return text + rest + "keeps:\n"
}

// figures are what its author has to write of a way besides how long food
// keeps. Those of canned food are the process's.
var figures = map[content.Way][]string{
	content.Freezer:    {"container", "headspace"},
	content.Drying:     {"temperature", "duration"},
	content.Fermenting: {"salt", "temperature", "duration"},
}
