package labels

import (
	_ "embed"
	"fmt"
	"slices"
	"strings"
	"sync"

	"github.com/go-pdf/fpdf"
	"golang.org/x/image/font/sfnt"
)

// A face is one of the typefaces of labels. Those of the built-in theme in
// their plain form, of which a PDF holds the letters that it uses. Their
// licences lie beside them.
type face struct {
	name string
	data []byte
}

var (
	//go:embed fonts/besley-800.ttf
	besley800 []byte
	//go:embed fonts/atkinson-400.ttf
	atkinson400 []byte
	//go:embed fonts/atkinson-700.ttf
	atkinson700 []byte

	display = &face{"besley", besley800}
	plain   = &face{"atkinson", atkinson400}
	bold    = &face{"atkinson-bold", atkinson700}
	faces   = []*face{display, plain, bold}
)

// parsed are the faces as they tell which letters they have.
var parsed = sync.OnceValues(func() (map[*face]*sfnt.Font, error) {
	fonts := make(map[*face]*sfnt.Font)
	for _, f := range faces {
		p, err := sfnt.Parse(f.data)
		if err != nil {
			return nil, fmt.Errorf("read the typeface %s: %w", f.name, err)
		}
		fonts[f] = p
	}
	return fonts, nil
})

// lacking lists the letters of a text for which a face has no sign.
func (f *face) lacking(text string) ([]string, error) {
	fonts, err := parsed()
	if err != nil {
		return nil, err
	}
	var buffer sfnt.Buffer
	var missing []string
	for _, c := range text {
		g, err := fonts[f].GlyphIndex(&buffer, c)
		if err != nil {
			return nil, err
		}
		if s := string(c); g == 0 && !slices.Contains(missing, s) {
			missing = append(missing, s)
		}
	}
	return missing, nil
}

// A pen measures text. Its PDF is the one that is drawn.
type pen struct{ f *fpdf.Fpdf }

func newPen(f *fpdf.Fpdf) pen {
	for _, face := range faces {
		f.AddUTF8FontFromBytes(face.name, "", face.data)
	}
	return pen{f}
}

// width is how wide a text is, in millimetres, at a size in points.
func (p pen) width(f *face, size float64, text string) float64 {
	p.f.SetFont(f.name, "", size)
	return p.f.GetStringWidth(text)
}

// wrap parts a text into lines of a width. It reports false if a word alone is
// wider.
func (p pen) wrap(f *face, size float64, text string, width float64) (lines []string, ok bool) {
	line := ""
	for _, piece := range breaks(text) {
		if line == "" || p.width(f, size, strings.TrimRight(line+piece, " ")) <= width {
			line += piece
		} else {
			lines = append(lines, strings.TrimRight(line, " "))
			line = piece
		}
		if p.width(f, size, strings.TrimRight(line, " ")) > width {
			return nil, false
		}
	}
	return append(lines, strings.TrimRight(line, " ")), true
}

// evenly wraps a text in as few lines as the width asks for, and makes those as
// alike as may be, so that no word is left alone in the last.
func (p pen) evenly(f *face, size float64, text string, width float64) (lines []string, ok bool) {
	lines, ok = p.wrap(f, size, text, width)
	for narrow := width; ok && len(lines) > 1; {
		narrow -= width / 40
		more, fits := p.wrap(f, size, text, narrow)
		if !fits || len(more) > len(lines) {
			break
		}
		lines = more
	}
	return lines, ok
}

// breaks parts a text where a line may end: after a space, a hyphen, a stroke.
func breaks(text string) []string {
	var pieces []string
	start := 0
	for i, c := range text {
		if c == ' ' || c == '-' || c == '/' {
			pieces = append(pieces, text[start:i+1])
			start = i + 1
		}
	}
	if start < len(text) {
		pieces = append(pieces, text[start:])
	}
	return pieces
}
