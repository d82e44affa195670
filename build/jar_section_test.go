package build

import (
	"math"
	"strconv"
	"strings"
	"testing"
)

func number(t *testing.T, s string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

func TestHeadspaceIsToScale(t *testing.T) {
	for _, c := range []struct {
		yaml string
		part float64 // the headspace in heights of the jar, outside
		told string
	}{
		{`{way: boiling-water, headspace: 1/4 in, processing: [{jar: half-pint}]}`, 0.25 / 3.5, "¼ in (6 mm) is left free"},
		{`{way: boiling-water, headspace: 1/2 in, processing: [{jar: pint}, {jar: quart}]}`, 0.5 / 6.875, "A quart jar cut through, to scale. From the rim down to the food, ½ in (13 mm) is left free. The outline of a pint jar lies within"},
		{`{way: pressure, headspace: 1 in, processing: [{jar: pint}]}`, 1.0 / 5, "1 in (25 mm) is left free"},
		{`{way: atmospheric-steam, headspace: 13 mm, processing: [{jar: 500 ml}]}`, 13 / 25.4 / ((5-glassWall)*math.Cbrt(500/473.176473) + glassWall), "13 mm (0.51 in) is left free"},
	} {
		k := keepingOf(t, "  - "+c.yaml[:len(c.yaml)-1]+", keeps: 1 year}")
		s := jarSection(&k[0], "keeping")
		rim, level, foot := number(t, s.Rim), number(t, s.Level), number(t, s.Height)-6
		if got := (level - rim) / (foot - rim); math.Abs(got-c.part) > 0.003 {
			t.Errorf("%s: headspace drawn as %.4f of the jar, want %.4f", c.yaml, got, c.part)
		}
		if told := strings.ReplaceAll(s.Told, "\u00a0", " "); !strings.Contains(told, c.told) {
			t.Errorf("%s: told as %q, want %q in it", c.yaml, told, c.told)
		}
	}
}

func TestNoSectionWhereItSaysNothing(t *testing.T) {
	for _, yaml := range []string{
		`{way: refrigerator}`,
		`{way: boiling-water, headspace: 1/2 in}`,
		`{way: boiling-water, processing: [{jar: pint}]}`,
		`{way: boiling-water, headspace: 2 1/2 in, processing: [{jar: pint}]}`, // half the jar
		`{way: freezer, headspace: 1/2 in, container: pint freezer bags}`,
		`{way: freezer, headspace: 1/2 in, container: boxes}`,
	} {
		k := keepingOf(t, "  - "+yaml[:len(yaml)-1]+", keeps: 1 year}")
		if s := jarSection(&k[0], "keeping"); s != nil {
			t.Errorf("%s: drawn as %q", yaml, s.Told)
		}
	}
}

func TestFreezerContainers(t *testing.T) {
	for yaml, want := range map[string]string{
		"straight-sided half-pint freezer jars": "half-pint",
		"wide pint freezer boxes":               "pint",
		"quart tubs, filled loosely":            "quart",
	} {
		k := keepingOf(t, "  - {way: freezer, headspace: 1/2 in, container: '"+yaml+"', keeps: 1 year}")
		s := jarSection(&k[0], "keeping")
		if s == nil || !strings.EqualFold(s.Size, want) || !strings.Contains(s.Told, "freezer container") {
			t.Errorf("%s: drawn as %+v", yaml, s)
			continue
		}
		if box := s.Band == ""; box != !strings.Contains(yaml, "jar") {
			t.Errorf("%s: the lid is that of the other vessel", yaml)
		}
	}
}

// The label hides neither the surface of the food nor a smaller jar's name, and
// all words lie within the picture.
func TestNothingOfASectionHidesAnother(t *testing.T) {
	sizes := []string{"quarter-pint", "half-pint", "12-ounce", "pint", "pint-and-a-half", "quart", "half-gallon"}
	for i, large := range sizes {
		for _, small := range append([]string{large}, sizes[:i]...) {
			for _, room := range []string{"1/4 in", "1/2 in", "1 in"} {
				k := keepingOf(t, "  - {way: boiling-water, headspace: "+room+", processing: [{jar: "+large+"}, {jar: "+small+"}], keeps: 1 year}")
				s := jarSection(&k[0], "keeping")
				if s == nil {
					continue // an inch is half of the smallest jar
				}
				what := large + " and " + small + " with " + room
				top := number(t, s.Label.Y)
				if top < number(t, s.Level) {
					t.Errorf("%s: the label hides the surface", what)
				}
				for _, o := range s.Others {
					if base := number(t, o.Foot); base > top && base-12 < top+labelHigh {
						t.Errorf("%s: the label from %v hides the name at %v", what, top, base)
					}
				}
				if low := number(t, s.Height); number(t, s.Notes.Meaning) > low || top+labelHigh > low {
					t.Errorf("%s: words below the picture", what)
				}
			}
		}
	}
}
