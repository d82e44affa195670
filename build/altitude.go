package build

import (
	"math/big"

	"stillroom/content"
)

// An AltitudeTable is all that is asked of each size of jar, at every altitude
// for which there is a figure. It is always printed whole.
type AltitudeTable struct {
	Caption string
	Columns []Column
	Rows    []Band
}

// A Column is a size of jar.
type Column struct {
	Jar  string // Half-pint
	Note string // 20 min, where the time is the same at every altitude
}

// A Band is a stretch of altitude and the figure for each jar.
type Band struct {
	Altitude string // 1,001–6,000 ft
	Also     string // the same in the other unit: 306–1,829 m
	To       string // its upper end in feet, as a decimal; empty if there is none
	Figures  []Cell
}

// A Cell is a figure and what a clock must know of it.
type Cell struct {
	Figure
	Jar     string // half-pint
	Minutes string // whole ones, for which the jar is processed
}

// minuteTables gives the tables of a way whose minutes depend on altitude:
// one for all jars that have the same bands, so that a row is never split.
func minuteTables(caption string, rows []content.Processing) []AltitudeTable {
	var tables []AltitudeTable
	for _, jars := range alike(rows, minuteBands) {
		t := AltitudeTable{Caption: caption, Rows: bands(jars[0].Altitude)}
		for _, p := range jars {
			t.Columns = append(t.Columns, Column{Jar: jarName(p.Jar.V)})
			for i, b := range p.Altitude {
				t.Rows[i].Figures = append(t.Rows[i].Figures, Cell{minutes(b.Value.V), p.Jar.V.String(), clockMinutes(b.Value.V)})
			}
		}
		tables = append(tables, t)
	}
	return tables
}

// pressureTables gives the tables of one gauge. The minutes stand over the
// column, since they are the same at every altitude.
func pressureTables(caption string, rows []content.Processing, gauge func(content.Processing) []content.Band[content.Pressure]) []AltitudeTable {
	var tables []AltitudeTable
	for _, jars := range alike(rows, gauge) {
		t := AltitudeTable{Caption: caption, Rows: bands(gauge(jars[0]))}
		for _, p := range jars {
			time := minutes(p.Time.V)
			t.Columns = append(t.Columns, Column{jarName(p.Jar.V), time.Number + "\u00a0" + time.Unit})
			for i, b := range gauge(p) {
				t.Rows[i].Figures = append(t.Rows[i].Figures, Cell{pressure(b.Value.V), p.Jar.V.String(), clockMinutes(p.Time.V)})
			}
		}
		tables = append(tables, t)
	}
	return tables
}

// clockMinutes gives a time as a clock is set: a part of a minute counts as a
// whole one, and of a range the longer end.
func clockMinutes(d content.Duration) string {
	q, ok := d.In(content.Minute)
	if !ok {
		return ""
	}
	up := new(big.Int).Add(q.High.Num(), new(big.Int).Sub(q.High.Denom(), big.NewInt(1)))
	return up.Div(up, q.High.Denom()).String()
}

func minuteBands(p content.Processing) []content.Band[content.Duration]   { return p.Altitude }
func dialBands(p content.Processing) []content.Band[content.Pressure]     { return p.Dial }
func weightedBands(p content.Processing) []content.Band[content.Pressure] { return p.Weighted }

// alike groups the jars that have the same bands of altitude, in the order in
// which they were written. Jars without any are left out.
func alike[T any](rows []content.Processing, of func(content.Processing) []content.Band[T]) [][]content.Processing {
	var groups [][]content.Processing
next:
	for _, p := range rows {
		if len(of(p)) == 0 {
			continue
		}
		for i, g := range groups {
			if sameBands(of(g[0]), of(p)) {
				groups[i] = append(g, p)
				continue next
			}
		}
		groups = append(groups, []content.Processing{p})
	}
	return groups
}

func sameBands[T any](a, b []content.Band[T]) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if a[i].Text != b[i].Text {
			return false
		}
	}
	return true
}

func bands[T any](written []content.Band[T]) []Band {
	rows := make([]Band, len(written))
	for i, b := range written {
		rows[i] = Band{Altitude: typeset(b.Text), Also: otherUnit(b)}
		if !b.To.IsZero() {
			rows[i].To = decimal(b.To.Feet().FloatString(4))
		}
	}
	return rows
}

// otherUnit gives a band of feet to the nearest metre, as publications print it
// (1,000 ft is 305 m), and a band of metres in whole feet, rounded down: a
// kitchen may not come out lower than it is.
func otherUnit[T any](b content.Band[T]) string {
	to, round := content.Metre, nearest
	if b.From.Unit == content.Metre || b.To.Unit == content.Metre {
		to, round = content.Foot, down
	}
	unit := "\u00a0" + string(to)
	from, _ := round(b.From.Quantity, to)
	if b.To.IsZero() {
		return "above " + thousands(from) + unit
	}
	upper, ok := round(b.To.Quantity, to)
	if !ok {
		return ""
	}
	return thousands(from) + "–" + thousands(upper) + unit
}
