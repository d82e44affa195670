package content

import (
	"bytes"
	"encoding/binary"
	"iter"
)

// The markers of a JPEG that matter here: ITU-T T.81, table B.1.
const (
	markSOS  = 0xda // the header of a scan; the picture itself follows
	markAPP1 = 0xe1 // Exif or XMP
)

// jpegSegments gives the marker and the content of each segment before the
// picture itself, and at last SOS with all that follows it.
func jpegSegments(data []byte) iter.Seq2[byte, []byte] {
	return func(yield func(byte, []byte) bool) {
		if len(data) < 2 {
			return
		}
		for rest := data[2:]; len(rest) >= 4 && rest[0] == 0xff; {
			mark := rest[1]
			if mark == 0xff { // a fill byte
				rest = rest[1:]
				continue
			}
			size := 2 + int(binary.BigEndian.Uint16(rest[2:]))
			if size > len(rest) || size < 4 {
				return
			}
			if mark == markSOS {
				yield(mark, rest[size:])
				return
			}
			if !yield(mark, rest[4:size]) {
				return
			}
			rest = rest[size:]
		}
	}
}

// jpegWhole reports whether the picture has an end. Cameras may add more after
// it, and may hold a small picture with an end of its own in the header.
func jpegWhole(data []byte) bool {
	for mark, rest := range jpegSegments(data) {
		if mark == markSOS {
			return bytes.Contains(rest, []byte{0xff, 0xd9}) // EOI
		}
	}
	return false
}

// jpegSideways reports whether the camera lay on its side, so that the
// picture is shown with width and height exchanged: Exif 2.32, 4.6.4,
// Orientation 5 to 8.
func jpegSideways(data []byte) bool {
	for mark, seg := range jpegSegments(data) {
		if tiff, ok := bytes.CutPrefix(seg, []byte("Exif\x00\x00")); ok && mark == markAPP1 {
			o := exifOrientation(tiff)
			return o >= 5 && o <= 8
		}
	}
	return false
}

// exifOrientation finds the tag 0x0112 in the first directory of Exif data;
// 0 if there is none.
func exifOrientation(tiff []byte) int {
	if len(tiff) < 8 {
		return 0
	}
	var order binary.ByteOrder = binary.BigEndian
	if tiff[0] == 'I' {
		order = binary.LittleEndian
	}
	at := uint64(order.Uint32(tiff[4:]))
	if at+2 > uint64(len(tiff)) {
		return 0
	}
	dir := tiff[at+2:]
	for range order.Uint16(tiff[at:]) {
		if len(dir) < 12 {
			return 0
		}
		if order.Uint16(dir) == 0x0112 {
			return int(order.Uint16(dir[8:]))
		}
		dir = dir[12:]
	}
	return 0
}
