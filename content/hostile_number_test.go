package content

import (
	"slices"
	"strings"
	"testing"
)

// Numbers that no machine word holds, or that other programs read otherwise, are
// refused at their place by every key that wants a number, a measure or a date.
func TestHostileNumbers(t *testing.T) {
	units := map[Want]string{
		WantWhole: "", WantNumber: "", WantDate: "", WantLength: " in", WantTemperature: " F", WantDuration: " min", WantAltitude: " ft",
		WantPressure: " psi", WantShare: "%", WantYield: " pints", WantJar: " ml",
	}
	numbers := []string{
		"1e999", strings.Repeat("9", 400), strings.Repeat("9", 16), "1/" + strings.Repeat("9", 400), "1/999999999999", "0." + strings.Repeat("0", 400) + "1",
		"NaN", ".inf", "-.inf", "0x7fffffffffffffff", "1_000", "010", "-1", "٣", "1.2.3", "1,00,00",
	}
	read := map[string]func(string) []Fault{
		"recipe":  func(s string) []Fault { _, f := ReadRecipe("a.md", []byte("---\n"+s+"\n---\n")); return f },
		"episode": func(s string) []Fault { _, f := ReadEpisode("a.md", []byte("---\n"+s+"\n---\n")); return f },
		"site":    func(s string) []Fault { _, f := ReadSettings("site.yaml", []byte(s)); return f },
	}
	tables := map[string]KeyTable{"recipe": RecipeKeys, "episode": EpisodeKeys, "site": SiteKeys}
	n := 0
	for sort, table := range tables {
		for _, line := range linesWith(table, units, "") {
			for _, number := range numbers {
				n++
				text := strings.Replace(line, "#", number, 1)
				refused := slices.ContainsFunc(read[sort](text), func(f Fault) bool {
					return f.Kind != MissingKey && f.Pos.Line > 0 && f.Pos.Col > 1
				})
				if !refused {
					t.Errorf("%s: %.80s is let pass", sort, text)
				}
			}
		}
	}
	t.Logf("%d cases of numbers", n)
}

// linesWith gives a line for each key of a table, and of those below it, that
// wants one of some things; # stands for the number.
func linesWith(table KeyTable, units map[Want]string, deep string) (lines []string) {
	if len(deep) > 3 {
		return nil
	}
	for _, k := range table {
		open, shut := k.Name+": ", ""
		if k.List {
			open, shut = open+"[", "]"
		}
		if unit, ok := units[k.Want]; ok {
			lines = append(lines, open+"#"+unit+shut)
		}
		for _, inner := range append(linesWith(k.Keys, units, deep+"x"), linesWith(k.Or, units, deep+"x")...) {
			lines = append(lines, open+"{"+inner+"}"+shut)
		}
	}
	return lines
}
