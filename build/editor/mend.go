package editor

import (
	"regexp"
	"slices"
	"strings"

	"stillroom/content"
	"stillroom/validate"
)

// quickFix is the kind of actions that put right what is found.
const quickFix = "quickfix"

// codeAction offers what puts right the findings of a range for certain.
func (s *Server) codeAction(p actionParams) (any, error) {
	actions := []codeAction{}
	d := s.document(p.TextDocument)
	if d == nil || len(p.Context.Only) > 0 && !slices.Contains(p.Context.Only, quickFix) {
		return actions, nil
	}
	s.judgeNow()
	for _, diag := range p.Context.Diagnostics {
		if meant := s.meant(d, diag); meant != "" {
			actions = append(actions, codeAction{
				Title: "Write " + meant, Kind: quickFix, Diagnostics: []diagnostic{diag}, IsPreferred: diag.Code == "unknown-key",
				Edit: s.edit(p.TextDocument.URI, d, textEdit{diag.Range, meant}),
			})
		}
	}
	if a, ok := s.fill(d, p); ok {
		actions = append(actions, a)
	}
	return actions, nil
}

// edit gives edits of a document as it is now: of this version alone, where the
// text editor can tell.
func (s *Server) edit(uri string, d *document, edits ...textEdit) workspaceEdit {
	if s.versions {
		return workspaceEdit{DocumentChanges: []documentEdit{{versioned{uri, d.version}, edits}}}
	}
	return workspaceEdit{Changes: map[string][]textEdit{uri: edits}}
}

// didYouMean is how a finding says what a misspelt word may stand for.
var didYouMean = regexp.MustCompile(`(?i)(?:did you mean|is it) "?([^"?]+)"?\?`)

// meant gives the word that a finding takes a misspelt one for; empty if it
// does not say, or says more than one.
func (s *Server) meant(d *document, diag diagnostic) string {
	for _, f := range s.report.In(d.file) {
		if f.Rule != diag.Code || rangeOf(d.paper, f.Pos) != diag.Range {
			continue
		}
		if m := didYouMean.FindStringSubmatch(f.Message + " " + f.Advice); m != nil && !strings.Contains(m[1], " or ") && !strings.Contains(m[1], ", ") {
			return m[1]
		}
	}
	return ""
}

// fill writes the tested values into a recipe, as the command fill does.
func (s *Server) fill(d *document, p actionParams) (a codeAction, ok bool) {
	first, last := front(d.paper, d.file)
	if content.SortOf(d.file) != content.ARecipe || p.Range.End.Line < first-1 || p.Range.Start.Line > last {
		return codeAction{}, false
	}
	filled, refused := validate.Fill(d.file, d.text, s.Day())
	if len(refused) > 0 || len(filled.Written) == 0 {
		return codeAction{}, false
	}
	a = codeAction{Title: "Write in the tested values", Kind: quickFix}
	a.Edit = s.edit(p.TextDocument.URI, d, editsBetween(d.paper, newPaper(filled.Data, s.wide))...)
	for _, diag := range p.Context.Diagnostics {
		left := slices.ContainsFunc(filled.Left, func(f validate.Finding) bool { return f.Rule == diag.Code })
		if diag.Source == "stillroom" && diag.Range.Start.Line < last && !left && mendedBy[diag.Code] {
			a.Diagnostics = append(a.Diagnostics, diag)
		}
	}
	return a, true
}

// mendedBy are the rules whose findings the tested values put right.
var mendedBy = map[string]bool{
	"acid-missing": true, "acid-short": true, "altitude-gap": true, "altitude-missing": true, "altitude-reach": true,
	"checked-missing": true, "headspace": true, "headspace-missing": true, "jar-missing": true, "pack-missing": true,
	"pressure-short": true, "recheck": true, "time-missing": true, "time-short": true,
}

// editsBetween gives the edits that make one paper of another, by whole lines.
func editsBetween(from, to *paper) []textEdit {
	a, b := rawLines(from), rawLines(to)
	head := 0
	for head < len(a) && head < len(b) && a[head] == b[head] {
		head++
	}
	tail := 0
	for tail < len(a)-head && tail < len(b)-head && a[len(a)-1-tail] == b[len(b)-1-tail] {
		tail++
	}
	var edits []textEdit
	for _, c := range changes(a[head:len(a)-tail], b[head:len(b)-tail]) {
		edits = append(edits, textEdit{
			textRange{lineStart(from, head+c.from), lineStart(from, head+c.to)},
			strings.Join(b[head+c.begin:head+c.end], ""),
		})
	}
	return edits
}

// lineStart is where a line begins; past the last, where the text ends.
func lineStart(p *paper, line int) position {
	if line >= len(p.lines) {
		return p.at(len(p.text))
	}
	return position{Line: line}
}

// rawLines gives the lines with their ends.
func rawLines(p *paper) []string {
	var lines []string
	for i, begin := range p.lines {
		end := len(p.text)
		if i+1 < len(p.lines) {
			end = p.lines[i+1]
		}
		lines = append(lines, string(p.text[begin:end]))
	}
	return lines
}

// A lineChange puts some lines of one text in the place of some of another.
type lineChange struct{ from, to, begin, end int }

// changes finds which lines of a become which lines of b, by the longest common
// subsequence. Front matter is short.
func changes(a, b []string) (all []lineChange) {
	same := make([][]int, len(a)+1) // how many lines from here on are common
	for i := range same {
		same[i] = make([]int, len(b)+1)
	}
	for i := len(a) - 1; i >= 0; i-- {
		for j := len(b) - 1; j >= 0; j-- {
			same[i][j] = max(same[i+1][j], same[i][j+1])
			if a[i] == b[j] {
				same[i][j] = same[i+1][j+1] + 1
			}
		}
	}
	for i, j := 0, 0; i < len(a) || j < len(b); {
		if i < len(a) && j < len(b) && a[i] == b[j] {
			i, j = i+1, j+1
			continue
		}
		c := lineChange{i, i, j, j}
		for c.to < len(a) || c.end < len(b) {
			switch {
			case c.to < len(a) && c.end < len(b) && a[c.to] == b[c.end]:
			case c.end == len(b) || c.to < len(a) && same[c.to+1][c.end] >= same[c.to][c.end+1]:
				c.to++
				continue
			default:
				c.end++
				continue
			}
			break
		}
		all = append(all, c)
		i, j = c.to, c.end
	}
	return all
}
