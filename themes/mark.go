package themes

import (
	"bytes"
	"encoding/xml"
	"errors"
	"image/color"
	"io"
	"strconv"
	"strings"
)

// A mark is a drawing that is plain enough for us to paint: flat shapes, one
// upon the other, on a square.
type mark struct {
	side   int64 // of the square, in parts
	shapes []shape
}

// A shape is one colour within closed lines.
type shape struct {
	fill  color.RGBA
	lines [][]spot // each goes from its last spot back to its first
}

// A spot is a place on the square, in parts from its upper left corner.
type spot struct{ x, y int64 }

// parts are how finely a length of the drawing is told. Whole numbers give the
// same picture on every system.
const parts = 1 << 12

var errNotPlain = errors.New("more than flat shapes on a square")

// readMark reads an SVG drawing that has nothing but paths, each with a colour.
func readMark(svg []byte) (mark, error) {
	var m mark
	d := xml.NewDecoder(bytes.NewReader(svg))
	for {
		t, err := d.Token()
		if err == io.EOF && m.side > 0 && len(m.shapes) > 0 {
			return m, nil
		}
		if err != nil {
			return mark{}, err
		}
		e, ok := t.(xml.StartElement)
		if !ok {
			continue
		}
		if err := m.add(e); err != nil {
			return mark{}, err
		}
	}
}

func (m *mark) add(e xml.StartElement) error {
	attrs := make(map[string]string)
	for _, a := range e.Attr {
		attrs[a.Name.Local] = a.Value
	}
	switch {
	case e.Name.Local == "svg" && m.side == 0:
		box := strings.Fields(attrs["viewBox"])
		if len(box) != 4 || box[0] != "0" || box[1] != "0" || box[2] != box[3] {
			return errNotPlain
		}
		side, err := strconv.ParseUint(box[2], 10, 12)
		m.side = int64(side) * parts
		return err
	case e.Name.Local == "path" && len(attrs) == 2:
		fill, err := readFill(attrs["fill"])
		if err != nil {
			return err
		}
		lines, err := readPath(attrs["d"])
		m.shapes = append(m.shapes, shape{fill, lines})
		return err
	}
	return errNotPlain
}

// readFill reads #rgb and #rrggbb.
func readFill(s string) (color.RGBA, error) {
	hex, ok := strings.CutPrefix(s, "#")
	if len(hex) == 3 {
		hex = string([]byte{hex[0], hex[0], hex[1], hex[1], hex[2], hex[2]})
	}
	n, err := strconv.ParseUint(hex, 16, 24)
	if !ok || len(hex) != 6 || err != nil {
		return color.RGBA{}, errNotPlain
	}
	return color.RGBA{uint8(n >> 16), uint8(n >> 8), uint8(n), 255}, nil
}
