package validate

import (
	"fmt"
	"maps"
	"path"
	"slices"

	"stillroom/content"
)

// A Desk judges one site over and over while it is written, and judges anew
// only what a change touches. What was read anew is known by its new pointer.
// The zero Desk is ready; it serves one goroutine at a time.
type Desk struct {
	Day content.Date // as of which the site is judged; zero if nobody knows it

	rows   []deskRow               // what was found in each recipe
	whole  wholeSite               // in the site as a whole
	alone  memo[any]               // in any other file by itself
	beside memo[illustrated]       // in the files that it names
	faults map[content.File]string // what is wrong with each picture; empty if it is sound

	slugs    []string // of the recipes
	pictures map[string]content.File
	media    map[string]content.File
	most     int // findings of one check
	names    int // grows when there are other slugs
	files    int // grows when there are other pictures or recordings
}

// An aired episode is judged beside the recipes that it names, and the files
// that lie beside it.
type aired struct {
	episode           *content.Episode
	recipes           string // as they are now
	names             int    // if one of them is missing, and another may be meant
	audio, transcript content.File
}

// An illustrated file of content is judged beside the pictures that there are.
type illustrated struct {
	file  any
	files int
}

// Check finds what the function Check finds.
func (d *Desk) Check(s *content.Site, faults []content.Fault) Report {
	d.begin(s)
	fs := make([]Finding, 0, d.most)
	for _, f := range faults {
		fs = append(fs, faultFinding(f))
	}
	d.seat(s.Recipes)
	d.judgeNew()
	for i := range d.rows {
		fs = append(fs, d.rows[i].alone...)
		fs = append(fs, d.besideRecipe(s, &d.rows[i])...)
	}
	named := namedRecipes(s)
	for _, e := range s.Episodes {
		fs = append(fs, d.alone.of(d.aired(e, s, named), func() []Finding { return checkEpisode(e, besideEpisode(s, e, named), Rules) })...)
		fs = append(fs, d.checkFiles(s, e, func(part *content.Site) { part.Episodes = []*content.Episode{e} })...)
	}
	for _, p := range s.Pages {
		fs = append(fs, d.alone.of(p, func() []Finding { return checkText(textOfPage(p), Rules) })...)
		fs = append(fs, d.checkFiles(s, p, func(part *content.Site) { part.Pages = []*content.Page{p} })...)
	}
	fs = append(fs, d.checkFiles(s, s.Settings.Programme, func(part *content.Site) { part.Settings = s.Settings })...)
	fs = append(fs, d.checkWhole(s)...)
	d.most = max(d.most, len(fs))
	sortFindings(fs)
	return Report{Findings: fs, Counts: count(s, fs)}
}

// namedRecipes gives the recipes that episodes name, by slug. Two may have one
// until their author sees it.
func namedRecipes(s *content.Site) map[string][]*content.Recipe {
	spoken := make(map[string][]*content.Recipe)
	for _, e := range s.Episodes {
		for _, slug := range namedIn(e) {
			spoken[slug] = nil
		}
	}
	for _, r := range s.Recipes {
		if all, ok := spoken[r.Slug]; ok {
			spoken[r.Slug] = append(all, r)
		}
	}
	return spoken
}

// namedIn gives the slugs that an episode names, in its list and its chapters.
func namedIn(e *content.Episode) (slugs []string) {
	for _, r := range e.Recipes {
		slugs = append(slugs, r.V)
	}
	for _, c := range e.Chapters {
		if c.Recipe.Set() {
			slugs = append(slugs, c.Recipe.V)
		}
	}
	return slugs
}

// aired is what an episode is judged by.
func (d *Desk) aired(e *content.Episode, s *content.Site, named map[string][]*content.Recipe) aired {
	a := aired{episode: e, audio: s.Media[path.Join(path.Dir(e.File), e.Audio.File.V)], transcript: s.Media[path.Join(path.Dir(e.File), e.Transcript.V)]}
	for _, slug := range namedIn(e) {
		for _, r := range named[slug] {
			a.recipes += fmt.Sprintf("%p ", r)
		}
		if len(named[slug]) == 0 {
			a.names = d.names
		}
	}
	return a
}

// Broke has the desk take a picture for broken, as long as it stays as it is:
// printing it has shown what its head does not.
func (d *Desk) Broke(f content.File, fault string) {
	d.faults[f] = "the picture " + fault
	d.files++
}

// begin looks whether there is something else to judge files beside.
func (d *Desk) begin(s *content.Site) {
	d.alone.turn()
	d.beside.turn()
	slugs := make([]string, len(s.Recipes))
	for i, r := range s.Recipes {
		slugs[i] = r.Slug
	}
	if !slices.Equal(d.slugs, slugs) {
		d.slugs = slugs
		d.names++
	}
	if maps.Equal(d.pictures, s.Pictures) && maps.Equal(d.media, s.Media) {
		return
	}
	d.pictures, d.media = s.Pictures, s.Media
	d.files++
	known := make(map[content.File]string)
	for _, f := range s.Pictures {
		if fault, ok := d.faults[f]; ok {
			known[f] = fault
		}
	}
	d.faults = known
}

// checkFiles runs those rules on the site that look at one file of content
// after the other: on the part of it that holds just one.
func (d *Desk) checkFiles(s *content.Site, file any, take func(part *content.Site)) []Finding {
	return d.beside.of(illustrated{file, d.files}, func() []Finding { return d.checkPart(s, take) })
}

func (d *Desk) checkPart(s *content.Site, take func(part *content.Site)) []Finding {
	part := &content.Site{FS: s.FS, Pictures: s.Pictures, Media: s.Media}
	take(part)
	return slices.Concat(
		missingFile.stamp(checkMissingFile(part)),
		pictureBroken.stamp(brokenPictures(part, d.fault)),
		pictureText.stamp(pictureText.CheckSite(part)),
	)
}

// fault says what is wrong with a picture. It is read once while it stays as it
// is.
func (d *Desk) fault(s *content.Site, f content.File) string {
	fault, ok := d.faults[f]
	if !ok {
		fault = pictureFault(s, f)
		d.faults[f] = fault
	}
	return fault
}

// A memo keeps findings from one check to the next, unless nobody asks for
// them any more.
type memo[K comparable] struct{ last, now map[K][]Finding }

func (m *memo[K]) turn() {
	m.last, m.now = m.now, make(map[K][]Finding, len(m.now))
}

func (m *memo[K]) of(key K, find func() []Finding) []Finding {
	fs, ok := m.now[key]
	if ok {
		return fs
	}
	if fs, ok = m.last[key]; !ok {
		fs = find()
	}
	m.now[key] = fs
	return fs
}
