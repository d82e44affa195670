package validate

import "testing"

func TestFilledIn(t *testing.T) {
	pairs := []string{"time", "10 min", "jar", "{pint}"}
	for text, want := range map[string]string{
		"":                          "",
		"No braces":                 "No braces",
		"{time}":                    "10 min",
		"In a {jar}, {time}.{time}": "In a {pint}, 10 min.10 min",
		"{else} and {time":          "{else} and {time",
	} {
		if got := filledIn(text, pairs); got != want {
			t.Errorf("filledIn(%q) = %q, want %q", text, got, want)
		}
	}
	if got := filledIn("{time}", nil); got != "{time}" {
		t.Errorf("without words: %q", got)
	}
}
