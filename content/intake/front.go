package intake

import (
	"strings"
	"unicode/utf8"

	"go.yaml.in/yaml/v4"
)

// A front is front matter that is being written, and the marks in it.
type front struct {
	strings.Builder
	checks []string
}

// key writes a key and its value, and what is to be checked of it, if anything.
func (f *front) key(indent, name, text, check string) {
	f.check(indent, check)
	f.WriteString(indent + name + ": " + scalar(text) + "\n")
}

// check writes a line of its own for the author.
func (f *front) check(indent, says string) {
	if says == "" {
		return
	}
	says = strings.Map(printable, says)
	f.checks = append(f.checks, says)
	const room = 100
	line := indent + "# check:"
	for _, w := range strings.Fields(says) {
		if utf8.RuneCountInString(line)+1+utf8.RuneCountInString(w) > room {
			f.WriteString(line + "\n")
			line = indent + "#  "
		}
		line += " " + w
	}
	f.WriteString(line + "\n")
}

// scalar writes a text as one line of YAML that is read as that text: as it is
// if that goes, and else in quotation marks. What has no place in a text is
// dropped.
func scalar(text string) string {
	text = strings.ReplaceAll(strings.Map(printable, text), "\n", " ")
	var doc yaml.Node
	plain := "k: " + text
	if !strings.ContainsAny(text, "#\n") && yaml.Unmarshal([]byte(plain), &doc) == nil && len(doc.Content) == 1 {
		if m := doc.Content[0]; m.Kind == yaml.MappingNode && len(m.Content) == 2 && m.Content[1].Kind == yaml.ScalarNode &&
			m.Content[1].Style == 0 && m.Content[1].Tag == "!!str" && m.Content[1].Value == text && m.Content[1].Anchor == "" {
			return text
		}
	}
	return "'" + strings.ReplaceAll(text, "'", "''") + "'"
}
