package content

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"math"
	"strconv"
	"strings"
)

// readSVG reads an SVG as far as its end, and takes its size from its viewBox
// or else from its width and height. One that does more than a drawing is
// refused.
func readSVG(data []byte) (Image, error) {
	d := xml.NewDecoder(bytes.NewReader(data))
	var root *xml.StartElement
	var g guard
	for {
		t, err := d.Token()
		if err == io.EOF && root != nil {
			if message := g.parts.amiss(); message != "" {
				return Image{}, errors.New(message)
			}
			return svgImage(root.Attr)
		}
		if err != nil {
			if root != nil {
				return Image{}, errors.New("is an SVG picture that is broken: " + syntax(err))
			}
			return Image{}, errNoPicture
		}
		e, ok := t.(xml.StartElement)
		if ok && root == nil && (e.Name.Local != "svg" || e.Name.Space != "" && e.Name.Space != svgSpace) {
			return Image{}, errNoPicture
		}
		if message := g.amiss(t); message != "" {
			return Image{}, errors.New(message)
		}
		if ok && root == nil {
			e = e.Copy()
			root = &e
		}
	}
}

var errNoShape = errors.New("is an SVG picture without a viewBox, so its shape is not known")

// CheckDrawing tells what is wrong with an SVG, whatever its shape: an error as
// ReadImage gives it, without a name.
func CheckDrawing(data []byte) error {
	if _, err := readSVG(data); !errors.Is(err, errNoShape) {
		return err
	}
	return nil
}

// syntax says what is wrong with XML without the package's name before it.
func syntax(err error) string { return strings.TrimPrefix(err.Error(), "XML syntax error on ") }

// svgImage takes the size from the attributes of the root element. SVG 2,
// 8.6: viewBox is min-x, min-y, width and height.
func svgImage(attrs []xml.Attr) (Image, error) {
	var width, height, box string
	for _, a := range attrs {
		switch a.Name.Local {
		case "width":
			width = a.Value
		case "height":
			height = a.Value
		case "viewBox":
			box = a.Value
		}
	}
	if f := strings.FieldsFunc(box, func(r rune) bool { return r == ',' || r <= ' ' }); len(f) == 4 {
		width, height = f[2], f[3]
	}
	w, h := svgLength(width), svgLength(height)
	if w < 1 || h < 1 {
		return Image{}, errNoShape
	}
	return Image{Format: "SVG", Width: w, Height: h}, nil
}

// svgLength reads a length in pixels, rounded; 0 if it is anything else.
func svgLength(s string) int {
	f, err := strconv.ParseFloat(strings.TrimSuffix(strings.TrimSpace(s), "px"), 64)
	if err != nil || !(f >= 0.5 && f <= MaxPixels) {
		return 0
	}
	return int(math.Round(f))
}
