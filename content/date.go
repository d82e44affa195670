package content

import (
	"fmt"
	"strings"
	"time"
)

// ParseDate reads a day of the calendar written as 2026-07-31, and nothing
// else.
func ParseDate(s string) (Date, error) {
	t, err := time.Parse(time.DateOnly, strings.TrimSpace(s))
	if err != nil {
		return Date{}, fmt.Errorf("%q is not a date: write it as 2026-07-31", s)
	}
	return Date{t.Year(), t.Month(), t.Day()}, nil
}

// String gives the day as 2026-07-31, and nothing for the zero Date.
func (d Date) String() string {
	if d.IsZero() {
		return ""
	}
	return fmt.Sprintf("%04d-%02d-%02d", d.Year, d.Month, d.Day)
}

// IsZero reports whether there is no date.
func (d Date) IsZero() bool { return d == Date{} }

// Before reports whether d comes before other.
func (d Date) Before(other Date) bool { return d.Time().Before(other.Time()) }

// Time gives midnight of the day in UTC.
func (d Date) Time() time.Time {
	return time.Date(d.Year, d.Month, d.Day, 0, 0, 0, 0, time.UTC)
}
