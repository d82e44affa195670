package validate

import (
	"fmt"
	"math/big"

	"stillroom/content"
)

// times gives the tested minutes of a jar by altitude, raised where the jars
// are not sterilised and the lowest time is under 10 minutes.
func (m *Match) times(j *JarProcess) []bandFigure {
	bands := j.Schedules[0].Bands
	raise := 0
	if !m.Keeping.JarsSterilised.V {
		raise = max(0, sterilisingMinutes()-bands[0].Minutes)
	}
	var fs []bandFigure
	for _, b := range bands {
		fs = append(fs, bandFigure{b, b.Minutes + raise, content.Minute})
	}
	return fs
}

// pressures gives the tested pressures of a schedule by altitude.
func pressures(s *Schedule) []bandFigure {
	var fs []bandFigure
	for _, b := range s.Bands {
		fs = append(fs, bandFigure{b, b.PSI, content.PSI})
	}
	return fs
}

// A bandFigure is what is to be written for a band: so many minutes, or psi.
type bandFigure struct {
	TestedBand
	n    int
	unit content.Unit
}

func (f bandFigure) rat() *big.Rat { return feet(f.n) }

func (f bandFigure) text() string { return fmt.Sprintf("%d %s", f.n, f.unit) }

func minutesText(n int) string { return fmt.Sprintf("%d %s", n, content.Minute) }

// writtenTable writes figures as a table by altitude.
func writtenTable(figures []bandFigure) content.Writing {
	var table content.Writing
	for _, f := range figures {
		table.Pairs = append(table.Pairs, content.Pair{Key: f.String(), Writing: content.Writing{Text: f.text()}})
	}
	return table
}
