package build

import (
	"image"
	"strings"
	"testing"
)

// firstSides says for each way of holding a camera which side of the picture
// the first row of the file is, and which the first column: Exif 2.32, 4.6.4,
// Orientation, as TIFF 6.0 had it.
var firstSides = []string{"top left", "top right", "bottom right", "bottom left", "left top", "right top", "right bottom", "left bottom"}

// Every print shows what the camera saw, however it was held, mirrored too.
func TestPrintsStandUpright(t *testing.T) {
	for i, sides := range firstSides {
		data := held(jpegOf(t, storedFrom(corners(640, 480), sides)), byte(i+1))
		prints, err := develops("JPEG", data, forPages|forSearch|forFeed)
		if err != nil || len(prints) != 9 {
			t.Fatalf("%s: %d prints, %v", sides, len(prints), err)
		}
		for _, p := range prints {
			m, err := decode(map[format]string{asJPEG: "JPEG", asWebP: "WebP"}[p.Format], p.data)
			if err != nil {
				t.Fatal(err)
			}
			if got := quarters(reduce(m, 1)); got != "rgbw" || m.Bounds().Dx() != p.Width {
				t.Errorf("%s: the %s of %d by %d shows %q", sides, p.Format, p.Width, p.Height, got)
			}
		}
	}
}

// storedFrom is how a camera stores what it sees.
func storedFrom(seen *image.RGBA, sides string) *image.RGBA {
	row, column, _ := strings.Cut(sides, " ")
	w, h := seen.Rect.Dx(), seen.Rect.Dy()
	stored := image.NewRGBA(image.Rect(0, 0, w, h))
	if row == "left" || row == "right" {
		stored = image.NewRGBA(image.Rect(0, 0, h, w))
	}
	for y := range stored.Rect.Dy() {
		for x := range stored.Rect.Dx() {
			at := map[string]int{}
			at[row], at[column] = y, x
			stored.Set(x, y, seen.At(along(at, "left", "right", w), along(at, "top", "bottom", h)))
		}
	}
	return stored
}

// along is a place between two sides, told from one of them.
func along(at map[string]int, near, far string, size int) int {
	if n, ok := at[near]; ok {
		return n
	}
	return size - 1 - at[far]
}
