package build

import (
	"strings"
	"testing"
)

func TestSeasonRing(t *testing.T) {
	for _, c := range []struct{ season, spans, told string }{
		{"[jul, aug, sep]", "Jul–Sep", "In season from July to September."},
		{"[jan, feb, nov, dec]", "Nov–Feb", "In season from November to February."},
		{"[dec]", "Dec", "In season in December."},
		{"[may, jun, sep, oct]", "May–Jun Sep–Oct", "In season from May to June and from September to October."},
	} {
		r := recipeOf(t, "kind: jam\nproduce: [plums]\nseason: "+c.season+"\nkeeping: [{way: refrigerator, keeps: 1 week}]")
		ring := seasonRing(r)
		var spans []string
		for _, s := range ring.Spans {
			spans = append(spans, s.Text)
		}
		if got := strings.Join(spans, " "); got != c.spans || ring.Told != c.told {
			t.Errorf("%s: %q, %q; want %q, %q", c.season, got, ring.Told, c.spans, c.told)
		}
		for i, m := range ring.Months {
			if ripe := strings.Contains(c.season, strings.ToLower(m.Short)); m.Ripe != ripe || m.Turn != 30*i {
				t.Errorf("%s: %s at %d degrees, ripe %v", c.season, m.Short, m.Turn, m.Ripe)
			}
		}
	}
}

func TestNoRingForAllYear(t *testing.T) {
	for _, season := range []string{"[jan, feb, mar, apr, may, jun, jul, aug, sep, oct, nov, dec]", "[]"} {
		r := recipeOf(t, "kind: jam\nproduce: [chicken]\nseason: "+season+"\nkeeping: [{way: refrigerator, keeps: 1 week}]")
		if ring := seasonRing(r); ring != nil {
			t.Errorf("%s: %s", season, ring.Told)
		}
	}
}
