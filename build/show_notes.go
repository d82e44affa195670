package build

import (
	"fmt"
	"strconv"
	"strings"

	"stillroom/content"
)

// A ShowNotesPage lists the episodes.
type ShowNotesPage struct {
	Shell
	Heading string
	Summary string
	Picture *Picture
	Count   string // 7 episodes
	Series  []Series
	Folded  bool // so many episodes that a year is opened to look into it
}

// A Series is a run of episodes that belong together, the newest first.
type Series struct {
	ID    string
	Name  string // Series 2; empty if the episodes belong to none
	Count string // 12 episodes
	Years []EpisodeYear
}

// An EpisodeYear is what of a series came out in a year.
type EpisodeYear struct {
	Year     string
	Count    string // 12 episodes
	Full     bool   // shown with summaries; else each episode has a line
	Episodes []EpisodeEntry
}

// An EpisodeEntry is an episode with the recipes that it speaks of.
type EpisodeEntry struct {
	EpisodeCard
	Recipes []Link
}

// unfolded is how many episodes a page holds before a reader has to scroll for
// too long.
const unfolded = 40

func (e *edition) showNotesPage() *ShowNotesPage {
	p := &ShowNotesPage{
		Heading: "Show notes",
		Count:   count(len(e.episodes), "episode", "episodes"),
		Series:  e.seriesOf(e.episodes),
		Folded:  len(e.episodes) > unfolded,
	}
	description := "Show notes of every episode."
	if prog := e.settings.Programme; prog != nil {
		p.Heading = prog.Name.V
		p.Summary = prog.Summary.V
		p.Picture = e.picture(&content.Picture{File: prog.Picture})
		description = "Show notes of every episode of " + prog.Name.V + "."
	}
	p.Shell = e.shell(leaf{address: showNotesAddress, name: "Show notes", description: description})
	return p
}

// seriesOf parts episodes, which come newest first, by series and year. An
// episode that comes out late still stands with its series. Of many episodes
// only the newest year is shown in full.
func (e *edition) seriesOf(episodes []*content.Episode) []Series {
	var all []Series
	at := make(map[int]int)
	for _, ep := range episodes {
		i, ok := at[ep.Series.V]
		if !ok {
			i = len(all)
			at[ep.Series.V] = i
			all = append(all, newSeries(ep))
		}
		all[i].add(strconv.Itoa(ep.Published.V.Year), e.episodeEntry(ep))
	}
	for i := range all {
		all[i].sum(len(episodes) <= unfolded)
	}
	if len(all) > 0 {
		all[0].Years[0].Full = true
	}
	return all
}

func newSeries(ep *content.Episode) Series {
	if !ep.Series.Set() {
		return Series{ID: "other"}
	}
	return Series{ID: fmt.Sprintf("series-%d", ep.Series.V), Name: fmt.Sprintf("Series %d", ep.Series.V)}
}

func (e *edition) episodeEntry(ep *content.Episode) EpisodeEntry {
	entry := EpisodeEntry{EpisodeCard: e.episodeCard(ep)}
	for _, r := range e.spokenOf(ep) {
		entry.Recipes = append(entry.Recipes, Link{Name: r.Name.V, Address: recipeAddress(r)})
	}
	return entry
}

func (s *Series) add(year string, entry EpisodeEntry) {
	if n := len(s.Years); n == 0 || s.Years[n-1].Year != year {
		s.Years = append(s.Years, EpisodeYear{Year: year})
	}
	y := &s.Years[len(s.Years)-1]
	y.Episodes = append(y.Episodes, entry)
}

// sum counts the episodes of the series and its years.
func (s *Series) sum(full bool) {
	total := 0
	for i := range s.Years {
		y := &s.Years[i]
		total += len(y.Episodes)
		y.Count, y.Full = count(len(y.Episodes), "episode", "episodes"), full
	}
	s.Count = count(total, "episode", "episodes")
}

// count gives a number and the word for what is counted.
func count(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return thousands(n) + " " + strings.TrimSpace(many)
}
