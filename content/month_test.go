package content

import (
	"testing"
	"time"
)

func TestParseMonth(t *testing.T) {
	for _, tt := range []struct {
		text string
		want time.Month
	}{
		{"jan", time.January}, {"February", time.February}, {"MAR", time.March}, {" jul ", time.July},
		{"july", time.July}, {"may", time.May}, {"Sept.", time.September}, {"sep", time.September}, {"december", time.December},
	} {
		if got, err := ParseMonth(tt.text); err != nil || got != tt.want {
			t.Errorf("ParseMonth(%q) = %v, %v", tt.text, got, err)
		}
	}
	for _, tt := range []struct{ text, want string }{
		{"", `"" is not a month: write it as in jul or july`},
		{"7", `"7" is not a month: write it as in jul or july`},
		{"autumn", `"autumn" is not a month: write it as in jul or july`},
		{"agust", `"agust" is not a month: did you mean august?`},
		{"ju", `"ju" is not a month: write it as in jul or july`},
	} {
		if got, err := ParseMonth(tt.text); err == nil || err.Error() != tt.want || got != 0 {
			t.Errorf("ParseMonth(%q) = %v, %v\nwant %s", tt.text, got, err, tt.want)
		}
	}
}
