package build

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/rogpeppe/go-internal/txtar"

	"stillroom/content"
)

// keepingOf reads ways of keeping as they are written in front matter.
func keepingOf(t *testing.T, yaml string) []content.Keeping {
	t.Helper()
	return recipeOf(t, "kind: jam\nproduce: [plums]\nkeeping:\n"+yaml).Keeping
}

// recipeOf reads a recipe from the lines of front matter that matter, and a
// body of two steps.
func recipeOf(t *testing.T, yaml string) *content.Recipe {
	t.Helper()
	text := "As of a day, as of 2026-09-01.\n-- content/site.yaml --\nname: A\n-- content/recipes/a.md --\n---\n" +
		"name: A\nsummary: A.\npublished: 2026-01-01\nyield: 6 half-pint jars\ningredients: [1 cup sugar]\n" +
		strings.TrimSpace(yaml) + "\n---\n1. One.\n2. Two.\n"
	return editionOf(t, txtar.Parse([]byte(text))).recipes[0]
}

// figures writes a table as text, so that a reader of the test sees a table.
func figures(tables []AltitudeTable) string {
	var b strings.Builder
	for _, t := range tables {
		b.WriteString(t.Caption + "\n")
		for _, c := range t.Columns {
			b.WriteString(strings.TrimSpace("| "+c.Jar+" "+c.Note) + " ")
		}
		b.WriteString("\n")
		for _, r := range t.Rows {
			b.WriteString(r.Altitude + " (" + r.Also + ")")
			for _, f := range r.Figures {
				b.WriteString(strings.TrimRight(" | "+f.Number+" "+f.Unit+" "+f.Also, " "))
			}
			b.WriteString("\n")
		}
	}
	return strings.ReplaceAll(b.String(), "\u00a0", " ")
}

func TestAltitudeTables(t *testing.T) {
	for _, c := range []struct{ name, yaml, want string }{
		{"jars with the same bands share a table", `
  - way: boiling-water
    processing:
      - {jar: pint, altitude: {"0-1,000 ft": 10 min, "1,001-6,000 ft": 15 min, "above 6,000 ft": 1 h 20 min}}
      - {jar: quart, altitude: {"0-1,000 ft": 15 min, "1,001-6,000 ft": 20 min, "above 6,000 ft": 85 min}}`, `
Minutes at a full rolling boil
| Pint | Quart 
0–1,000 ft (0–305 m) | 10 min | 15 min
1,001–6,000 ft (305–1,829 m) | 15 min | 20 min
above 6,000 ft (above 1,829 m) | 80 min | 85 min
`}, {"jars with other bands have their own", `
  - way: atmospheric-steam
    processing:
      - {jar: pint, altitude: {"0-1,000 ft": 10 min, "above 1,000 ft": 15 min}}
      - {jar: quart, altitude: {"0-3,000 ft": 15 min, "above 3,000 ft": 20 min}}
      - {jar: half-pint, altitude: {"0-1,000 ft": 5 min, "above 1,000 ft": 10 min}}`, `
Minutes in full, steady steam
| Pint | Half-pint 
0–1,000 ft (0–305 m) | 10 min | 5 min
above 1,000 ft (above 305 m) | 15 min | 10 min
Minutes in full, steady steam
| Quart 
0–3,000 ft (0–914 m) | 15 min
above 3,000 ft (above 914 m) | 20 min
`}, {"metres are given in feet too, a jar by its volume", `
  - way: boiling-water
    processing:
      - {jar: 500 ml, altitude: {"0-305 m": 10 min, "306-1829 m": 15 min, "above 1829 m": 20 min}}`, `
Minutes at a full rolling boil
| 500 ml 
0–305 m (0–1,000 ft) | 10 min
306–1829 m (1,003–6,000 ft) | 15 min
above 1829 m (above 6,000 ft) | 20 min
`}, {"each gauge has its table, kilopascals round up", `
  - way: pressure
    processing:
      - jar: pint
        time: 20 min
        dial: {"0-2,000 ft": 11 psi, "2,001-4,000 ft": 12 psi}
        weighted: {"0-1,000 ft": 10 psi, "above 1,000 ft": 15 psi}
      - jar: quart
        time: 25 min
        dial: {"0-2,000 ft": 11 psi, "2,001-4,000 ft": 12 psi}
        weighted: {"0-1,000 ft": 10 psi, "above 1,000 ft": 15 psi}`, `
Pressure on a dial gauge
| Pint 20 min | Quart 25 min 
0–2,000 ft (0–610 m) | 11 psi 76 kPa | 11 psi 76 kPa
2,001–4,000 ft (610–1,219 m) | 12 psi 83 kPa | 12 psi 83 kPa
Pressure on a weighted gauge
| Pint 20 min | Quart 25 min 
0–1,000 ft (0–305 m) | 10 psi 69 kPa | 10 psi 69 kPa
above 1,000 ft (above 305 m) | 15 psi 104 kPa | 15 psi 104 kPa
`}, {"one gauge alone", `
  - way: pressure
    processing: [{jar: pint, time: 20 min, weighted: {"0-1,000 ft": 69 kPa, "above 1,000 ft": 104 kPa}}]`, `
Pressure on a weighted gauge
| Pint 20 min 
0–1,000 ft (0–305 m) | 69 kPa
above 1,000 ft (above 305 m) | 104 kPa
`}, {"what is not canned has none", `
  - way: freezer`, "\n"},
	} {
		k := keepingOf(t, c.yaml+"\n    keeps: 1 year")
		if diff := cmp.Diff(c.want, "\n"+figures(tables(&k[0]))); diff != "" {
			t.Errorf("%s (-want +got):\n%s", c.name, diff)
		}
	}
}
