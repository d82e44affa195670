package build

import (
	"html"
	"html/template"
	"slices"
	"strings"

	"stillroom/build/amount"
	"stillroom/content"
)

// markedSteps are the steps with what markSteps sets apart.
func markedSteps(r *content.Recipe, lines [][]amount.Line, parts []Part) []Part {
	parts = slices.Clone(parts)
	for i := range parts {
		parts[i].Steps = slices.Clone(parts[i].Steps)
	}
	markSteps(r, lines, parts)
	return parts
}

// markSteps sets apart what a reader's batch and clock change in the steps:
// amounts of listed ingredients, and times. What belongs to the canner is left
// alone: its minutes are those of the table, by altitude and by jar.
func markSteps(r *content.Recipe, lines [][]amount.Line, parts []Part) {
	var steps []*Step
	var texts []words
	for i := range parts {
		for j := range parts[i].Steps {
			steps = append(steps, &parts[i].Steps[j])
			texts = append(texts, wordsOf(string(parts[i].Steps[j].HTML)))
		}
	}
	plain := make([]string, len(texts))
	for i, w := range texts {
		plain[i] = w.text
	}
	way := onlyCanned(r)
	for i, ms := range amount.InSteps(r, lines, plain) {
		var marks []mark
		for _, m := range ms {
			marks = append(marks, mark{m.Start, m.End, `<span class="q" data-amount="` + html.EscapeString(m.Amount.Data()) + `">`, "</span>"})
		}
		if way != "" && says(plain[i], canner) {
			steps[i].Process = way
		} else {
			marks = append(marks, clocks(plain[i])...)
		}
		steps[i].HTML = template.HTML(texts[i].with(marks))
	}
}

// onlyCanned gives the ID of the one way of keeping that makes jars
// shelf-stable; empty if there is none, or more than one.
func onlyCanned(r *content.Recipe) string {
	id := ""
	for i, k := range r.Keeping {
		if !k.Way.V.Canned() {
			continue
		}
		if id != "" {
			return ""
		}
		id = keepingIDs(r)[i]
	}
	return id
}

// A mark puts something around some words of a text.
type mark struct {
	start, end  int
	open, close string
}

// words are those of some HTML, and where each byte of them stands in it.
type words struct {
	html string
	text string
	at   []int32 // for each byte of text; one more for its end; nil where the text is the HTML
}

// wordsOf takes the tags out of HTML, and makes signs of its entities.
func wordsOf(h string) words {
	if !strings.ContainsAny(h, "<&\n") {
		return words{html: h, text: h}
	}
	w := words{html: h, at: make([]int32, 0, len(h)+1)}
	var b strings.Builder
	b.Grow(len(h))
	for i := 0; i < len(h); {
		size := 1
		switch h[i] {
		case '<':
			size = strings.IndexByte(h[i:], '>') + 1
		case '&':
			size = strings.IndexByte(h[i:], ';') + 1
			w.add(&b, html.UnescapeString(h[i:i+size]), i)
		case '\n':
			w.add(&b, " ", i)
		default:
			w.add(&b, h[i:i+1], i)
		}
		i += max(size, 1)
	}
	w.text = b.String()
	w.at = append(w.at, int32(len(h)))
	return w
}

func (w *words) add(b *strings.Builder, s string, at int) {
	b.WriteString(s)
	for range len(s) {
		w.at = append(w.at, int32(at))
	}
}

// place gives where a byte of the text stands in the HTML.
func (w words) place(i int) int {
	if w.at == nil {
		return i
	}
	return int(w.at[i])
}

// with gives the HTML with marks in it. One that would reach over a tag is left
// out.
func (w words) with(marks []mark) string {
	slices.SortFunc(marks, func(a, b mark) int { return b.start - a.start })
	s := w.html
	for _, m := range marks {
		start := w.place(m.start)
		end := w.place(m.end-1) + 1
		if strings.ContainsAny(w.html[start:end], "<>&") {
			continue
		}
		s = s[:start] + m.open + typesetWithin(s[start:end]) + m.close + s[end:]
	}
	return s
}

// typesetWithin sets a measure that stands in a text.
func typesetWithin(s string) string { return typeset(strings.Join(strings.Fields(s), " ")) }
