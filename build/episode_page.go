package build

import (
	"cmp"
	"fmt"
	"html/template"

	"stillroom/content"
)

// An EpisodePage is all that the show notes of an episode show.
type EpisodePage struct {
	Shell
	EpisodeCard
	Programme  string
	Audio      *Recording // nil if there is nothing to listen to
	Chapters   []ChapterMark
	Notes      template.HTML
	Recipes    []SpokenCard
	Withdrawn  []Link // recipes that it names and that were taken back
	Links      []OutLink
	Next       string
	Transcript []Turn
	Earlier    *Link
	Later      *Link
}

// A Recording is what the player plays.
type Recording struct {
	Src, Type string
}

// A ChapterMark is a place in the recording. Its address plays from there, even
// without a script: https://www.w3.org/TR/media-frags/
type ChapterMark struct {
	At      string // 0:32
	Seconds int
	Title   string
	Address string // empty if there is nothing to listen to
	Recipe  *Link  // nil if it speaks of none that is out
}

// An OutLink leads out of the site.
type OutLink struct{ Title, Address string }

// episodePage makes the page of the episode at a place in the list, the newest
// being at 0.
func (e *edition) episodePage(at int) (*EpisodePage, error) {
	ep := e.episodes[at]
	notes, err := e.md.prose(ep.Body.Source, ep.Body.Doc).whole(ep.Body.Doc)
	if err != nil {
		return nil, err
	}
	audio := e.recording(ep)
	spoken, err := e.transcript(ep, audio)
	if err != nil {
		return nil, err
	}
	p := &EpisodePage{
		EpisodeCard: e.episodeCard(ep),
		Audio:       audio,
		Notes:       notes,
		Recipes:     e.spokenCards(ep, audio),
		Withdrawn:   e.withdrawnLinks(ep),
		Links:       outLinks(ep.Links),
		Next:        ep.Next.V,
		Transcript:  spoken,
		Earlier:     e.episodeLink(at + 1),
		Later:       e.episodeLink(at - 1),
	}
	if e.settings.Programme != nil {
		p.Programme = e.settings.Programme.Name.V
	}
	p.Chapters = e.chapters(ep, p.Audio)
	p.Shell = e.shell(leaf{
		address:     episodeAddress(ep),
		name:        ep.Name.V,
		description: ep.Summary.V,
		trail:       []Link{{Name: "Show notes", Address: showNotesAddress}},
		article:     true,
		nodes:       []node{e.episodeNode(ep)},
		scripts:     []string{"player.js"},
		audio:       ep.Audio.Address.V,
	})
	p.Vessels = vessels(drawn(p.Recipes))
	return p, nil
}

// recording is the local file if there is one, and else the address elsewhere.
func (e *edition) recording(ep *content.Episode) *Recording {
	if src, ok := e.assets.Media(mediaPath(ep, ep.Audio.File.V)); ok {
		return &Recording{src, mediaType(ep, src)}
	}
	if ep.Audio.Address.V != "" {
		return &Recording{ep.Audio.Address.V, mediaType(ep, ep.Audio.Address.V)}
	}
	return nil
}

// mediaType is the type that the author gives, else that of the name; empty if
// neither tells.
func mediaType(ep *content.Episode, src string) string {
	known := ""
	if types := content.SoundFormatOf(src).MediaTypes(); len(types) > 0 {
		known = types[0]
	}
	return cmp.Or(ep.Audio.Type.V, known)
}

func (e *edition) chapters(ep *content.Episode, audio *Recording) []ChapterMark {
	var marks []ChapterMark
	for _, c := range ep.Chapters {
		m := ChapterMark{At: clockTime(c.At.V), Seconds: c.At.V, Title: c.Title.V}
		if audio != nil {
			m.Address = fmt.Sprintf("%s#t=%d", audio.Src, c.At.V)
		}
		if r := e.recipe[c.Recipe.V]; r != nil {
			m.Recipe = &Link{Name: r.Name.V, Address: recipeAddress(r)}
		}
		marks = append(marks, m)
	}
	return marks
}

// spokenOf gives the recipes that an episode names, without those that are held
// back.
func (e *edition) spokenOf(ep *content.Episode) []*content.Recipe {
	var recipes []*content.Recipe
	for _, s := range named(ep) {
		if r := e.recipe[s]; r != nil {
			recipes = append(recipes, r)
		}
	}
	return recipes
}

func (e *edition) episodeLink(at int) *Link {
	if at < 0 || at >= len(e.episodes) {
		return nil
	}
	return &Link{Name: e.episodes[at].Name.V, Address: episodeAddress(e.episodes[at])}
}

func outLinks(links []content.Link) []OutLink {
	var out []OutLink
	for _, l := range links {
		out = append(out, OutLink{l.Title.V, l.Address.V})
	}
	return out
}
