package content

import (
	"bytes"
	"encoding/binary"
	"errors"
	"fmt"
	"image"
	_ "image/jpeg" // the formats that image.DecodeConfig knows
	_ "image/png"
	"path"
	"strings"

	_ "golang.org/x/image/webp"
)

// MaxPixels is the size of the largest picture that is taken: 60 megapixels,
// more than a camera makes and about 240 MB once decoded.
const MaxPixels = 60_000_000

// mostSlender is how many times longer than the other a side is in no picture
// that anybody takes; a whole round of the horizon has 20. To print a longer one
// takes memory by the square of its length.
const mostSlender = 40

// An Image is what a picture's own bytes say about it.
type Image struct {
	Format        string // JPEG, PNG, WebP or SVG
	Width, Height int    // in pixels, as it is to be shown upright
}

// formats gives the format that the ending of a file's name stands for.
var formats = map[string]string{
	".jpg": "JPEG", ".jpeg": "JPEG", ".png": "PNG", ".webp": "WebP", ".svg": "SVG",
}

// ReadImage looks at the bytes of the picture called file, without decoding
// it. The error is a clause that tells the picture's owner what is wrong.
func ReadImage(file string, data []byte) (Image, error) {
	name := path.Base(file)
	want, ok := formats[strings.ToLower(path.Ext(name))]
	if !ok {
		return Image{}, fmt.Errorf("%s is not named as a JPEG, PNG, WebP or SVG picture", name)
	}
	img, err := readImage(data)
	switch {
	case err != nil:
		return Image{}, fmt.Errorf("%s %w", name, err)
	case img.Format != want:
		return Image{}, fmt.Errorf("%s is named as %s but holds %s", name, want, img.Format)
	case img.Format != "SVG" && max(img.Width, img.Height)/min(img.Width, img.Height) >= mostSlender:
		return Image{}, fmt.Errorf("%s has %d by %d pixels: one side is %d or more times the other", name, img.Width, img.Height, mostSlender)
	case img.Width > MaxPixels/img.Height:
		return Image{}, fmt.Errorf("%s has %d by %d pixels, more than %d million", name, img.Width, img.Height, MaxPixels/1_000_000)
	}
	return img, nil
}

var (
	errNoPicture = errors.New("is broken, or no picture at all")
	errCutShort  = errors.New("is cut short: its end is missing")
)

// otherFormat names a format that is not taken, as old sites and phones have
// them: the signature of GIF89a, and the brands of ISO/IEC 23008-12 (HEIC) and
// of AVIF, which stand at the eighth byte.
func otherFormat(data []byte) string {
	if bytes.HasPrefix(data, []byte("GIF8")) {
		return "GIF"
	}
	if len(data) < 12 || string(data[4:8]) != "ftyp" {
		return ""
	}
	switch string(data[8:12]) {
	case "heic", "heix", "mif1":
		return "HEIC"
	case "avif":
		return "AVIF"
	}
	return ""
}

func readImage(data []byte) (Image, error) {
	if len(data) == 0 {
		return Image{}, errors.New("is empty")
	}
	if other := otherFormat(data); other != "" {
		return Image{}, fmt.Errorf("holds %s, not a JPEG, PNG, WebP or SVG picture", other)
	}
	c, format, err := image.DecodeConfig(bytes.NewReader(data))
	if err != nil {
		return readSVG(data)
	}
	if c.Width < 1 || c.Height < 1 {
		return Image{}, errNoPicture
	}
	img := Image{Width: c.Width, Height: c.Height}
	whole := false
	switch format {
	case "jpeg":
		img.Format = "JPEG"
		scans := 0
		if scans, whole = jpegScans(data); scans > mostScans {
			return Image{}, fmt.Errorf("is a JPEG of more than %d scans; save it anew", mostScans)
		}
		if jpegOrientation(data) >= 5 {
			img.Width, img.Height = c.Height, c.Width
		}
	case "png":
		img.Format = "PNG"
		whole = pngWhole(data)
	case "webp":
		img.Format = "WebP"
		whole = uint64(len(data)) >= 8+uint64(binary.LittleEndian.Uint32(data[4:8])) // RFC 9649, 2.4
	}
	if !whole {
		return Image{}, errCutShort
	}
	return img, nil
}
