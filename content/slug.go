package content

import (
	"fmt"
	"path"
	"strings"
	"unicode"
)

// Slug makes a name fit for an address: lower-case ASCII letters and digits,
// with a hyphen between words, and a number behind what Windows takes for a
// device. It is empty if the name holds nothing that could be kept.
func Slug(name string) string {
	var b strings.Builder
	gap := false
	for _, r := range strings.ToLower(name) {
		letters := asciiLetters(r)
		switch {
		case letters != "":
			if gap && b.Len() > 0 {
				b.WriteByte('-')
			}
			gap = false
			b.WriteString(letters)
		case !unicode.Is(unicode.Mn, r) && !strings.ContainsRune("'’", r):
			gap = true
		}
	}
	if IsDevice(b.String()) {
		b.WriteString("-1")
	}
	return b.String()
}

// asciiLetters gives the letters that stand for r, or nothing.
func asciiLetters(r rune) string {
	if r < 0x80 {
		if r >= 'a' && r <= 'z' || r >= '0' && r <= '9' {
			return string(r)
		}
		return ""
	}
	return latin[r]
}

// latin spells the letters of Western and Central European languages in ASCII,
// as their own typists do (common practice, no source).
var latin = spelled("a àáâãāăą ae äæ aa å c çćč d ďđð e èéêëēęě g ğ i ìíîïīı l łľ n ñńňņ o òóôõō oe öøőœ " +
	"r řŕ s śšşș ss ß t ťţț th þ u ùúûūůű ue ü y ýÿ z źżž")

// spelled makes a table of a list in which ASCII letters stand before all the
// letters that are spelled so.
func spelled(list string) map[rune]string {
	table := make(map[rune]string)
	fields := strings.Fields(list)
	for i := 0; i+1 < len(fields); i += 2 {
		for _, r := range fields[i+1] {
			table[r] = fields[i]
		}
	}
	return table
}

// isSlug reports whether s can stand in an address as it is: lower-case ASCII
// letters, digits and hyphens, and not only hyphens.
func isSlug(s string) bool {
	for _, r := range s {
		if r != '-' && (r >= 0x80 || asciiLetters(r) == "") {
			return false
		}
	}
	return strings.Trim(s, "-") != ""
}

// slug gives the slug of the file's name, and reports a name that makes none.
func (s *source) slug() string {
	name := strings.TrimSuffix(path.Base(s.file), ".md")
	proposed := Slug(name)
	switch {
	case IsDevice(name):
		s.fault(Pos{File: s.file}, BadFileName, fmt.Sprintf("Windows keeps the name %q for itself", clip(name)), "name it "+proposed+".md, or say more")
		return proposed
	case isSlug(name):
		return name
	}
	advice := "name it with lower-case letters, digits and hyphens"
	if proposed != "" {
		advice = "name it " + proposed + ".md"
	}
	s.fault(Pos{File: s.file}, BadFileName, fmt.Sprintf("no address can be made of the name %q", clip(name)), advice)
	return proposed
}
