package content

import (
	"testing"
	"time"
)

func TestParseDate(t *testing.T) {
	for _, tt := range []struct {
		text string
		want Date
	}{
		{"2026-07-31", Date{2026, time.July, 31}},
		{" 2026-07-31 ", Date{2026, time.July, 31}},
		{"2024-02-29", Date{2024, time.February, 29}},
		{"2000-02-29", Date{2000, time.February, 29}}, // a century that 400 divides
		{"2026-12-31", Date{2026, time.December, 31}},
		{"0001-01-01", Date{1, time.January, 1}},
	} {
		got, err := ParseDate(tt.text)
		if err != nil || got != tt.want {
			t.Errorf("ParseDate(%q) = %v, %v", tt.text, got, err)
		}
	}
}

func TestParseDateRefuses(t *testing.T) {
	const form = " is not a date: write year, month and day as in 2026-07-31"
	for _, tt := range []struct{ text, want string }{
		{"", `""` + form},
		{"2026-7-31", `"2026-7-31"` + form},
		{"31-07-2026", `"31-07-2026"` + form},
		{"2026/07/31", `"2026/07/31"` + form},
		{"2026-07-31T10:00:00Z", `"2026-07-31T10:00:00Z"` + form},
		{"July 31 26", `"July 31 26"` + form},
		{"+026-07-31", `"+026-07-31"` + form},
		{"2026-13-01", `"2026-13-01" is not a date: the months run from 01 to 12, and the month stands before the day`},
		{"2026-00-01", `"2026-00-01" is not a date: the months run from 01 to 12, and the month stands before the day`},
		{"2026-02-29", `"2026-02-29" is not a date: February 2026 has 28 days`},
		{"1900-02-29", `"1900-02-29" is not a date: February 1900 has 28 days`},
		{"2026-04-31", `"2026-04-31" is not a date: April 2026 has 30 days`},
		{"2026-04-00", `"2026-04-00" is not a date: April 2026 has 30 days`},
	} {
		got, err := ParseDate(tt.text)
		if err == nil || err.Error() != tt.want || !got.IsZero() {
			t.Errorf("ParseDate(%q) = %v, %v\nwant %s", tt.text, got, err, tt.want)
		}
	}
}

// Every day of four centuries is read as the calendar of package time has it,
// and comes after the day before.
func TestDateEveryDay(t *testing.T) {
	before := Date{}
	for day := time.Date(1800, 1, 1, 0, 0, 0, 0, time.UTC); day.Year() < 2200; day = day.AddDate(0, 0, 1) {
		text := day.Format(time.DateOnly)
		d, err := ParseDate(text)
		if err != nil || d.String() != text || !d.Time().Equal(day) {
			t.Fatalf("ParseDate(%q) = %v, %v", text, d, err)
		}
		if !before.Before(d) || d.Before(before) || d.Before(d) {
			t.Fatalf("%v does not come after %v", d, before)
		}
		before = d
	}
}

func TestDateZero(t *testing.T) {
	if d := (Date{}); !d.IsZero() || d.String() != "" || !d.Time().IsZero() {
		t.Errorf("the zero Date is %q, %v", d, d.Time())
	}
}
