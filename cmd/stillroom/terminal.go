package main

import (
	"io"
	"os"

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
