package content

import (
	"bytes"
	"encoding/binary"
	"iter"
	"slices"
)

// The markers of a JPEG that matter here: ITU-T T.81, table B.1.
const (
	jpegSOI   = 0xd8 // start of the picture
	jpegEOI   = 0xd9 // its end
	jpegSOS   = 0xda // a scan: a header, and after it the pixels
	jpegAPP0  = 0xe0
	jpegAPP1  = 0xe1 // Exif, XMP
	jpegAPP2  = 0xe2 // a colour profile
	jpegAPP14 = 0xee // how colours were turned round
	jpegAPP15 = 0xef
	jpegCOM   = 0xfe // a remark
)

// exifHead begins the segment that holds Exif data: Exif 2.32, 4.7.2.
var exifHead = []byte("Exif\x00\x00")

// jpegParts gives each part of a JPEG with its marker, as it stands in the
// file, from after SOI to EOI. Cameras add films and other pictures after that.
func jpegParts(data []byte) iter.Seq2[byte, []byte] {
	return func(yield func(byte, []byte) bool) {
		rest := data[min(2, len(data)):]
		for {
			at := bytes.IndexByte(rest, 0xff) // decoders pass over what stands between parts
			if at < 0 || at+2 > len(rest) {
				return
			}
			rest = rest[at:]
			mark := rest[1]
			if mark == 0xff || mark == 0 { // fill, or no marker
				rest = rest[1:]
				continue
			}
			size := jpegSize(rest)
			if size == 0 || !yield(mark, rest[:size]) || mark == jpegEOI {
				return
			}
			rest = rest[size:]
		}
	}
}

// jpegSize is the length of the part that data begins with; 0 if it is not
// all there.
func jpegSize(data []byte) int {
	if data[1] == jpegEOI {
		return 2
	}
	if len(data) < 4 {
		return 0
	}
	size := 2 + int(binary.BigEndian.Uint16(data[2:]))
	if size < 4 || size > len(data) {
		return 0
	}
	if data[1] != jpegSOS {
		return size
	}
	for size+1 < len(data) {
		at := bytes.IndexByte(data[size:len(data)-1], 0xff)
		if at < 0 {
			break
		}
		size += at
		if m := data[size+1]; m != 0 && (m < 0xd0 || m > 0xd7) { // neither a stuffed byte nor RST
			return size
		}
		size += 2
	}
	return len(data)
}

// mostScans is how often a JPEG may go over the whole picture. Programs make
// about ten scans (common practice, no source), and a scan of a few bytes costs
// as much time as a long one.
const mostScans = 100

// jpegScans counts the scans of a picture, and reports whether it has an end.
func jpegScans(data []byte) (n int, whole bool) {
	for mark := range jpegParts(data) {
		switch mark {
		case jpegSOS:
			n++
		case jpegEOI:
			return n, true
		}
	}
	return n, false
}

// jpegOrientation says how the camera was held, from 1 to 8: Exif 2.32,
// 4.6.4. From 5 on it lay on its side, and width and height are exchanged.
func jpegOrientation(data []byte) int {
	for mark, part := range jpegParts(data) {
		if mark != jpegAPP1 {
			continue
		}
		if tiff, ok := bytes.CutPrefix(part[4:], exifHead); ok {
			return exifOrientation(tiff)
		}
	}
	return 1
}

// exifOrientation finds the tag 0x0112 in the first directory of Exif data.
func exifOrientation(tiff []byte) int {
	if len(tiff) < 8 {
		return 1
	}
	var order binary.ByteOrder = binary.BigEndian
	if tiff[0] == 'I' {
		order = binary.LittleEndian
	}
	at := uint64(order.Uint32(tiff[4:]))
	if at+2 > uint64(len(tiff)) {
		return 1
	}
	dir := tiff[at+2:]
	for range order.Uint16(tiff[at:]) {
		if len(dir) < 12 {
			return 1
		}
		if o := int(order.Uint16(dir[8:])); order.Uint16(dir) == 0x0112 && o >= 1 && o <= 8 {
			return o
		}
		dir = dir[12:]
	}
	return 1
}

// bareJPEG gives a JPEG without what was noted in it. Colours need the JFIF
// head, the colour profile and Adobe's segment; the way it was held is noted
// anew.
func bareJPEG(data []byte) []byte {
	bare := []byte{0xff, jpegSOI}
	if o := jpegOrientation(data); o != 1 {
		bare = append(bare, exifSegment(o)...)
	}
	for mark, part := range jpegParts(data) {
		note := mark == jpegCOM || mark >= jpegAPP0 && mark <= jpegAPP15
		kept := mark == jpegAPP0 && bytes.HasPrefix(part[4:], []byte("JFIF\x00")) ||
			mark == jpegAPP2 && bytes.HasPrefix(part[4:], []byte("ICC_PROFILE\x00")) ||
			mark == jpegAPP14 && bytes.HasPrefix(part[4:], []byte("Adobe"))
		if !note || kept {
			bare = append(bare, part...)
		}
	}
	return bare
}

// exifSegment is an Exif segment that says how the camera was held, and no
// more: a directory of one entry, of type SHORT, and no second directory.
func exifSegment(orientation int) []byte {
	tiff := []byte{'M', 'M', 0, 42, 0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, byte(orientation), 0, 0, 0, 0, 0, 0}
	size := 2 + len(exifHead) + len(tiff)
	return slices.Concat([]byte{0xff, jpegAPP1, byte(size >> 8), byte(size)}, exifHead, tiff)
}
