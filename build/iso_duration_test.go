package build

import (
	"regexp"
	"testing"

	"stillroom/content"
)

// ISO 8601 durations as Google's recipe rules take them: SD-05 and SD-06 of
// the table of standards.
func TestISOTimes(t *testing.T) {
	tests := []struct {
		hands, cooking, waiting string
		prep, cook, total       string
	}{
		{"30 min", "45 min", "", "PT30M", "PT45M", "PT1H15M"},
		{"30 min", "45 min", "12 hours", "PT30M", "PT45M", "PT13H15M"},
		{"30 min", "45 min", "3 weeks", "PT30M", "PT45M", "P21DT1H15M"},
		{"", "", "3 weeks", "", "", "P21D"},
		{"30 min", "", "", "", "", "PT30M"},
		{"", "1 h 30 min", "", "", "", "PT1H30M"},
		{"20-30 min", "45 min to 1 hour", "", "PT30M", "PT1H", "PT1H30M"},
		{"30 min", "90 s", "", "PT30M", "PT1M30S", "PT31M30S"},
		{"30 min", "0 min", "1 day", "", "", "P1DT30M"},
		{"30 min", "45 min", "3 months", "PT30M", "PT45M", ""},
		{"30 min", "45 min", "1 month 1 week", "PT30M", "PT45M", ""},
		{"30 min", "45 min", "1 year", "PT30M", "PT45M", ""},
		{"", "", "", "", "", ""},
	}
	for _, test := range tests {
		times := content.Times{HandsOn: duration(t, test.hands), Cooking: duration(t, test.cooking), Waiting: duration(t, test.waiting)}
		prep, cook, total := isoTimes(times)
		if prep != test.prep || cook != test.cook || total != test.total {
			t.Errorf("isoTimes(%q, %q, %q) = %q, %q, %q; want %q, %q, %q",
				test.hands, test.cooking, test.waiting, prep, cook, total, test.prep, test.cook, test.total)
		}
	}
}

// duration reads a duration; the empty text is a key that was not written.
func duration(t *testing.T, s string) (f content.Field[content.Duration]) {
	t.Helper()
	if s == "" {
		return f
	}
	d, err := content.ParseDuration(s)
	if err != nil {
		t.Fatal(err)
	}
	return content.Field[content.Duration]{V: d, Pos: content.Pos{Line: 1}}
}

func TestInCalendar(t *testing.T) {
	is := regexp.MustCompile(`(?i)(\b|[0-9])(mo|y)`)
	for _, text := range []string{"", "10 min", "3 months", "2mo", "1 Year", "1y", "1h2mo", "days", "a month", "almost", "m", "mO", "-y", "_y", "é mo", "6 weeks or a yr"} {
		if got, want := inCalendar(text), is.MatchString(text); got != want {
			t.Errorf("inCalendar(%q) = %t", text, got)
		}
	}
}
