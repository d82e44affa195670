package labels

import (
	"math"

	"github.com/go-pdf/fpdf"
)

// A look is how the labels of a sheet are framed.
type look struct {
	frame func(f *fpdf.Fpdf, p place)
	text  func(p place) place // where the text goes
}

// The frame of a gummed label: a broad rule and a fine one, in millimetres.
const (
	broad  = 0.6
	fine   = 0.2
	apart  = 0.5 // between the two
	within = 1.2 // between the fine one and the text
)

// roomy is the side of a label from which on it has a frame.
const roomy = 33.0

// design chooses the look of a sheet's labels.
func design(s Sheet) look {
	switch small := math.Min(s.Width, s.Height); {
	case s.Round:
		return look{ring, square}
	case small < roomy:
		return look{func(*fpdf.Fpdf, place) {}, func(p place) place { return p.inset(White) }}
	}
	return look{frame, func(p place) place { return p.inset(White + broad + apart + fine + within) }}
}

// frame draws the two rules, the broad one with its corners cut in.
func frame(f *fpdf.Fpdf, p place) {
	red(f, broad)
	out := p.inset(White + broad/2)
	const cut = 1.6
	f.MoveTo(out.x+cut, out.y)
	for _, c := range corners(out, cut) {
		f.LineTo(c[0], c[1])
	}
	f.ClosePath()
	f.DrawPath("D")
	red(f, fine)
	in := p.inset(White + broad + apart + fine/2)
	f.MoveTo(in.x+cut, in.y)
	for _, c := range corners(in, cut) {
		f.LineTo(c[0], c[1])
	}
	f.ClosePath()
	f.DrawPath("D")
}

// corners goes round a label whose corners are cut off, from the left above.
func corners(p place, cut float64) [][2]float64 {
	r, b := p.x+p.w, p.y+p.h
	return [][2]float64{
		{r - cut, p.y}, {r, p.y + cut}, {r, b - cut}, {r - cut, b}, {p.x + cut, b}, {p.x, b - cut}, {p.x, p.y + cut},
	}
}

// ring draws the same round a round label.
func ring(f *fpdf.Fpdf, p place) {
	r := math.Min(p.w, p.h)/2 - White
	red(f, broad)
	f.Circle(p.x+p.w/2, p.y+p.h/2, r-broad/2, "D")
	red(f, fine)
	f.Circle(p.x+p.w/2, p.y+p.h/2, r-broad-apart-fine/2, "D")
}

// square is the largest square inside the ring: its side is 0.707 of the
// diameter (PR-08).
func square(p place) place {
	r := math.Min(p.w, p.h)/2 - White - broad - apart - fine
	side := r * math.Sqrt2
	return place{p.x + (p.w-side)/2, p.y + (p.h-side)/2, side, side}
}
