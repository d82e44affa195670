package preview

import (
	"cmp"
	"encoding/json"
	"net/http"
	"path"
	"slices"

	"stillroom/build"
	"stillroom/validate"
)

// A listing is all that was found in a site, for the panel.
type listing struct {
	Counts   validate.Counts `json:"counts"`
	Troubles []Trouble       `json:"troubles"`
	Files    []listed        `json:"files"` // those with errors first
	Left     int             `json:"left"`  // findings that are not listed
}

// A listed file has something that was found in it.
type listed struct {
	File    string `json:"file"`
	Name    string `json:"name"`
	Address string `json:"address"` // of the page that shows it
	Marks   []mark `json:"marks"`

	worst validate.Severity
}

// inListing is how many findings are listed. Whoever has more has to begin
// somewhere.
const inListing = 300

func (s *state) serveFindings(w http.ResponseWriter) {
	w.Header().Set("Content-Type", build.MediaType("listing.json"))
	json.NewEncoder(w).Encode(s.listing())
}

func (s *state) listing() listing {
	l := listing{Counts: s.report.Counts, Troubles: s.troubles, Files: []listed{}}
	for file, found := range s.findings() {
		l.Files = append(l.Files, listed{File: file, worst: worst(found)})
	}
	slices.SortFunc(l.Files, func(a, b listed) int {
		return cmp.Or(cmp.Compare(b.worst, a.worst), cmp.Compare(a.File, b.File))
	})
	room := inListing
	for i := range l.Files {
		f := &l.Files[i]
		found := s.findings()[f.File]
		n := min(room, len(found))
		room, l.Left = room-n, l.Left+len(found)-n
		for _, x := range found[:n] {
			f.Marks = append(f.Marks, s.mark(x))
		}
		slices.SortStableFunc(f.Marks, heavier)
		f.Name, f.Address = s.titleOf(f.File)
	}
	l.Files = slices.DeleteFunc(l.Files, func(f listed) bool { return len(f.Marks) == 0 })
	return l
}

// worst is the severity of the worst finding that is not accepted.
func worst(found []validate.Finding) (w validate.Severity) {
	for _, f := range found {
		if f.Accepted == "" {
			w = max(w, f.Severity)
		}
	}
	return w
}

// titleOf gives what the page of a file is called, and its address.
func (s *state) titleOf(file string) (name, address string) {
	t := s.text(file)
	if t == nil {
		return path.Base(file), s.pageWith(file)
	}
	switch seen := cmp.Or(t.legible(), t); {
	case seen.recipe != nil:
		name = seen.recipe.Name.V
	case seen.episode != nil:
		name = seen.episode.Name.V
	case seen.page != nil:
		name = seen.page.Name.V
	}
	return cmp.Or(name, path.Base(file)), t.address()
}

// pageWith is the page that shows a file which has none of its own: a
// transcript is shown with its episode, and the settings of the site are at
// home.
func (s *state) pageWith(file string) string {
	if file == s.settings.file {
		return "/"
	}
	for _, t := range s.texts {
		if t.episode != nil && t.episode.Transcript.Set() && beside(t.file, t.episode.Transcript.V) == file {
			return t.address()
		}
	}
	return ""
}
