package content

import (
	"bytes"
	"encoding/binary"
	"errors"
	"time"
)

// ogg gives how long an Ogg file plays: the last page says how many samples
// there are up to its end, the first how many make a second. RFC 3533; RFC
// 7845 for Opus; the Vorbis I specification, 4.2.2 and A.2.
func (t *tape) ogg() (time.Duration, error) {
	b := t.peekAt(0, 28+255+19)
	if len(b) < 28+19 || len(b) < 27+int(b[26]) {
		return 0, errSoundCut
	}
	serial, head := binary.LittleEndian.Uint32(b[14:]), b[27+int(b[26]):]
	rate, skipped := uint32(0), int64(0)
	switch {
	case len(head) >= 16 && bytes.HasPrefix(head, []byte("\x01vorbis")):
		rate = binary.LittleEndian.Uint32(head[12:])
	case len(head) >= 12 && bytes.HasPrefix(head, []byte("OpusHead")):
		rate, skipped = 48000, int64(binary.LittleEndian.Uint16(head[10:]))
	}
	if rate == 0 {
		return 0, errors.New("holds neither Vorbis nor Opus")
	}
	samples, err := t.lastPage(serial)
	return playing(float64(max(samples-skipped, 0)) / float64(rate)), err
}

// longestPage is the most bytes that a page has: a header with 255 segments of
// 255 bytes.
const longestPage = 27 + 255 + 255*255

// lastPage gives the number of samples at the end of the last page, which must
// be whole and say that it is the last.
func (t *tape) lastPage(serial uint32) (samples int64, err error) {
	from := max(0, t.size-longestPage)
	tail := bytes.Clone(t.peekAt(from, longestPage))
	at := bytes.LastIndex(tail, []byte("OggS"))
	for at >= 0 && !wholePage(tail[at:]) {
		at = bytes.LastIndex(tail[:at], []byte("OggS"))
	}
	switch {
	case at < 0 || tail[at+5]&4 == 0:
		return 0, errSoundCut
	case binary.LittleEndian.Uint32(tail[at+14:]) != serial:
		return 0, errors.New("holds several recordings in one Ogg file; save it as one")
	}
	return int64(binary.LittleEndian.Uint64(tail[at+6:])), nil
}

// wholePage reports whether a page is there to its end.
func wholePage(b []byte) bool {
	if len(b) < 27 || len(b) < 27+int(b[26]) {
		return false
	}
	size := 27 + int(b[26])
	for _, n := range b[27:size] {
		size += int(n)
	}
	return len(b) >= size
}
