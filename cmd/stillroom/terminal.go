package main

import (
	"fmt"
	"io"
	"os"
	"strings"
	"unicode"
	"unicode/utf8"

	"golang.org/x/term"

	"stillroom/validate"
)

// isTerminal reports whether somebody reads w as it is written.
func isTerminal(w io.Writer) bool {
	f, ok := w.(*os.File)
	return ok && term.IsTerminal(int(f.Fd()))
}

// colours says whether words are coloured.
type colours bool

// colourFor colours only on a terminal, and not where the user has said that
// they want none: https://no-color.org.
func colourFor(w io.Writer) colours {
	return colours(isTerminal(w) && os.Getenv("NO_COLOR") == "" && os.Getenv("TERM") != "dumb")
}

func (c colours) severity(s validate.Severity) string {
	code := map[validate.Severity]string{validate.Error: "1;31", validate.Warning: "1;33", validate.Advice: "1;36"}[s]
	return c.in(code, s.String())
}

func (c colours) strong(s string) string { return c.in("1", s) }

func (c colours) faint(s string) string { return c.in("2", s) }

// in puts a text between the escapes of ECMA-48's SGR.
func (c colours) in(code, s string) string {
	if !c {
		return s
	}
	return "\x1b[" + code + "m" + s + "\x1b[0m"
}

// visible writes what a terminal would obey, and what turns round the order of
// letters, as Go writes it in a string: file names and other people's pages may
// hold it.
func visible(s string) string {
	if strings.IndexFunc(s, isObeyed) < 0 {
		return s
	}
	var b strings.Builder
	for i, r := range s {
		switch {
		case !isObeyed(r):
			b.WriteRune(r)
		case r == utf8.RuneError:
			fmt.Fprintf(&b, `\x%02x`, s[i])
		default:
			fmt.Fprintf(&b, `\u%04x`, r)
		}
	}
	return b.String()
}

func isObeyed(r rune) bool {
	return unicode.IsControl(r) && r != '\n' && r != '\t' || unicode.Is(unicode.Bidi_Control, r) || r == 0x2028 || r == 0x2029 || r == utf8.RuneError
}
