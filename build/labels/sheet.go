// Package labels draws sheets of jar labels as PDF files, the same bytes for
// the same labels.
package labels

import (
	"fmt"
	"strings"

	"stillroom/content"
)

// A Sheet is a page of labels in a grid. Lengths are in millimetres.
type Sheet struct {
	Name                  string // a4-3x7; empty for one of the author's own
	PageWidth, PageHeight float64
	Columns, Rows         int
	Width, Height         float64 // of one label
	ColumnGap, RowGap     float64
	Side, Top             float64 // from the left and the upper edge of the page to the first label
	Round                 bool    // a label is the largest circle in its place
}

const inch = 25.4

// sheets are plain grids that add up to their page: PR-08 of the table of
// standards, by arithmetic. The round ones are by arithmetic too.
var sheets = []Sheet{
	{"a4-3x7", 210, 297, 3, 7, 63.5, 38.1, 2.5, 0, 7.25, 15.15, false},
	{"a4-3x8", 210, 297, 3, 8, 70, 37, 0, 0, 0, 0.5, false},
	{"a4-2x7", 210, 297, 2, 7, 99.1, 38.1, 2.5, 0, 4.65, 15.15, false},
	{"a4-2x4", 210, 297, 2, 4, 99.1, 67.7, 2.5, 0, 4.65, 13.1, false},
	{"a4-3x4-round", 210, 297, 3, 4, 60, 60, 5, 5, 10, 21, true},
	letter("letter-3x10", 3, 10, 2.625, 1, 0.125, 0.1875, 0.5),
	letter("letter-2x10", 2, 10, 4, 1, 0.1875, 0.15625, 0.5),
	letter("letter-2x5", 2, 5, 4, 2, 0.1875, 0.15625, 0.5),
	letter("letter-2x3", 2, 3, 4, 10.0/3, 0.1875, 0.15625, 0.5),
	round(letter("letter-3x4-round", 3, 4, 2.5, 2.5, 0.25, 0.25, 0.5)),
}

// letter is a sheet that is measured in inches.
func letter(name string, columns, rows int, width, height, gap, side, top float64) Sheet {
	return Sheet{name, 8.5 * inch, 11 * inch, columns, rows, width * inch, height * inch, gap * inch, 0, side * inch, top * inch, false}
}

func round(s Sheet) Sheet {
	s.Round = true
	return s
}

// Names gives the names of the sheets that are known.
func Names() []string {
	var names []string
	for _, s := range sheets {
		names = append(names, s.Name)
	}
	return names
}

// Find finds a sheet by its name.
func Find(name string) (Sheet, bool) {
	for _, s := range sheets {
		if s.Name == name {
			return s, true
		}
	}
	return Sheet{}, false
}

// pages are the sizes of paper that a site may name.
var pages = map[string][2]float64{"a4": {210, 297}, "letter": {8.5 * inch, 11 * inch}}

// Own makes a sheet of an author's measures. Where it is not said how far from
// the edges the labels lie, they lie in the middle. The error is a clause.
func Own(l content.Labels) (Sheet, error) {
	page, ok := pages[l.Page]
	if !ok {
		return Sheet{}, fmt.Errorf("the page of the labels is a4 or letter, not %q", l.Page)
	}
	s := Sheet{
		PageWidth: page[0], PageHeight: page[1], Columns: l.Columns, Rows: l.Rows,
		Width: millimetres(l.Width), Height: millimetres(l.Height),
		ColumnGap: millimetres(l.ColumnGap), RowGap: millimetres(l.RowGap),
		Side: millimetres(l.Side), Top: millimetres(l.Top), Round: l.Round,
	}
	if s.Columns < 1 || s.Rows < 1 || s.Width <= 0 || s.Height <= 0 {
		return Sheet{}, fmt.Errorf("a sheet has at least one label, which is wider and higher than nothing")
	}
	if l.Side.IsZero() {
		s.Side = (s.PageWidth - s.across()) / 2
	}
	if l.Top.IsZero() {
		s.Top = (s.PageHeight - s.down()) / 2
	}
	return s, s.check()
}

// near is how exactly lengths on paper are meant: PR-07.
const near = 0.1

// check says where the labels do not fit on the page.
func (s Sheet) check() error {
	if over := s.Side + s.across() - s.PageWidth; s.Side < -near || over > near {
		return fmt.Errorf("%d labels beside one another take %.1f mm, and the page is %.1f mm wide", s.Columns, s.across()+max(s.Side, 0), s.PageWidth)
	}
	if over := s.Top + s.down() - s.PageHeight; s.Top < -near || over > near {
		return fmt.Errorf("%d labels below one another take %.1f mm, and the page is %.1f mm high", s.Rows, s.down()+max(s.Top, 0), s.PageHeight)
	}
	return nil
}

// across is how much room the labels of a row take.
func (s Sheet) across() float64 {
	return float64(s.Columns)*s.Width + float64(s.Columns-1)*s.ColumnGap
}

// down is how much room the labels of a column take.
func (s Sheet) down() float64 {
	return float64(s.Rows)*s.Height + float64(s.Rows-1)*s.RowGap
}

// PerPage is how many labels a page has.
func (s Sheet) PerPage() int { return s.Columns * s.Rows }

// String names a sheet in a message.
func (s Sheet) String() string {
	what := fmt.Sprintf("labels of %s by %s mm", short(s.Width), short(s.Height))
	if s.Round {
		what = fmt.Sprintf("round labels of %s mm", short(min(s.Width, s.Height)))
	}
	return fmt.Sprintf("%d by %d %s", s.Columns, s.Rows, what)
}

func short(f float64) string { return strings.TrimSuffix(fmt.Sprintf("%.1f", f), ".0") }

// A place is where one label lies on its page, its left upper corner being x, y.
type place struct{ x, y, w, h float64 }

// place gives the place of the label of a number, from 0 at the left above, row
// by row.
func (s Sheet) place(n int) place {
	column, row := n%s.Columns, n/s.Columns
	return place{
		s.Side + float64(column)*(s.Width+s.ColumnGap), s.Top + float64(row)*(s.Height+s.RowGap),
		s.Width, s.Height,
	}
}

// inset is the place without so much at each side.
func (p place) inset(by float64) place {
	return place{p.x + by, p.y + by, p.w - 2*by, p.h - 2*by}
}

// millimetres is 0 for no length.
func millimetres(l content.Length) float64 {
	q, ok := l.In(content.Millimetre)
	if !ok {
		return 0
	}
	f, _ := q.Low.Float64()
	return f
}
