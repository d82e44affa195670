package themes

import (
	"bytes"
	"cmp"
	"image"
	"image/color"
	"image/png"
	"math"
	"math/big"
	"slices"
)

// drawn are the pictures of its mark that a theme has, unless it brings files of
// these names: telephones put them on the first screen, and cut the maskable one
// to a shape of their own. https://www.w3.org/TR/appmanifest/#purpose-member
var drawn = []struct {
	name     string
	side     int
	maskable bool
}{
	{"icon-192.png", 192, false},
	{"icon-512.png", 512, false},
	{"icon-maskable.png", 512, true},
}

// drawMark adds the pictures of the mark that are not among the files. A mark
// that is not plain enough has none.
func drawMark(files []File) []File {
	find := func(name string) int { return slices.IndexFunc(files, func(f File) bool { return f.Name == name }) }
	i := find("icon.svg")
	if i < 0 {
		return files
	}
	m, err := readMark(files[i].Data)
	if err != nil {
		return files
	}
	all := slices.Clone(files)
	for _, d := range drawn {
		if find(d.name) < 0 {
			all = append(all, File{Name: d.name, Data: m.png(d.side, d.maskable)})
		}
	}
	slices.SortFunc(all, func(a, b File) int { return cmp.Compare(a.Name, b.Name) })
	return all
}

func (m mark) png(side int, maskable bool) []byte {
	if maskable {
		m = m.within()
	}
	var b bytes.Buffer
	if err := png.Encode(&b, m.paint(side)); err != nil {
		panic(err) // a buffer takes all
	}
	return b.Bytes()
}

// within draws everything but the ground smaller, so that it lies in the middle
// circle of eight tenths of the width, and the ground over the whole square.
func (m mark) within() mark {
	all := []spot{{0, 0}, {m.side, 0}, {m.side, m.side}, {0, m.side}}
	small := mark{m.side, []shape{{m.shapes[0].fill, [][]spot{all}}}}
	middle, farthest := m.side/2, int64(1)
	for _, s := range m.shapes[1:] {
		for _, p := range slices.Concat(s.lines...) {
			x, y := p.x-middle, p.y-middle
			farthest = max(farthest, new(big.Int).Sqrt(big.NewInt(x*x+y*y)).Int64()+1)
		}
	}
	room := min(m.side*4/10, farthest)
	for _, s := range m.shapes[1:] {
		lines := make([][]spot, len(s.lines))
		for i, line := range s.lines {
			for _, p := range line {
				lines[i] = append(lines[i], spot{middle + (p.x-middle)*room/farthest, middle + (p.y-middle)*room/farthest})
			}
		}
		small.shapes = append(small.shapes, shape{s.fill, lines})
	}
	return small
}

// rows is into how many rows a row of the picture is cut, so that slanting
// edges are smooth; along a row, each part of the drawing counts.
const rows = 8

func (m mark) paint(side int) *image.RGBA {
	img := image.NewRGBA(image.Rect(0, 0, side, side))
	unit := int64(side) // a pixel is m.side parts of the square, counted side times as fine
	cover := make([]int64, side)
	for _, s := range m.shapes {
		top, bottom := s.reach()
		for y := range side {
			from, to := side, 0 // the pixels that are touched
			for r := range int64(rows) {
				at := (int64(y)*2*rows + 2*r + 1) * m.side / (2 * rows) // the middle of the row
				if at < top*unit || at >= bottom*unit {
					continue
				}
				s.cross(at, unit, func(a, b int64) {
					first, end := spread(cover, a, b, m.side)
					from, to = min(from, first), max(to, end)
				})
			}
			for x := from; x < to; x++ {
				blend(img, x, y, s.fill, cover[x], m.side*rows)
				cover[x] = 0
			}
		}
	}
	return img
}

// reach is from where to where a shape goes, downwards.
func (s shape) reach() (top, bottom int64) {
	top, bottom = math.MaxInt32, 0
	for _, line := range s.lines {
		for _, p := range line {
			top, bottom = min(top, p.y), max(bottom, p.y)
		}
	}
	return top, bottom
}

// cross finds where a row goes into the shape and where out of it: wherever
// lines have gone around it, whichever way. Places are in parts times unit.
func (s shape) cross(y, unit int64, stretch func(from, to int64)) {
	type edge struct{ x, turn int64 }
	var room [16]edge
	edges := room[:0]
	for _, line := range s.lines {
		for i, b := range line {
			a := line[len(line)-1]
			if i > 0 {
				a = line[i-1]
			}
			ay, by := a.y*unit, b.y*unit
			switch {
			case ay <= y && y < by:
				edges = append(edges, edge{(a.x + (b.x-a.x)*(y-ay)/(by-ay)) * unit, 1})
			case by <= y && y < ay:
				edges = append(edges, edge{(b.x + (a.x-b.x)*(y-by)/(ay-by)) * unit, -1})
			}
		}
	}
	slices.SortFunc(edges, func(a, b edge) int { return cmp.Compare(a.x, b.x) })
	turns := int64(0)
	for i, e := range edges {
		if turns != 0 {
			stretch(edges[i-1].x, e.x)
		}
		turns += e.turn
	}
}

// spread notes how much of each pixel of a row lies between two places, and
// gives the pixels that are touched, to where they end.
func spread(cover []int64, from, to, pixel int64) (first, end int) {
	from, to = max(from, 0), min(to, pixel*int64(len(cover)))
	if from >= to {
		return len(cover), 0
	}
	first, end = int(from/pixel), int((to-1)/pixel)+1
	for x := first; x < end; x++ {
		cover[x] += pixel
	}
	cover[first] -= from - int64(first)*pixel
	cover[end-1] -= int64(end)*pixel - to
	return first, end
}

// blend paints a pixel of which part, out of whole, is covered.
func blend(img *image.RGBA, x, y int, c color.RGBA, part, whole int64) {
	p := img.Pix[img.PixOffset(x, y):][:4:4]
	if part == whole {
		p[0], p[1], p[2], p[3] = c.R, c.G, c.B, c.A
		return
	}
	for i, v := range [4]uint8{c.R, c.G, c.B, c.A} {
		p[i] = uint8((int64(p[i])*(whole-part) + int64(v)*part + whole/2) / whole)
	}
}
