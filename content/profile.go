package content

import (
	"bytes"
	"compress/zlib"
	"encoding/binary"
	"io"
	"slices"
)

// Orientation says how the camera of a picture was held, from 1 to 8 as Exif
// has it: 1 is upright. The data must be that of a picture of the given format
// which ReadImage has taken.
func Orientation(format string, data []byte) int {
	if format == "JPEG" {
		return jpegOrientation(data)
	}
	return 1
}

// ColourProfile gives the ICC profile that a picture carries, which says what
// its colours mean; nil if it has none. The data must be that of a picture of
// the given format which ReadImage has taken.
func ColourProfile(format string, data []byte) []byte {
	switch format {
	case "JPEG":
		return jpegProfile(data)
	case "PNG":
		return pngProfile(data)
	case "WebP":
		return webpProfile(data)
	}
	return nil
}

// jpegProfile puts the parts of a profile together, each of which is numbered:
// ICC.1:2010, B.4.
func jpegProfile(data []byte) []byte {
	head := []byte("ICC_PROFILE\x00")
	parts := make(map[byte][]byte)
	for mark, part := range jpegParts(data) {
		if mark != jpegAPP2 {
			continue
		}
		if body, ok := bytes.CutPrefix(part[4:], head); ok && len(body) > 2 {
			parts[body[0]] = body[2:]
		}
	}
	var profile []byte
	for i := range len(parts) {
		profile = append(profile, parts[byte(i+1)]...)
	}
	return profile
}

// maxProfile is the longest profile that is looked at, in bytes. Those of
// cameras and screens have some thousand.
const maxProfile = 1 << 20

// pngProfile finds the chunk iCCP, a name and then compressed data: PNG 3rd
// edition, 11.3.2.3.
func pngProfile(data []byte) []byte {
	const signature = 8
	for rest := data[signature:]; len(rest) >= 12; {
		size := uint64(binary.BigEndian.Uint32(rest)) + 12
		if size > uint64(len(rest)) || string(rest[4:8]) == "IDAT" {
			return nil
		}
		if string(rest[4:8]) == "iCCP" {
			_, packed, _ := bytes.Cut(rest[8:size-4], []byte{0})
			z, err := zlib.NewReader(bytes.NewReader(packed[min(1, len(packed)):]))
			if err != nil {
				return nil
			}
			profile, err := io.ReadAll(io.LimitReader(z, maxProfile))
			if err != nil {
				return nil
			}
			return profile
		}
		rest = rest[size:]
	}
	return nil
}

// webpProfile finds the chunk ICCP: RFC 9649, 2.7.1.3.
func webpProfile(data []byte) []byte {
	const head = 12
	for rest := data[head:]; len(rest) >= 8; {
		length := uint64(binary.LittleEndian.Uint32(rest[4:]))
		size := min(length+length%2+8, uint64(len(rest)))
		if string(rest[:4]) == "ICCP" {
			return slices.Clone(rest[8:min(8+length, size)])
		}
		rest = rest[size:]
	}
	return nil
}
