package content

import (
	"bytes"
	"encoding/binary"
	"fmt"
	"unicode/utf8"
)

// maxFile is the most that is read of a file of text: 1 MB, some hundred
// times a long recipe.
const maxFile = 1 << 20

// clean reports what has no place in a text, the first in each line, and puts
// something harmless of the same length in its stead, so that every offset
// stays as it was.
func (s *source) clean() {
	if message, advice := unreadable(s.data); message != "" {
		s.fault(Pos{s.file, 1, 1}, BadText, message, advice)
		s.data, s.lost = nil, true
		return
	}
	whole := s.data
	for line, begin := 1, 0; begin < len(whole); line++ {
		end := len(whole)
		if i := bytes.IndexByte(whole[begin:], '\n'); i >= 0 {
			end = begin + i + 1
		}
		s.cleanLine(line, begin, end)
		begin = end
	}
}

// unreadable tells why nothing at all is read of a text.
func unreadable(text []byte) (message, advice string) {
	switch {
	case bytes.HasPrefix(text, []byte("\xff\xfe")), bytes.HasPrefix(text, []byte("\xfe\xff")):
		return "the file is UTF-16", "save it as UTF-8"
	case len(text) > maxFile:
		return fmt.Sprintf("the file holds more than the %d kB that are read", maxFile>>10), "split it into several files"
	}
	return "", ""
}

// cleanLine cleans one line, its end included.
func (s *source) cleanLine(line, begin, end int) {
	told := false
	for i := begin; ; {
		i += plainRun(s.data[i:end])
		if i == end || isEnd(s.data[i:end]) {
			return
		}
		r, size := utf8.DecodeRune(s.data[i:end])
		if message, advice := odd(r, size, s.data[i]); message != "" {
			if !told {
				s.fault(Pos{s.file, line, i - begin + 1}, BadText, message, advice)
			}
			told = true
			s.replace(i, size)
		}
		i += size
	}
}

// plainRun counts the plain bytes at the start of b, most of them by eights.
func plainRun(b []byte) (n int) {
	const ones, highs = 0x0101_0101_0101_0101, 0x8080_8080_8080_8080
	for ; len(b)-n >= 8; n += 8 {
		v := binary.LittleEndian.Uint64(b[n:])
		if (v|(v-' '*ones)|(v+ones))&highs != 0 { // a byte of 0x80 and more, below a space, or 0x7f
			break
		}
	}
	for n < len(b) && isPlain(b[n]) {
		n++
	}
	return n
}

func isPlain(b byte) bool { return b >= ' ' && b < 0x7f || b == '\t' }

func isEnd(b []byte) bool { return string(b) == "\n" || string(b) == "\r\n" }

// replace puts a space of the same length in the place of a character.
func (s *source) replace(offset, size int) {
	if !s.copied {
		s.data, s.copied = bytes.Clone(s.data), true
	}
	spaces := [...]string{1: " ", 2: "\u00A0", 3: "\u2002"}
	copy(s.data[offset:], spaces[size])
}

// odd tells what is wrong with a character, of which b is the first byte, and
// what to do; nothing if it may stand in a text.
func odd(r rune, size int, b byte) (message, advice string) {
	switch {
	case r == utf8.RuneError && size == 1:
		return fmt.Sprintf("the byte %02x is not UTF-8", b), "save the file as UTF-8, then look through it for lost characters"
	case r == utf8.RuneError:
		return "a character was lost here when the file was converted (U+FFFD)", "write it anew"
	case isControl(r):
		return fmt.Sprintf("a control character (U+%04X) stands here", r), "delete it; most editors do not show it"
	case isHidden(r):
		return fmt.Sprintf("a hidden character (U+%04X) stands here", r), "delete it; most editors do not show it"
	}
	return "", ""
}

// isControl reports whether r is a control character that no text holds, or
// one that ends a line for some programs and not for others.
func isControl(r rune) bool {
	switch {
	case r < ' ':
		return r != '\t'
	case r >= 0x7f && r <= 0x9f, r == 0x2028, r == 0x2029, r == 0xfffe, r == 0xffff:
		return true
	}
	return false
}

// isHidden reports whether r is not seen, and can make a number look other
// than it is: a byte order mark inside a text, and what turns round the order
// of the letters near it (Unicode Technical Report 36, from memory).
func isHidden(r rune) bool {
	return r == 0xfeff || r >= 0x202a && r <= 0x202e || r >= 0x2066 && r <= 0x2069
}
