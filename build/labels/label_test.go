package labels

import (
	"testing"

	"stillroom/content"
)

func date(t *testing.T, s string) content.Date {
	t.Helper()
	d, err := content.ParseDate(s)
	if err != nil {
		t.Fatal(err)
	}
	return d
}

func TestBestBy(t *testing.T) {
	tests := []struct{ made, keeps, want string }{
		{"2026-08-01", "12 months", "2027-08-01"},
		{"2026-08-01", "1 year", "2027-08-01"},
		{"2026-08-31", "6 months", "2027-02-28"}, // the month has no 31st
		{"2027-08-31", "6 months", "2028-02-29"},
		{"2026-12-15", "1 month", "2027-01-15"},
		{"2026-08-01", "12-18 months", "2027-08-01"}, // the shorter time
		{"2026-08-01", "3 weeks", "2026-08-22"},
		{"2026-02-27", "3 days", "2026-03-02"},
		{"2026-08-01", "36 hours", "2026-08-02"},
		{"2026-08-01", "", ""},
	}
	for _, test := range tests {
		var keeps content.Duration
		if test.keeps != "" {
			d, err := content.ParseDuration(test.keeps)
			if err != nil {
				t.Fatal(err)
			}
			keeps = d
		}
		if got := BestBy(date(t, test.made), keeps).String(); got != test.want {
			t.Errorf("made on %s, kept %s: best by %s, want %s", test.made, test.keeps, got, test.want)
		}
	}
}

// Every way says how it is kept, and what must be cold says so.
func TestKeep(t *testing.T) {
	for _, w := range []content.Way{
		content.BoilingWater, content.AtmosphericSteam, content.PressureCanner, content.Refrigerator,
		content.Freezer, content.Drying, content.Fermenting, content.CoolStore,
	} {
		if keep[w] == "" {
			t.Errorf("a jar by %s does not say how it is kept", w)
		}
		if (then[w] != "") != w.Canned() {
			t.Errorf("a jar by %s, once opened: %q", w, then[w])
		}
	}
	if keep[content.Refrigerator] != "Keep refrigerated." || keep[content.Freezer] != "Keep frozen." {
		t.Error("what is not shelf-stable does not say so")
	}
}

func recipe(t *testing.T) *content.Recipe {
	t.Helper()
	r, faults := content.ReadRecipe("content/recipes/damson-jam.md", []byte(`---
name: Damson jam
summary: Jam.
published: 2026-08-01
kind: jam
produce: [damsons]
yield: 6 half-pint jars
ingredients:
  - 6 cups damson plums, halved
  - for: the second pan
    items: [4 cups sugar, 1 cup Sugar, about as much water as looks right]
keeping:
  - way: refrigerator
    keeps: 3 weeks
---
1. Boil.
`))
	for _, f := range faults {
		t.Logf("%v: %s", f.Pos, f.Message)
	}
	return r
}

func TestLabel(t *testing.T) {
	r := recipe(t)
	b := Batch{Recipe: r, Way: &r.Keeping[0], Made: date(t, "2026-09-12")}
	want := Label{Name: "Damson jam", Made: "Made 12 Sep 2026", Best: "Best by 3 Oct 2026", Keep: "Keep refrigerated.", Batch: "Batch 2026-09-12"}
	if got := b.Label(); got != want {
		t.Errorf("the least: %+v", got)
	}
	b.Mark, b.Jar, b.Address, b.Ingredients = "B", r.Yield.V.Jar, "https://larder.example", true
	want.Batch, want.Jar, want.Address = "Batch 2026-09-12 B", "Half-pint", "larder.example/recipes/damson-jam/"
	want.Ingredients = "Ingredients: damson plums, sugar, about as much water as looks right"
	if got := b.Label(); got != want {
		t.Errorf("the most: %+v", got)
	}
}
