package build

import "image"

// scale gives a part of a picture in another size, which must not be larger.
//
// It weighs pixels by the cubic of Catmull and Rom, as x/image/draw does, but
// in whole numbers: processors round fractions differently, and the same
// content must give the same bytes on all of them. It holds as many rows at a
// time as one row of the outcome is made of.
func scale(src *image.RGBA, part image.Rectangle, w, h int) *image.RGBA {
	across, down := weights(part.Dx(), w), weights(part.Dy(), h)
	most := 0
	for _, d := range down {
		most = max(most, len(d.of))
	}
	rows := make([][]int32, most) // of the source, already narrowed: row y is at y % most
	for i := range rows {
		rows[i] = make([]int32, 4*w)
	}
	sums := make([]int32, 4*w)
	dst := image.NewRGBA(image.Rect(0, 0, w, h))
	next := 0
	for y, d := range down {
		for next = max(next, d.first); next < d.first+len(d.of); next++ {
			narrow(rows[next%most], src.Pix[src.PixOffset(part.Min.X, part.Min.Y+next):], across)
		}
		flatten(dst.Pix[y*dst.Stride:], rows, d, sums)
	}
	return dst
}

// A weighing says how much each of some pixels in a row counts.
type weighing struct {
	first int     // the first pixel that counts
	of    []int32 // parts of full
}

// The numbers of bits after the point: of a weight, and of a colour between the
// two steps.
const (
	weightBits = 14
	colourBits = 6
	full       = 1 << weightBits
)

// weights says what each of to pixels is made of, when there were from.
func weights(from, to int) []weighing {
	all := make([]weighing, to)
	reach := 2 * from // of the cubic, in to-ths of a pixel of the source
	for i := range all {
		// The middle of pixel i lies at (2i+1)*from/(2*to) in the source.
		middle := (2*i + 1) * from
		first := max(0, (middle-2*reach)/(2*to))
		last := min(from-1, (middle+2*reach)/(2*to))
		raw := make([]int64, 0, last-first+1)
		for j := first; j <= last; j++ {
			raw = append(raw, cubic((2*j+1)*to-middle, 2*from))
		}
		all[i] = weighing{first, shares(raw)}
	}
	return all
}

// cubic is the weight of a pixel whose distance is n/d. R. Keys, Cubic
// convolution interpolation for digital image processing (1981), with a = -1/2.
func cubic(n, d int) int64 {
	const one = 1 << 12
	t := int64(max(n, -n)) * one / int64(d)
	switch {
	case t < one:
		return 3*t*t*t - 5*t*t*one + 2*one*one*one
	case t < 2*one:
		return -t*t*t + 5*t*t*one - 8*t*one*one + 4*one*one*one
	}
	return 0
}

// shares makes weights add up to full. What is lost in rounding one is given to
// the next.
func shares(raw []int64) []int32 {
	var sum, so, given int64
	for _, w := range raw {
		sum += w
	}
	of := make([]int32, len(raw))
	for i, w := range raw {
		so += w
		of[i] = int32(so*full/sum - given)
		given += int64(of[i])
	}
	return of
}

// narrow scales one row.
func narrow(dst []int32, src []uint8, across []weighing) {
	const shift, half = weightBits - colourBits, 1 << (weightBits - colourBits - 1)
	for x, a := range across {
		var r, g, b, al int32
		p := src[4*a.first:][:4*len(a.of)]
		for i, w := range a.of {
			q := p[4*i : 4*i+4 : 4*i+4]
			r += w * int32(q[0])
			g += w * int32(q[1])
			b += w * int32(q[2])
			al += w * int32(q[3])
		}
		d := dst[4*x : 4*x+4 : 4*x+4]
		d[0], d[1], d[2], d[3] = (r+half)>>shift, (g+half)>>shift, (b+half)>>shift, (al+half)>>shift
	}
}

// flatten makes one row of several, with sums to work in.
func flatten(dst []uint8, rows [][]int32, down weighing, sums []int32) {
	const shift, half = weightBits + colourBits, 1 << (weightBits + colourBits - 1)
	clear(sums)
	for i, w := range down.of {
		row := rows[(down.first+i)%len(rows)][:len(sums)]
		for x, v := range row {
			sums[x] += w * v
		}
	}
	for x := 0; x < len(sums); x += 4 {
		alpha := min(max((sums[x+3]+half)>>shift, 0), 255)
		for c := range 3 { // a colour is never more than its alpha: image.RGBA
			dst[x+c] = uint8(min(max((sums[x+c]+half)>>shift, 0), alpha))
		}
		dst[x+3] = uint8(alpha)
	}
}
