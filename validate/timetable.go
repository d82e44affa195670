package validate

import (
	"math/big"
	"slices"

	"stillroom/content"
)

// A timeTable is every time that a recipe's ways of keeping give.
type timeTable []*timeEntry

// A timeEntry is a time of the table: for a jar and a stretch of altitude.
type timeEntry struct {
	size    string   // of the jar, in words
	holds   *big.Rat // what the jar holds in millilitres; nil for no jar
	span    *span    // nil for a pressure canner's time
	text    string
	minutes *big.Rat
	pos     content.Pos
}

func tableOf(matches []*Match) timeTable {
	all := make([]timeEntry, 0, entriesOf(matches))
	for _, m := range matches {
		way := m.Keeping.Way.V
		if !way.Canned() {
			continue
		}
		for _, p := range m.Keeping.Processing {
			holds, size := p.Jar.V.Millilitres(), p.Jar.V.String()
			if p.Time.Set() && way == content.PressureCanner {
				all = append(all, timeEntry{size, holds, nil, "", p.Time.V.Minutes(), p.Time.Pos})
			}
			for _, b := range p.Altitude {
				if b.Value.Set() {
					s := spanOf(b)
					all = append(all, timeEntry{size, holds, &s, b.Text, b.Value.V.Minutes(), b.Value.Pos})
				}
			}
		}
	}
	table := make(timeTable, len(all))
	for i := range all {
		table[i] = &all[i]
	}
	return table
}

// entriesOf counts what a table has at most.
func entriesOf(matches []*Match) (n int) {
	for _, m := range matches {
		for _, p := range m.Keeping.Processing {
			n += 1 + len(p.Altitude)
		}
	}
	return n
}

// forJars keeps the entries of some sizes; of a size that has none, those of
// the next size up. Without a size all entries are kept.
func (table timeTable) forJars(sizes []string) (kept timeTable) {
	if len(sizes) == 0 {
		return table
	}
	kept = make(timeTable, 0, len(table))
	for _, size := range sizes {
		jar := jarNamed(size)
		next := table.nextJar(jar.Millilitres())
		for _, e := range table {
			if next != nil && e.holds != nil && compare(e.holds, next) == 0 {
				kept = append(kept, e)
			}
		}
	}
	return kept
}

// nextJar gives the volume of the smallest jar of the table that is not under
// one; nil if all are.
func (table timeTable) nextJar(jar *big.Rat) (next *big.Rat) {
	for _, e := range table {
		if e.holds != nil && compare(e.holds, jar) >= 0 && (next == nil || compare(e.holds, next) < 0) {
			next = e.holds
		}
	}
	return next
}

// forHeight keeps, of each size of jar, the longest entries among those that a
// stretch of altitude touches.
func (table timeTable) forHeight(h *height) (kept timeTable) {
	if h == nil {
		return table
	}
	kept = make(timeTable, 0, len(table))
	for _, e := range table {
		if e.span == nil || e.touches(h) && !table.hasLonger(e, h) {
			kept = append(kept, e)
		}
	}
	return kept
}

// hasLonger reports whether a longer time stands for the same size of jar and some
// of the same stretch of altitude.
func (table timeTable) hasLonger(e *timeEntry, h *height) bool {
	return slices.ContainsFunc(table, func(o *timeEntry) bool {
		return o.size == e.size && compare(o.minutes, e.minutes) > 0 && o.touches(h)
	})
}

// touches reports whether an entry is for some altitude of a stretch.
func (e *timeEntry) touches(h *height) bool {
	switch {
	case e.span == nil:
		return false
	case h.top:
		return e.span.to == nil
	}
	return e.span.overlaps(h.span)
}

func (table timeTable) has(minutes ratio) bool {
	return slices.ContainsFunc(table, func(e *timeEntry) bool { return minutes.compare(e.minutes) == 0 })
}

func (table timeTable) most() *big.Rat {
	most := new(big.Rat)
	for _, e := range table {
		if compare(e.minutes, most) > 0 {
			most = e.minutes
		}
	}
	return most
}
