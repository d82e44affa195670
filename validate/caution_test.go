package validate

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"stillroom/content"
)

// TestCautions holds each caution to its figures, which its short form keeps,
// and to saying of nothing that it is safe.
func TestCautions(t *testing.T) {
	number := regexp.MustCompile(`[0-9]+`)
	for _, c := range cautions() {
		if c.Short == "" || len(c.Short) > len(c.Says) || c.Source.Title == "" || len(c.ways) == 0 {
			t.Errorf("caution %+v", c)
		}
		if got, want := number.FindAllString(c.Short, -1), number.FindAllString(c.Says, -1); !slices.Equal(got, want) {
			t.Errorf("%q in short has %q, want %q", c.Says, got, want)
		}
		if strings.ContainsAny(c.Says+c.Short, "{}") || strings.Contains(c.Says, "safe") {
			t.Errorf("%q", c.Says)
		}
	}
}

func TestCautionsOfWays(t *testing.T) {
	if got := Cautions([]content.Way{content.Refrigerator, content.Freezer}); len(got) != 0 {
		t.Errorf("cautions for what is kept cold: %v", got)
	}
	boiled, both := Cautions([]content.Way{content.BoilingWater}), Cautions([]content.Way{content.BoilingWater, content.PressureCanner})
	// USDA Complete Guide to Home Canning, AIB 539 (2015): 5 minutes of rest, 12 to 24 hours of cooling
	for _, want := range []string{"wait 5 minutes before you lift", "cool for 12-24 hours"} {
		if !slices.ContainsFunc(boiled, func(c Caution) bool { return strings.Contains(c.Says, want) }) {
			t.Errorf("boiling water: nothing says %q", want)
		}
	}
	seen := map[string]bool{}
	for _, c := range both {
		if seen[c.Says] {
			t.Errorf("%q stands twice", c.Says)
		}
		seen[c.Says] = true
	}
	if len(boiled) < 5 || len(both) <= len(boiled) {
		t.Errorf("%d cautions for boiling water, %d with pressure", len(boiled), len(both))
	}
}
