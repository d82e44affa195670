package validate

import "strings"

// plain turns a text into lower case without accents. It gives the text itself
// back if it is so already.
func plain(text string) string {
	for i := range len(text) {
		if c := text[i]; c >= 0x80 || 'A' <= c && c <= 'Z' {
			return strings.Map(plainLetter, text)
		}
	}
	return text
}

func plainLetter(r rune) rune {
	switch {
	case 'A' <= r && r <= 'Z':
		return r + 'a' - 'A'
	case r < 0x80:
		return r
	}
	if base, ok := accented[r]; ok {
		return base
	}
	return ' '
}

// accented are the letters that cooks write with an accent: jalapeño, purée.
var accented = map[rune]rune{
	'à': 'a', 'á': 'a', 'â': 'a', 'ä': 'a', 'å': 'a', 'ç': 'c', 'è': 'e', 'é': 'e', 'ê': 'e', 'ë': 'e',
	'í': 'i', 'î': 'i', 'ï': 'i', 'ñ': 'n', 'ó': 'o', 'ô': 'o', 'ö': 'o', 'ø': 'o', 'ú': 'u', 'û': 'u', 'ü': 'u',
	'É': 'e', 'Ñ': 'n', 'Ü': 'u', 'Ö': 'o', 'Ä': 'a',
}

// plural gives the plural of a word as English spells it.
func plural(w string) string {
	for _, end := range []string{"leaf", "loaf", "half", "calf"} {
		if strings.HasSuffix(w, end) {
			return w[:len(w)-1] + "ves"
		}
	}
	for _, end := range []string{"s", "x", "ch", "sh", "tato", "mato", "ngo"} {
		if strings.HasSuffix(w, end) {
			return w + "es"
		}
	}
	if n := len(w) - 1; n > 0 && w[n] == 'y' && !strings.ContainsRune("aeiou", rune(w[n-1])) {
		return w[:n] + "ies"
	}
	return w + "s"
}

// singular takes the plural ending off a word.
func singular(w string) string {
	if !strings.HasSuffix(w, "s") {
		return w
	}
	for _, end := range [][2]string{{"ies", "y"}, {"atoes", "ato"}, {"ngoes", "ngo"}, {"ches", "ch"}, {"shes", "sh"}, {"xes", "x"}, {"sses", "ss"}} {
		if s, ok := strings.CutSuffix(w, end[0]); ok && s != "" {
			return s + end[1]
		}
	}
	if len(w) > 3 && !strings.HasSuffix(w, "ss") && !strings.HasSuffix(w, "us") {
		return w[:len(w)-1]
	}
	return w
}
