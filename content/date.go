package content

import (
	"fmt"
	"time"
)

// ParseDate reads a day of the calendar written as 2026-07-31, and nothing
// else.
func ParseDate(s string) (Date, error) {
	text := trimSpace(s)
	year, month, day, ok := dateDigits(text)
	switch {
	case !ok:
		return Date{}, &misreading{fmt.Sprintf("%q is not a date", clip(text)), "write year, month and day as in 2026-07-31"}
	case month < time.January || month > time.December:
		return Date{}, &misreading{fmt.Sprintf("%q is not a date", text), "the months run from 01 to 12, and the month stands before the day"}
	case day < 1 || day > daysIn(year, month):
		return Date{}, &misreading{fmt.Sprintf("%q is not a date", text), fmt.Sprintf("%s %d has %d days", month, year, daysIn(year, month))}
	}
	return Date{year, month, day}, nil
}

// dateDigits takes 2026-07-31 apart.
func dateDigits(s string) (year int, month time.Month, day int, ok bool) {
	const form = "0000-00-00"
	if len(s) != len(form) {
		return 0, 0, 0, false
	}
	for i := range len(form) {
		if form[i] == '0' && !isDigit(s[i]) || form[i] == '-' && s[i] != '-' {
			return 0, 0, 0, false
		}
	}
	return int(wholeOf(s[:4])), time.Month(wholeOf(s[5:7])), int(wholeOf(s[8:])), true
}

// daysIn counts the days of a month: the day before the first of the next.
func daysIn(year int, month time.Month) int {
	return time.Date(year, month+1, 0, 0, 0, 0, 0, time.UTC).Day()
}

// String gives the day as 2026-07-31, and nothing for the zero Date.
func (d Date) String() string {
	if d.IsZero() {
		return ""
	}
	if d.Year < 0 || d.Year > 9999 {
		return fmt.Sprintf("%04d-%02d-%02d", d.Year, d.Month, d.Day)
	}
	b := []byte("0000-00-00")
	writeDigits(b[:4], d.Year)
	writeDigits(b[5:7], int(d.Month))
	writeDigits(b[8:], d.Day)
	return string(b)
}

// writeDigits fills b with the last digits of n.
func writeDigits(b []byte, n int) {
	for i := len(b) - 1; i >= 0; i-- {
		b[i] = byte('0' + n%10)
		n /= 10
	}
}

// IsZero reports whether there is no date.
func (d Date) IsZero() bool { return d == Date{} }

// Before reports whether d comes before other. The zero Date comes before any.
func (d Date) Before(other Date) bool { return d.order() < other.order() }

// order gives a number that rises from day to day.
func (d Date) order() int { return (d.Year*100+int(d.Month))*100 + d.Day }

// Time gives midnight of the day in UTC; for the zero Date the zero Time.
func (d Date) Time() time.Time {
	if d.IsZero() {
		return time.Time{}
	}
	return time.Date(d.Year, d.Month, d.Day, 0, 0, 0, 0, time.UTC)
}
