package themes

import (
	"bytes"
	"cmp"
	"image"
	"image/color"
	"image/png"
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
	for _, s := range m.shapes {
		cover := make([]int64, side)
		for y := range side {
			clear(cover)
			for r := range int64(rows) {
				at := (int64(y)*2*rows + 2*r + 1) * m.side / (2 * rows) // the middle of the row
				s.cross(at, unit, func(from, to int64) { spread(cover, from, to, m.side) })
			}
			for x, c := range cover {
				blend(img, x, y, s.fill, c, m.side*rows)
			}
		}
	}
	return img
}

// cross finds where a row goes into the shape and where out of it: wherever
// lines have gone around it, whichever way. Places are in parts times unit.
func (s shape) cross(y, unit int64, stretch func(from, to int64)) {
	type edge struct{ x, turn int64 }
	var edges []edge
	for _, line := range s.lines {
		for i, b := range line {
			a := line[(i+len(line)-1)%len(line)]
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

// spread notes how much of each pixel of a row lies between two places.
func spread(cover []int64, from, to, pixel int64) {
	from, to = max(from, 0), min(to, pixel*int64(len(cover)))
	for x := from / pixel; x*pixel < to; x++ {
		cover[x] += min(to, (x+1)*pixel) - max(from, x*pixel)
	}
}

// blend paints a pixel of which part, out of whole, is covered.
func blend(img *image.RGBA, x, y int, c color.RGBA, part, whole int64) {
	if part == 0 {
		return
	}
	if part == whole {
		img.SetRGBA(x, y, c)
		return
	}
	p := img.Pix[img.PixOffset(x, y):][:4:4]
	for i, v := range [4]uint8{c.R, c.G, c.B, c.A} {
		p[i] = uint8((int64(p[i])*(whole-part) + int64(v)*part + whole/2) / whole)
	}
}
