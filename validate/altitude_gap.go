package validate

import (
	"fmt"
	"math/big"

	"stillroom/content"
)

// altitudeGap reports a table by altitude that leaves a kitchen out, or names
// it twice.
var altitudeGap = &Rule{
	ID:       "altitude-gap",
	Severity: Error,
	Summary:  "a table by altitude that does not start at 0, leaves a gap or names an altitude twice",
	Doc: `Every reader must find exactly one row for their kitchen. The first band starts
at 0; each next one goes on where the one before it stops: 0-1,000 ft, then
1,001-6,000 ft, then above 6,000 ft. The step between two edges is one foot,
or one metre where the table is written in metres.`,
	Source:       guide,
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding { return checkTables(m, gaps) },
}

func gaps(t bandTable) []Finding {
	var fs []Finding
	if first := t.bands[0]; first.span.from.Sign() > 0 {
		fs = append(fs, Finding{
			Pos:     first.pos,
			Message: fmt.Sprintf("the table starts at %s, not at 0", first.text),
			Advice:  "Give a figure for kitchens at the sea as well.",
		})
	}
	for i := 1; i < len(t.bands); i++ {
		fs = append(fs, gapBetween(t.bands[i-1], t.bands[i])...)
	}
	return fs
}

func gapBetween(low, high band) []Finding {
	switch to := low.span.to; {
	case to == nil, compare(high.span.from, to) < 0:
		return []Finding{{
			Pos:     high.pos,
			Message: fmt.Sprintf("%s begins before %s is over", high.text, low.text),
			Advice:  "Let each band begin where the one before it stops, from the sea upward.",
			Notes:   []Note{{Pos: low.pos, Message: "the band before it"}},
		}}
	case high.beginsLater(to):
		return []Finding{{
			Pos:     high.pos,
			Message: fmt.Sprintf("no figure between %s and %s", low.text, high.text),
			Advice:  "Let each band begin where the one before it stops, from the sea upward.",
			Notes:   []Note{{Pos: low.pos, Message: "the band before it"}},
		}}
	}
	return nil
}

// beginsLater reports whether a band begins higher than one may behind another.
func (b band) beginsLater(end *big.Rat) bool {
	if b.span.over {
		return compare(b.span.from, end) > 0
	}
	return compareSum(b.span.from, end, b.one()) > 0
}
