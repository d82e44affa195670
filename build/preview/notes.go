package preview

import (
	"bytes"
	"encoding/json"
	"fmt"
	"hash/fnv"
	"io/fs"
	"regexp"
	"strconv"
	"strings"

	"stillroom/content"
	"stillroom/validate"
)

// Notes are what a browser shows beside a page.
type notes struct {
	File     string            `json:"file"`           // of content that it is the page of; empty if it gathers many
	Held     string            `json:"held,omitempty"` // why readers do not see the page yet
	Old      bool              `json:"old,omitempty"`  // the file cannot be read now, and the page is an earlier one
	Marks    []mark            `json:"marks"`
	Counts   validate.Counts   `json:"counts"`
	Links    map[string]string `json:"links,omitempty"` // what readers do not see yet of what it leads to, by address
	Troubles []Trouble         `json:"troubles,omitempty"`
}

// A mark is a finding at a part of a page.
type mark struct {
	Severity string   `json:"severity"`
	Rule     string   `json:"rule"`
	Message  string   `json:"message"`
	Advice   string   `json:"advice"`
	Source   source   `json:"source"`
	Place    string   `json:"place"` // file:line:column
	Line     *excerpt `json:"line,omitempty"`
	Notes    []aside  `json:"notes,omitempty"`
	Accepted string   `json:"accepted,omitempty"`
	Spot     spot     `json:"spot,omitempty"` // none: the top of the page
}

type source struct {
	Title   string `json:"title"`
	Address string `json:"address,omitempty"`
	Read    string `json:"read,omitempty"`
}

// An aside is a second place that a finding speaks of.
type aside struct {
	Place   string `json:"place"`
	Message string `json:"message"`
}

// An excerpt is a line of a file, and the part of it that is meant.
type excerpt struct {
	Number int    `json:"number"`
	Before string `json:"before"`
	Meant  string `json:"meant"`
	After  string `json:"after"`
}

// mark makes a mark of a finding, without its spot.
func (s *state) mark(f validate.Finding) mark {
	m := mark{
		Severity: f.Severity.String(), Rule: f.Rule, Message: f.Message, Advice: strings.TrimSpace(f.Advice),
		Source: source{f.Source.Title, f.Source.Address, f.Source.Read},
		Place:  f.Pos.String(), Line: s.excerpt(f.Pos), Accepted: f.Accepted,
	}
	for _, n := range f.Notes {
		m.Notes = append(m.Notes, aside{n.Pos.String(), n.Message})
	}
	return m
}

// source gives the text of a file as it was read.
func (s *state) source(file string) []byte {
	if file == s.settings.file {
		return s.settings.data
	}
	if t := s.text(file); t != nil {
		return t.data
	}
	data, _ := fs.ReadFile(s.fsys, file) // a transcript; without its text there is no excerpt
	return data
}

func (s *state) excerpt(p content.Pos) *excerpt {
	lines := bytes.Split(s.source(p.File), []byte("\n"))
	if p.Line < 1 || p.Line > len(lines) {
		return nil
	}
	return excerptOf(string(bytes.TrimSuffix(lines[p.Line-1], []byte("\r"))), p)
}

// longest is how many bytes of a line are shown on each side of what is meant.
const longest = 90

// excerptOf cuts a line at the column of a place, and where the value that
// begins there ends.
func excerptOf(line string, p content.Pos) *excerpt {
	line = strings.TrimPrefix(line, "\uFEFF")
	col := min(max(p.Col-1, 0), len(line))
	end := col + valueEnd(line[:col], line[col:])
	e := &excerpt{Number: p.Line, Before: line[:col], Meant: line[col:end], After: line[end:]}
	if cut := len(e.Before) - longest; cut > 0 {
		e.Before = "…" + strings.ToValidUTF8(e.Before[cut:], "")
	}
	if len(e.Meant) > 2*longest {
		e.Meant, e.After = strings.ToValidUTF8(e.Meant[:2*longest], "")+"…", ""
	}
	if len(e.After) > longest {
		e.After = strings.ToValidUTF8(e.After[:longest], "") + "…"
	}
	return e
}

// valueEnd gives the length of the value that text begins with: as far as the
// comma or bracket after it if it stands in brackets, and else all of it.
func valueEnd(before, text string) int {
	if strings.ContainsAny(before, "[{") {
		if i := strings.IndexAny(text, ",]}"); i > 0 {
			return i
		}
	}
	return len(strings.TrimRight(text, " "))
}

// references are the addresses that a page leads to within the site.
var references = regexp.MustCompile(`href="?(/[^"?#\s>]*)`)

// heldLinks gives what readers do not see yet of what a page leads to.
func (s *state) heldLinks(html []byte) map[string]string {
	held := s.proofs.Held()
	if len(held) == 0 {
		return nil
	}
	links := make(map[string]string)
	for _, m := range references.FindAllSubmatch(html, -1) {
		if h, ok := held[string(m[1])]; ok {
			links[string(m[1])] = heldUntil(h.Until)
		}
	}
	return links
}

// heldUntil says why readers do not see a page.
func heldUntil(day content.Date) string {
	if day.IsZero() {
		return "draft"
	}
	return "from " + day.Time().Format("2 January 2006")
}

// sum tells two versions apart.
func sum(data []byte) string {
	h := fnv.New64a()
	h.Write(data)
	return strconv.FormatUint(h.Sum64(), 36)
}

// inJSON is for values of our own types, which can always be written.
func inJSON(v any) []byte {
	data, err := json.Marshal(v)
	if err != nil {
		panic(fmt.Sprintf("preview: %v", err))
	}
	return data
}
