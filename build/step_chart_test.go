package build

import (
	"math/big"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stillroom/content"
)

// steps writes a chart as text: where each step begins and ends, in parts of a
// hundred, and its figure.
func steps(charts []StepChart) string {
	var b strings.Builder
	for _, c := range charts {
		b.WriteString(c.Caption + " " + c.End + "\n")
		for _, l := range c.Lines {
			b.WriteString("| " + l.Name)
			if l.Under {
				b.WriteString(", under")
			}
			b.WriteString("\n")
			for _, s := range l.Steps {
				b.WriteString(s.X + " +" + s.Width + " to " + s.To + ": " + s.Figure + "\n")
			}
		}
		for _, k := range c.Ticks {
			b.WriteString(k.X + " " + k.Text + strings.Repeat(" (lower)", k.Row) + "; ")
		}
		b.WriteString("\n")
	}
	return strings.ReplaceAll(b.String(), "\u00a0", " ")
}

func TestStepCharts(t *testing.T) {
	for _, c := range []struct{ name, yaml, want string }{
		{"two jars share a chart, the longer time over the shorter", `
  - way: boiling-water
    processing:
      - {jar: pint, altitude: {"0-1,000 ft": 10 min, "1,001-6,000 ft": 15 min, "above 6,000 ft": 20 min}}
      - {jar: quart, altitude: {"0-1,000 ft": 15 min, "1,001-3,000 ft": 20 min, "3,001-6,000 ft": 25 min, "above 6,000 ft": 30 min}}`, `
Minutes at a full rolling boil, against altitude in feet. 
| Quart
4 +11.5 to 1000: 15
15.5 +23 to 3000: 20
38.5 +34.5 to 6000: 25
73 +27 to : 30
| Pint, under
4 +11.5 to 1000: 10
15.5 +57.5 to 6000: 15
73 +27 to : 20
4 0; 15.5 1,000; 38.5 3,000; 73 6,000 ft; 
`}, {"jars that ask for the same are one line", `
  - way: atmospheric-steam
    processing:
      - {jar: half-pint, altitude: {"0-1,000 ft": 10 min, "above 1,000 ft": 15 min}}
      - {jar: pint, altitude: {"0-1,000 ft": 10 min, "above 1,000 ft": 15 min}}`, `
Minutes in full, steady steam, against altitude in feet. 
| Half-pint and pint
4 +11.5 to 1000: 10
15.5 +84.5 to : 15
4 0; 15.5 1,000 ft (lower); 
`}, {"each gauge has a chart, on one scale; the dial's ends", `
  - way: pressure
    processing:
      - jar: pint
        time: 20 min
        dial: {"0-2,000 ft": 11 psi, "2,001-8,000 ft": 14 psi}
        weighted: {"0-1,000 ft": 10 psi, "above 1,000 ft": 15 psi}`, `
Pressure on a dial gauge, in psi, against altitude in feet. Nothing is published above 8,000 ft.
| Pint
4 +18.4 to 2000: 11
22.4 +55.2 to 8000: 14
4 0; 22.4 2,000; 77.6 8,000 ft; 
Pressure on a weighted gauge, in psi, against altitude in feet. 
| Pint
4 +9.2 to 1000: 10
13.2 +86.8 to : 15
4 0; 13.2 1,000 ft (lower); 
`}, {"a time under a quarter of the other has no room below it", `
  - way: boiling-water
    processing:
      - {jar: pint, altitude: {"0-1,000 ft": 10 min, "above 1,000 ft": 15 min}}
      - {jar: quart, altitude: {"0-1,000 ft": 80 min, "above 1,000 ft": 85 min}}`, `
Minutes at a full rolling boil, against altitude in feet. 
| Quart
4 +11.5 to 1000: 80
15.5 +84.5 to : 85
4 0; 15.5 1,000 ft (lower); 
Minutes at a full rolling boil, against altitude in feet. 
| Pint
4 +11.5 to 1000: 10
15.5 +84.5 to : 15
4 0; 15.5 1,000 ft (lower); 
`}, {"lines that meet do not share a chart, and metres are drawn where they are", `
  - way: boiling-water
    processing:
      - {jar: 500 ml, altitude: {"0-300 m": 10 min, "301-1829 m": 15 min, "above 1829 m": 20 min}}
      - {jar: 1 l, altitude: {"0-300 m": 15 min, "301-1829 m": 15 min, "above 1829 m": 25 min}}`, `
Minutes at a full rolling boil, against altitude in metres. 
| 1 l
4 +11.3 to 984.252: 15
15.3 +57.7 to 6000.6562: 15
73 +27 to : 25
4 0; 15.3 300; 73 1,829 m; 
Minutes at a full rolling boil, against altitude in metres. 
| 500 ml
4 +11.3 to 984.252: 10
15.3 +57.7 to 6000.6562: 15
73 +27 to : 20
4 0; 15.3 300; 73 1,829 m; 
`}, {"what is not canned has none", `
  - way: refrigerator`, "\n"},
	} {
		k := keepingOf(t, c.yaml+"\n    keeps: 1 year")
		if diff := cmp.Diff(c.want, "\n"+steps(stepCharts(&k[0], "keeping", content.Altitude{}))); diff != "" {
			t.Errorf("%s (-want +got):\n%s", c.name, diff)
		}
	}
}

// At both sides of every edge of the example's tables, the step that stands
// there shows the figure of the recipe, which Check has held against the
// published process.
func TestStepsAgreeWithTheData(t *testing.T) {
	looked := 0
	for _, r := range exampleRecipes(t) {
		for i := range r.Keeping {
			k := &r.Keeping[i]
			charts := stepCharts(k, "keeping", content.Altitude{})
			for _, p := range k.Processing {
				looked += agree(t, charts, r.Slug, jarName(p.Jar.V), p.Altitude, minutes)
				looked += agree(t, charts, r.Slug, jarName(p.Jar.V), p.Dial, pressure)
				looked += agree(t, charts, r.Slug, jarName(p.Jar.V), p.Weighted, pressure)
			}
		}
	}
	if looked < 100 {
		t.Errorf("looked at %d edges", looked)
	}
}

func exampleRecipes(t *testing.T) []*content.Recipe {
	t.Helper()
	site, _, err := content.Read(content.Starter, nil)
	if err != nil {
		t.Fatal(err)
	}
	return site.Recipes
}

// agree holds the steps of a jar against its bands, at the lower and the upper
// end of each, and gives how many places it looked at.
func agree[T any](t *testing.T, charts []StepChart, slug, jar string, bands []content.Band[T], figure func(T) Figure) (looked int) {
	for _, b := range bands {
		at := []*big.Rat{b.From.Feet()}
		if b.Over {
			at[0] = new(big.Rat).Add(at[0], big.NewRat(1, 1))
		}
		if !b.To.IsZero() {
			whole, _ := down(b.To.Quantity, content.Foot) // readers count whole feet
			at = append(at, big.NewRat(int64(whole), 1))
		}
		for _, feet := range at {
			looked++
			want := figure(b.Value.V)
			if !drawnAt(charts, jar, feet, len(bands), want.Number) {
				t.Errorf("%s, %s: no chart shows %s %s at %s ft", slug, jar, want.Number, want.Unit, feet.FloatString(2))
			}
		}
	}
	return looked
}

// drawnAt reports whether some line for a jar, of so many steps, has a figure at
// an altitude.
func drawnAt(charts []StepChart, jar string, feet *big.Rat, steps int, figure string) bool {
	for _, c := range charts {
		for _, l := range c.Lines {
			if len(l.Steps) != steps || !strings.Contains(strings.ToLower(l.Name), strings.ToLower(jar)) {
				continue
			}
			for _, s := range l.Steps {
				to, ok := new(big.Rat).SetString(s.To)
				if s.To == "" || ok && feet.Cmp(to) <= 0 {
					if s.Figure == figure {
						return true
					}
					break
				}
			}
		}
	}
	return false
}

// A preview draws recipes that the rules refuse too.
func TestBrokenBandsAreDrawn(t *testing.T) {
	for _, bands := range []string{
		`{"0-1,000 ft": 0 min}`,
		`{"above 1,000 ft": 10 min, "0-1,000 ft": 5 min}`,
		`{"2,000-3,000 ft": 5 min, "1,001-1,500 ft": 10 min}`,
		`{"above 29,000 ft": 10 min}`,
	} {
		k := keepingOf(t, "  - {way: boiling-water, processing: [{jar: pint, altitude: "+bands+"}], keeps: 1 year}")
		text := steps(stepCharts(&k[0], "keeping", content.Altitude{}))
		if strings.Contains(text, "NaN") || strings.Contains(text, "Inf") || strings.Contains(text, "+-") || text == "" {
			t.Errorf("%s: drawn as\n%s", bands, text)
		}
	}
}

func TestHomeIsMarked(t *testing.T) {
	k := keepingOf(t, `
  - way: boiling-water
    processing: [{jar: pint, altitude: {"0-1,000 ft": 10 min, "above 1,000 ft": 15 min}}]
    keeps: 1 year`)
	for text, want := range map[string]StepMark{
		"0 ft":      {"4", "our kitchen, 0\u00a0ft", "start"},
		"4,000 ft":  {"50", "our kitchen, 4,000\u00a0ft", "middle"},
		"1219.2 m":  {"50", "our kitchen, 1219.2\u00a0m", "middle"},
		"8,000 ft":  {"96", "our kitchen, 8,000\u00a0ft", "end"},
		"11,000 ft": {"96", "our kitchen, 11,000\u00a0ft", "end"},
	} {
		home, err := content.ParseAltitude(text)
		if err != nil {
			t.Fatal(err)
		}
		got := stepCharts(&k[0], "keeping", home)[0].Home
		if got == nil || *got != want {
			t.Errorf("%s: marked at %+v, want %+v", text, got, want)
		}
	}
	if got := stepCharts(&k[0], "keeping", content.Altitude{})[0].Home; got != nil {
		t.Errorf("marked at %+v, where no altitude is known", got)
	}
}
