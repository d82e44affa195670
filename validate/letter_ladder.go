package validate

import (
	"fmt"

	"stillroom/content"
)

// letterPressure compares pressures with the general ladders of low-acid food.
func letterPressure(p *content.Processing) []Finding {
	var fs []Finding
	for _, b := range pressureBands(p.Dial) {
		fs = append(fs, underLadder(b, dialLadder)...)
	}
	for _, b := range pressureBands(p.Weighted) {
		fs = append(fs, underLadder(b, weightedLadder)...)
	}
	return fs
}

// A rung is a limit on pressure and the altitude in feet from which it holds.
type rung struct {
	from  int
	limit string
}

var (
	dialLadder     = []rung{{0, "altitude-dial-0"}, {2001, "altitude-dial-2001"}, {4001, "altitude-dial-4001"}, {6001, "altitude-dial-6001"}}
	weightedLadder = []rung{{0, "altitude-weighted-0"}, {1001, "altitude-weighted-1001"}}
)

// underLadder reports a band that stays under the highest rung that it
// reaches.
func underLadder(b band, ladder []rung) []Finding {
	if b.value == nil {
		return nil
	}
	for i := len(ladder) - 1; i >= 0; i-- {
		if b.span.to != nil && compareWhole(b.span.to, ladder[i].from) < 0 {
			continue
		}
		need := LimitOf(ladder[i].limit)
		if b.value.Cmp(need.Low) >= 0 {
			return nil
		}
		return []Finding{{
			Pos:     b.at,
			Message: fmt.Sprintf("%s is under the general %s psi for low-acid food %s", b.said, need.Value, b.text),
			Advice:  "Look at the letter again.",
			Source:  need.Source,
		}}
	}
	return nil
}
