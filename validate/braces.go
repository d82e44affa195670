package validate

import "strings"

// filledIn puts words where a text of a table has braces. Of each pair the first
// is the name between them. What no pair names stays as it is.
func filledIn(text string, pairs []string) string {
	if len(pairs) == 0 {
		return text
	}
	var b strings.Builder
	for {
		before, rest, opened := strings.Cut(text, "{")
		name, after, closed := strings.Cut(rest, "}")
		if !opened || !closed {
			b.WriteString(text)
			return b.String()
		}
		b.WriteString(before)
		b.WriteString(named(name, pairs))
		text = after
	}
}

func named(name string, pairs []string) string {
	for i := 0; i < len(pairs); i += 2 {
		if pairs[i] == name {
			return pairs[i+1]
		}
	}
	return "{" + name + "}"
}
