package intake

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"stillroom/content"
)

// A group is some ingredients, and what they are for.
type group struct {
	heading string // may be empty
	lines   []string
}

// groupsOf reads the list of ingredients. A line that ends in a colon and
// names no amount is the heading of those after it.
func groupsOf(vs []value) []group {
	var groups []group
	for _, l := range linesOf(vs) {
		heading, ok := strings.CutSuffix(l, ":")
		if ok && content.ParseIngredient(heading).Amount.Low == nil {
			groups = append(groups, group{heading: forWord.ReplaceAllString(heading, "")})
			continue
		}
		if len(groups) == 0 {
			groups = append(groups, group{})
		}
		g := &groups[len(groups)-1]
		g.lines = append(g.lines, l)
	}
	return slices.DeleteFunc(groups, func(g group) bool { return len(g.lines) == 0 })
}

// linesOf gives a line for each of several values, or else the lines of the
// only one.
func linesOf(vs []value) []string {
	var lines []string
	for _, v := range vs {
		text := toText(v.words())
		if len(vs) > 1 {
			text = strings.ReplaceAll(text, "\n", " ") // the amount may stand in a box of its own
		}
		lines = append(lines, strings.Split(text, "\n")...)
	}
	return slices.DeleteFunc(lines, func(l string) bool { return l == "" })
}

var forWord = regexp.MustCompile(`(?i)^for\s+`)

// writeIngredients writes the lines as they stand on the page, and marks those
// whose amount cannot be read without a guess.
func writeIngredients(f *front, groups []group) {
	if len(groups) == 0 {
		f.check("", "write ingredients: the page gives none")
		return
	}
	f.WriteString("ingredients:\n")
	for _, g := range groups {
		indent := "  "
		if g.heading != "" {
			f.WriteString("  - for: " + scalar(g.heading) + "\n    items:\n")
			indent = "      "
		}
		for _, l := range g.lines {
			if in := content.ParseIngredient(l); in.Unread != "" {
				f.check(indent, fmt.Sprintf("the amount %q could not be read", in.Unread))
			}
			f.WriteString(indent + "- " + scalar(l) + "\n")
		}
	}
}

// kindWords are the words of names, and the kind that they speak of.
var kindWords = []struct {
	word *regexp.Regexp
	kind content.Kind
}{
	{words(`jams?`), content.Jam},
	{words(`jelly|jellies`), content.Jelly},
	{words(`marmalades?`), content.Marmalade},
	{words(`conserves?`), content.Conserve},
	{words(`(apple|pear|plum|peach|pumpkin|fruit) butter`), content.FruitButter},
	{words(`syrups?`), content.Syrup},
	{words(`juice`), content.Juice},
	{words(`\w*sauces?`), content.Sauce}, // applesauce
	{words(`salsas?`), content.Salsa},
	{words(`ketchup|catsup`), content.Ketchup},
	{words(`chutneys?`), content.Chutney},
	{words(`relish(es)?`), content.Relish},
	{words(`pickle[sd]?`), content.Pickle},
	{words(`pie fillings?`), content.PieFilling},
	{words(`soup|stock|broth`), content.Soup},
	{words(`sauerkraut|kimchi|fermented`), content.Ferment},
	{words(`vinegar`), content.Vinegar},
	{words(`cordial`), content.Cordial},
}

func words(pattern string) *regexp.Regexp { return regexp.MustCompile(`\b(?:` + pattern + `)\b`) }

// KindOf gives the kind that the name of a recipe speaks of last: pickled beet
// relish is a relish. What food lies in does not count: peaches in syrup are no
// syrup. It is empty if the name does not tell.
func KindOf(name string) (kind content.Kind) {
	name, _, _ = strings.Cut(strings.ToLower(name), " in ")
	at := -1
	for _, k := range kindWords {
		if all := k.word.FindAllStringIndex(name, -1); all != nil && all[len(all)-1][0] > at {
			at, kind = all[len(all)-1][0], k.kind
		}
	}
	return kind
}

func writeKind(f *front, name string) {
	kind := KindOf(name)
	if kind == "" {
		f.check("", "write kind: jam, pickle, sauce, ...; the name does not tell")
		return
	}
	f.key("", "kind", string(kind), "the kind is guessed from the name")
}

// writeProduce writes the first produce of the list that the name speaks of, or
// else the first of all.
func writeProduce(f *front, name string, groups []group, find func(string) (string, bool)) {
	var first, named string
	for _, g := range groups {
		for _, l := range g.lines {
			if find == nil {
				break
			}
			produce, ok := find(content.ParseIngredient(l).Item)
			if !ok {
				continue
			}
			if first == "" {
				first = produce
			}
			if named == "" && speaksOf(name, produce) {
				named = produce
			}
		}
	}
	if named != "" {
		first = named
	}
	if first == "" {
		f.check("", "write produce: the main produce, as in [plums]; the list does not tell")
		return
	}
	f.check("", "the produce is guessed from the ingredients")
	f.WriteString("produce: [" + scalar(first) + "]\n")
}

// speaksOf reports whether a name holds the word for produce, of one or many.
func speaksOf(name, plural string) bool {
	stem := strings.TrimSuffix(strings.TrimSuffix(strings.TrimSuffix(plural, "ies"), "es"), "s")
	return strings.Contains(strings.ToLower(name), stem)
}
