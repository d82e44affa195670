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
// or else from its width and height. A picture has no business to run code,
// so one with a script is refused.
func readSVG(data []byte) (Image, error) {
	d := xml.NewDecoder(bytes.NewReader(data))
	var root *xml.StartElement
	for {
		t, err := d.Token()
		if err == io.EOF && root != nil {
			return svgImage(root.Attr)
		}
		if err != nil {
			if root != nil {
				return Image{}, errors.New("is an SVG picture that is broken: " + syntax(err))
			}
			return Image{}, errNoPicture
		}
		e, ok := t.(xml.StartElement)
		switch {
		case !ok:
		case root == nil && e.Name.Local != "svg":
			return Image{}, errNoPicture
		case runsCode(e):
			return Image{}, errors.New("is an SVG picture that holds a script")
		case root == nil:
			e = e.Copy()
			root = &e
		}
	}
}

// syntax says what is wrong with XML without the package's name before it.
func syntax(err error) string { return strings.TrimPrefix(err.Error(), "XML syntax error on ") }

func runsCode(e xml.StartElement) bool {
	if strings.EqualFold(e.Name.Local, "script") {
		return true
	}
	for _, a := range e.Attr {
		name, value := strings.ToLower(a.Name.Local), strings.ToLower(strings.TrimSpace(a.Value))
		if a.Name.Space == "" && strings.HasPrefix(name, "on") || strings.HasPrefix(value, "javascript:") {
			return true
		}
	}
	return false
}

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
		return Image{}, errors.New("is an SVG picture without a viewBox, so its shape is not known")
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
