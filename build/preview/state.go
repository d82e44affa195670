package preview

import (
	"io/fs"
	"maps"
	"slices"
	"sync"

	"stillroom/build"
	"stillroom/content"
	"stillroom/validate"
)

// A state is the site at one moment. It never changes; when there is another,
// over is closed.
type state struct {
	day      content.Date
	fsys     fs.FS
	settings *text
	texts    []*text // in order of file
	report   validate.Report
	proofs   *build.Proofs
	troubles []Trouble
	over     chan struct{}
	findings func() map[string][]validate.Finding // by file

	mu    sync.Mutex
	views map[string]func() *view // by address; a view is made when somebody looks
}

func newState(b *copybook, day content.Date) *state {
	s := &state{
		day: day, fsys: b.fsys, settings: b.settings, texts: b.texts,
		over: make(chan struct{}), views: make(map[string]func() *view),
	}
	s.findings = sync.OnceValue(func() map[string][]validate.Finding { return told(s.report.Findings) })
	return s
}

// again is the same state, of which no page was made yet.
func (s *state) again() *state {
	return &state{
		day: s.day, fsys: s.fsys, settings: s.settings, texts: s.texts,
		report: s.report, proofs: s.proofs, troubles: s.troubles, findings: s.findings,
		over: make(chan struct{}), views: make(map[string]func() *view),
	}
}

// judged puts the site together as it stands, with all its faults, for the
// rules.
func (b *copybook) judged() (*content.Site, []content.Fault) {
	s := b.site(func(t *text) *text { return t })
	faults := slices.Clone(b.settings.faults)
	for _, t := range b.texts {
		faults = append(faults, t.faults...)
	}
	for _, file := range slices.Sorted(maps.Keys(b.misnamed)) {
		faults = append(faults, content.MisnamedFault(file))
	}
	_, kept := b.guids()
	faults = append(faults, kept...)
	return s, faults
}

// shown puts the site together for its pages. What cannot be read now is shown
// as it was when it could.
func (b *copybook) shown() *content.Site {
	return b.site((*text).legible)
}

// guids reads the list anew, since it is short and only publishing writes it.
func (b *copybook) guids() (content.GUIDs, []content.Fault) {
	data, _ := fs.ReadFile(b.fsys, content.GUIDsFile) // there need be none
	return content.ReadGUIDs(data)
}

func (b *copybook) site(version func(*text) *text) *content.Site {
	s := &content.Site{FS: b.fsys, Pictures: b.pictures, Media: b.media}
	s.GUIDs, _ = b.guids()
	if t := version(b.settings); t != nil {
		s.Settings = *t.site
	}
	for _, t := range b.texts {
		switch t = version(t); {
		case t == nil:
		case t.recipe != nil:
			s.Recipes = append(s.Recipes, t.recipe)
		case t.episode != nil:
			s.Episodes = append(s.Episodes, t.episode)
		case t.page != nil:
			s.Pages = append(s.Pages, t.page)
		}
	}
	return s
}

// told gives findings, which are in order of file, by the file that they are in.
func told(all []validate.Finding) map[string][]validate.Finding {
	m := make(map[string][]validate.Finding)
	for len(all) > 0 {
		file := all[0].Pos.File
		n := slices.IndexFunc(all, func(f validate.Finding) bool { return f.Pos.File != file })
		if n < 0 {
			n = len(all)
		}
		m[file], all = all[:n:n], all[n:]
	}
	return m
}
