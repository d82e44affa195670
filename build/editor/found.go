package editor

import (
	"context"
	"encoding/json"
	"net/url"
	"slices"
	"strings"
	"unicode/utf8"

	"stillroom/content"
	"stillroom/validate"
)

// judgeSoon has the site judged once whatever the text editor is saying has been
// taken in.
func (s *Server) judgeSoon() {
	s.stale = true
	select {
	case s.judging <- struct{}{}:
	default: // it is going to be, anyway
	}
}

// judge judges the site whenever it is asked to, and shows what is found. What
// was found before has been read by then: who writes faster than the text editor
// reads is shown the last of it.
func (s *Server) judge(ctx context.Context) {
	for {
		select {
		case <-ctx.Done():
			return
		case <-s.judging:
		}
		s.said.await(0)
		s.mu.Lock()
		s.judgeNow()
		s.mu.Unlock()
	}
}

// judgeNow judges the site, if anything was changed since.
func (s *Server) judgeNow() {
	if s.site == nil || !s.stale {
		return
	}
	before := s.report
	s.report, s.stale = s.site.Judge(), false
	s.publish(before)
}

// publish shows the findings of each file of which there are others than before,
// or that is being written.
func (s *Server) publish(before validate.Report) {
	for _, file := range s.toShow(before) {
		p := s.paperOf(file)
		if p == nil {
			p = newPaper(nil, s.wide)
		}
		s.publishOne(file, s.diagnostics(p, file))
	}
}

// toShow lists the files, in order, of which something else may have to be
// shown. Both reports are in order of file: where one differs from the other is
// between that with which they begin and end alike.
func (s *Server) toShow(before validate.Report) (files []string) {
	old, now := before.Findings, s.report.Findings
	for len(old) > 0 && len(now) > 0 && alike(&old[0], &now[0]) {
		old, now = old[1:], now[1:]
	}
	for len(old) > 0 && len(now) > 0 && alike(&old[len(old)-1], &now[len(now)-1]) {
		old, now = old[:len(old)-1], now[:len(now)-1]
	}
	for _, some := range [][]validate.Finding{old, now} {
		for i := range some {
			files = append(files, some[i].Pos.File)
		}
	}
	for _, d := range s.open {
		if d.file != "" {
			files = append(files, d.file)
		}
	}
	slices.Sort(files)
	return slices.Compact(files)
}

// alike reports whether two findings are shown alike.
func alike(a, b *validate.Finding) bool {
	return a.Pos == b.Pos && a.Rule == b.Rule && a.Severity == b.Severity && a.Message == b.Message &&
		a.Advice == b.Advice && a.Source == b.Source && a.Accepted == b.Accepted && slices.Equal(a.Notes, b.Notes)
}

func (s *Server) publishOne(file string, ds []diagnostic) {
	p := publishParams{URI: s.root.uri(file), Diagnostics: ds}
	for named, d := range s.open {
		if d.file == file {
			p.URI, p.Version = named, &d.version
		}
	}
	said, _ := json.Marshal(p)
	if before, ok := s.shown[file]; before == string(said) || !ok && len(ds) == 0 {
		return
	}
	s.shown[file] = string(said)
	if len(ds) == 0 {
		delete(s.shown, file)
	}
	s.notify("textDocument/publishDiagnostics", p)
}

// diagnostics gives what is found in a file, but for what is accepted.
func (s *Server) diagnostics(p *paper, file string) []diagnostic {
	all := []diagnostic{}
	for _, f := range s.report.In(file) {
		if f.Accepted == "" {
			all = append(all, s.diagnostic(p, f))
		}
	}
	return all
}

// weights are the severities of the protocol.
var weights = map[validate.Severity]int{validate.Error: 1, validate.Warning: 2, validate.Advice: 3}

func (s *Server) diagnostic(p *paper, f validate.Finding) diagnostic {
	d := diagnostic{
		Range: rangeOf(p, f.Pos), Severity: weights[f.Severity],
		Code: f.Rule, Source: "stillroom", Message: said(f),
	}
	if u, err := url.Parse(f.Source.Address); err == nil && (u.Scheme == "https" || u.Scheme == "http") {
		d.Description = &linked{f.Source.Address}
	}
	for _, n := range f.Notes {
		at := p
		if n.Pos.File != f.Pos.File {
			at = s.paperOf(n.Pos.File)
		}
		if at != nil {
			d.Related = append(d.Related, related{location{s.root.uri(n.Pos.File), rangeOf(at, n.Pos)}, n.Message})
		}
	}
	return d
}

// said is what a finding says: what is wrong, what to do, and who published it.
func said(f validate.Finding) string {
	text := f.Message + "."
	if f.Advice != "" {
		text += "\n" + f.Advice
	}
	if f.Source.Title != "" {
		text += "\nSource: " + f.Source.Title
	}
	return text
}

// rangeOf gives what a finding stands at: in the front matter a key or a value,
// below it the rest of the sentence.
func rangeOf(p *paper, at content.Pos) textRange {
	line := max(at.Line, 1) - 1
	text := string(p.line(line))
	if at.Line == 0 || at.Col == 0 {
		return p.span(line, 0, len(text))
	}
	from := min(at.Col-1, len(text))
	_, last := front(p, at.File)
	n := 0
	if line < last {
		n = valueLength(text[from:], len(flow(text[:from])) > 0)
	} else {
		n = sentenceLength(text[from:])
	}
	if n == 0 && from < len(text) {
		_, n = utf8.DecodeRuneInString(text[from:])
	}
	return p.span(line, from, from+n)
}

// valueLength is how much of a text the key or the value takes that it begins
// with.
func valueLength(text string, inFlow bool) int {
	if m := keyAhead.FindStringSubmatchIndex(text); m != nil {
		return m[3]
	}
	if text != "" && (text[0] == '"' || text[0] == '\'') {
		if end := strings.IndexByte(text[1:], text[0]); end >= 0 {
			return end + 2
		}
	}
	end := commentIn(text)
	if inFlow {
		if i := strings.IndexAny(text[:end], ",]}"); i > 0 {
			end = i
		}
	}
	return len(strings.TrimRight(text[:end], " \t"))
}

// sentenceLength is how much of a text its first sentence takes.
func sentenceLength(text string) int {
	for i := range len(text) {
		if strings.IndexByte(".!?", text[i]) >= 0 && (i+1 == len(text) || text[i+1] == ' ') {
			return i + 1
		}
	}
	return len(text)
}
