package content

import (
	"encoding/binary"
	"iter"
	"slices"
)

// Bare gives a picture without what a camera or a program has noted in it:
// where and when it was taken, with what, by whom. A picture taken at home
// tells where home is. What is seen stays the same to the bit.
//
// The data must be that of a picture of the given format which ReadImage has
// taken; it is not changed.
func Bare(format string, data []byte) []byte {
	switch format {
	case "JPEG":
		return bareJPEG(data)
	case "PNG":
		return barePNG(data)
	case "WebP":
		return bareWebP(data)
	}
	return data
}

// pngNotes are the chunks that hold no part of the picture: PNG 3rd edition,
// 11.3.3 and 11.3.4.
var pngNotes = []string{"tEXt", "zTXt", "iTXt", "eXIf", "tIME"}

// barePNG leaves out notes, and what follows the end.
func barePNG(data []byte) []byte {
	bare := slices.Clone(data[:pngSignature])
	for kind, chunk := range pngChunks(data) {
		if !slices.Contains(pngNotes, kind) {
			bare = append(bare, chunk...)
		}
	}
	return bare
}

const pngSignature = 8 // bytes

// pngChunks gives the chunks of a PNG, each whole and with its kind, as far as
// IEND or to where the file breaks off: PNG 3rd edition, 5.3.
func pngChunks(data []byte) iter.Seq2[string, []byte] {
	return func(yield func(string, []byte) bool) {
		for rest := data[pngSignature:]; len(rest) >= 12; {
			size := uint64(binary.BigEndian.Uint32(rest)) + 12 // length, type, checksum
			if size > uint64(len(rest)) {
				return
			}
			kind := string(rest[4:8])
			if !yield(kind, rest[:size]) || kind == "IEND" {
				return
			}
			rest = rest[size:]
		}
	}
}

// pngWhole reports whether a PNG has all its chunks.
func pngWhole(data []byte) bool {
	last := ""
	for kind := range pngChunks(data) {
		last = kind
	}
	return last == "IEND"
}

// bareWebP leaves out the chunks EXIF and "XMP ", and the flags that promise
// them: RFC 9649, 2.7.
func bareWebP(data []byte) []byte {
	const head = 12 // RIFF, size, WEBP
	bare := slices.Clone(data[:head])
	for rest := data[head:]; len(rest) >= 8; {
		size := uint64(binary.LittleEndian.Uint32(rest[4:])) + 8
		size = min(size+size%2, uint64(len(rest)))
		switch string(rest[:4]) {
		case "EXIF", "XMP ":
		case "VP8X":
			at := len(bare)
			bare = append(bare, rest[:size]...)
			if size > 8 {
				bare[at+8] &^= 0x08 | 0x04
			}
		default:
			bare = append(bare, rest[:size]...)
		}
		rest = rest[size:]
	}
	binary.LittleEndian.PutUint32(bare[4:], uint32(len(bare)-8))
	return bare
}
