package validate

import (
	"fmt"
	"math/big"
	"strings"

	"stillroom/content"
)

// keepUnits are the units in which limits on keeping are written.
var keepUnits = map[string]content.Unit{
	"hour": content.Hour, "day": content.Day, "week": content.Week, "month": content.Month, "year": content.Year,
}

// duration gives the upper end of a limit that is a time: 4 week max.
func (l Limit) duration() content.Duration {
	unit, _, _ := strings.Cut(l.Unit, " ")
	return content.Duration{Quantity: content.Quantity{Low: l.High, High: l.High, Unit: keepUnits[unit]}}
}

// inDays gives the upper end in days; nil for what is no time.
func (l Limit) inDays() *big.Rat {
	if q := l.duration().Quantity; q.Unit != "" && q.High != nil {
		return days(q)
	}
	return nil
}

// keepsOver reports whether a way of keeping promises more than a limit. A
// month and four weeks are the same to a cook, a year and twelve months too.
func keepsOver(k *content.Keeping, most Limit) bool {
	if !k.Keeps.Set() || k.Keeps.V.High == nil {
		return false
	}
	return compare(days(k.Keeps.V.Quantity), most.days) > 0
}

// days gives the upper end of a time in days, a year being 365 of them and a
// month a twelfth, so that 12 months are a year.
func days(q content.Quantity) *big.Rat {
	switch q.Unit {
	case content.Month:
		return new(big.Rat).Mul(q.High, daysOfMonth)
	case content.Year:
		return new(big.Rat).Mul(q.High, daysOfYear)
	}
	c, ok := q.In(content.Day)
	if !ok {
		return new(big.Rat)
	}
	return c.High
}

var (
	daysOfYear  = big.NewRat(365, 1)
	daysOfMonth = big.NewRat(365, 12)
)

// tooLong speaks of a keeping time over a limit.
func tooLong(k *content.Keeping, most Limit, s Severity) Finding {
	return Finding{
		Pos:      k.Keeps.Pos,
		Severity: s,
		Message:  fmt.Sprintf("%s is over the published %s", k.Keeps.V.Text, most.duration()),
		Advice:   most.Statement + ".",
		Source:   most.Source,
	}
}
