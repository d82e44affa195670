package preview

import (
	"bytes"
	_ "embed"
	"html/template"
	"path"
	"slices"
	"strings"

	"stillroom/content"
)

//go:embed browser/broken.html
var brokenHTML string

var brokenPage = template.Must(template.New("broken").Parse(brokenHTML))

// A broken page stands in for one that cannot be made. It needs nothing of the
// theme, which may be what is broken.
type broken struct {
	Site        string
	Title, Lead string
	File        string
	Faults      []fault
	Detail      string // what went wrong, for whoever maintains the theme
	Last        string // address of the page as it was; empty if there is none
}

// A fault is a finding and the lines around it.
type fault struct {
	mark
	Lines []line
}

type line struct {
	excerpt
	Here bool
}

// around is how many lines are shown before and after the one at fault.
const around = 3

// unreadPage says why a file cannot be read. What the rules make of the little
// that there is helps nobody.
func (s *state) unreadPage(t *text, isThere bool) []byte {
	b := s.broken("This file cannot be read", "Nothing of it can be made into a page until this is put right.")
	b.File = t.file
	if isThere {
		b.Last = t.address() + "?last"
	}
	for _, f := range s.findings()[t.file] {
		ofReading := slices.ContainsFunc(t.faults, func(x content.Fault) bool { return x.Pos == f.Pos && string(x.Kind) == f.Rule })
		if ofReading {
			b.Faults = append(b.Faults, fault{s.mark(f), s.lines(f.Pos.File, f.Pos.Line, f.Pos.Col)})
		}
	}
	return b.html()
}

// failedPage says that a page could not be made, although its file was read.
func (s *state) failedPage(address string, err error) []byte {
	b := s.broken("This page cannot be made", "The theme stumbles over it, or Stillroom does. Other pages are not affected.")
	b.Detail = err.Error()
	return b.html()
}

func (s *state) broken(title, lead string) *broken {
	b := &broken{Title: title, Lead: lead}
	if t := s.settings.legible(); t != nil {
		b.Site = t.site.Name.V
	}
	return b
}

// Sentence makes one of what to do.
func (f fault) Sentence() string {
	text := f.Advice
	if text == "" {
		return ""
	}
	if !strings.ContainsAny(text[len(text)-1:], ".!?") {
		text += "."
	}
	return strings.ToUpper(text[:1]) + text[1:]
}

func (b *broken) html() []byte {
	var out bytes.Buffer
	if err := brokenPage.Execute(&out, b); err != nil {
		panic(err) // the template above does not fit its type
	}
	return out.Bytes()
}

// lines gives the lines around one of a file.
func (s *state) lines(file string, number, col int) []line {
	all := strings.Split(string(s.source(file)), "\n")
	var near []line
	for n := max(1, number-around); number > 0 && n <= min(len(all), number+around); n++ {
		text := strings.TrimSuffix(all[n-1], "\r")
		l := line{excerpt{Number: n, Before: text}, n == number}
		if l.Here {
			l.excerpt = *excerptOf(text, content.Pos{File: file, Line: n, Col: col})
		}
		near = append(near, l)
	}
	return near
}

// beside is a file that is named from another one's folder.
func beside(file, name string) string { return path.Join(path.Dir(file), name) }
