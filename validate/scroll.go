package validate

import (
	"encoding/binary"
	"strings"
)

// A scroll takes in texts one after another, many in one stretch of memory. What
// is written stays for good: what was found may quote it.
type scroll struct{ strings.Builder }

// scrollSize is how many bytes a stretch takes in, or more.
const scrollSize = 8 << 10

// begin gives the place where the next text begins, with space for about so many
// bytes.
func (s *scroll) begin(about int) int {
	if s.Cap()-s.Len() < about {
		s.Reset()
		s.Grow(max(about, scrollSize))
	}
	return s.Len()
}

// since gives what was written from a place on.
func (s *scroll) since(from int) string { return s.String()[from:] }

// small writes a text in small letters, where ASCII has them: every byte keeps its
// place.
func (s *scroll) small(text string) string {
	from := s.begin(len(text))
	var part [64]byte
	for len(text) > 0 {
		n := copy(part[:], text)
		for i := 0; i < n; i += 8 {
			letters := part[i : i+8]
			binary.LittleEndian.PutUint64(letters, smallLetters(binary.LittleEndian.Uint64(letters)))
		}
		s.Write(part[:n])
		text = text[n:]
	}
	return s.since(from)
}

// smallLetters makes small letters of the capitals among eight letters.
func smallLetters(eight uint64) uint64 {
	return eight | lettersBetween(eight, 'A', 'Z')&^eight&highBits>>2
}
