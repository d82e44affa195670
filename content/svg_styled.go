package content

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
)

// Brought is what a part of a drawing, or a rule of its style sheet, brings in.
type brought struct {
	ids    [4][]string
	counts [4]int // the parts of them, once they are counted
}

// The ways to bring something in: into the part itself, as what it uses and
// what clips it; as what fills or lines each part within; and as marks, at both
// ends or at each point of each line within.
const (
	once = iota
	fills
	ends
	points
)

// waysIn are the properties that bring something in otherwise than once.
var waysIn = map[string]int{"fill": fills, "stroke": fills, "marker-start": ends, "marker-end": ends, "marker-mid": points, "marker": points}

// value takes what the value of a property brings in.
func (b *brought) value(property, value string) {
	for _, m := range addressIn.FindAllStringSubmatch(value, -1) {
		if id, ok := strings.CutPrefix(m[1], "#"); ok {
			how := waysIn[property]
			b.ids[how] = append(b.ids[how], unescaped(id))
		}
	}
}

// declared takes what a style brings in, as "fill: url(#a); stroke: none".
func (b *brought) declared(style string) {
	for declaration := range strings.SplitSeq(style, ";") {
		property, value, _ := strings.Cut(declaration, ":")
		b.value(strings.ToLower(strings.TrimSpace(property)), value)
	}
}

// mostStyled is how often the rules of its style sheets may bring something
// into a drawing.
const mostStyled = 10_000

var (
	styleNote = regexp.MustCompile(`(?s)/\*.*?(\*/|$)`)
	styleRule = regexp.MustCompile(`([^{};]*)\{([^{}]*)\}`)
	// keptAddress is an address in a variable, which any part may take out again.
	keptAddress = regexp.MustCompile(`(?i)--[^:;{}]*:[^;{}]*url\(`)
)

// style takes a style sheet: for each rule that brings something in, what it
// may be about. It tells what is wrong, as a clause.
func (p *parts) style(sheet string) string {
	sheet = styleNote.ReplaceAllString(sheet, " ")
	if keptAddress.MatchString(sheet) {
		return keepsAddress
	}
	for _, m := range styleRule.FindAllStringSubmatch(sheet, -1) {
		p.rule(m[1], m[2])
	}
	p.rule("*", styleRule.ReplaceAllString(sheet, "")) // rules in rules, and what else is read otherwise here than by browsers
	if p.stylings > mostStyled {
		return fmt.Sprintf("is an SVG picture whose styles bring something in more than %d times", mostStyled)
	}
	return ""
}

const keepsAddress = "is an SVG picture that keeps an address in a variable of its style"

func (p *parts) rule(selectors, style string) {
	var b brought
	b.declared(style)
	for selector := range strings.SplitSeq(selectors, ",") {
		about := aboutIn(selector)
		for how, ids := range b.ids {
			if p.stylings += len(ids); len(ids) == 0 || p.stylings > mostStyled {
				continue
			}
			if p.styled == nil {
				p.styled = make(map[string]*brought)
			}
			if p.styled[about] == nil {
				p.styled[about] = new(brought)
			}
			p.styled[about].ids[how] = append(p.styled[about].ids[how], ids...)
		}
	}
}

// simple is the end of a selector: an element, a class or an id, of which the
// last one is taken.
var simple = regexp.MustCompile(`(^|[\s>+~])([\w-]*)((?:[.#][\w-]+)*)\s*$`)

// moments of a change stand where selectors do: CSS Animations, 3.
var moments = []string{"from", "to"}

// aboutIn gives what the selector of a rule is about: a key of parts.styled.
// It may be more than the selector means, never less.
func aboutIn(selector string) string {
	m := simple.FindStringSubmatch(selector)
	switch {
	case m == nil || slices.Contains(moments, strings.ToLower(m[2])) || strings.ContainsAny(selector, "([&") || m[2] == "" && m[3] == "":
		return "*"
	case m[3] != "":
		return m[3][strings.LastIndexAny(m[3], ".#"):]
	}
	return strings.ToLower(m[2])
}
