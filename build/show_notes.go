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
}

// A Series is a run of episodes that belong together, the newest first.
type Series struct {
	ID    string
	Name  string // Series 2; empty if the episodes belong to none
	Years []EpisodeYear
}

// An EpisodeYear is what of a series came out in a year.
type EpisodeYear struct {
	Year     string
	Episodes []EpisodeCard
}

func (e *edition) showNotesPage() *ShowNotesPage {
	p := &ShowNotesPage{
		Heading: "Show notes",
		Count:   count(len(e.episodes), "episode", "episodes"),
		Series:  seriesOf(e.episodes),
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
// episode that comes out late still stands with its series.
func seriesOf(episodes []*content.Episode) []Series {
	var all []Series
	at := make(map[int]int)
	for _, ep := range episodes {
		i, ok := at[ep.Series.V]
		if !ok {
			i = len(all)
			at[ep.Series.V] = i
			all = append(all, newSeries(ep))
		}
		all[i].add(ep)
	}
	return all
}

func newSeries(ep *content.Episode) Series {
	if !ep.Series.Set() {
		return Series{ID: "other"}
	}
	return Series{ID: fmt.Sprintf("series-%d", ep.Series.V), Name: fmt.Sprintf("Series %d", ep.Series.V)}
}

func (s *Series) add(ep *content.Episode) {
	year := strconv.Itoa(ep.Published.V.Year)
	if n := len(s.Years); n == 0 || s.Years[n-1].Year != year {
		s.Years = append(s.Years, EpisodeYear{Year: year})
	}
	y := &s.Years[len(s.Years)-1]
	y.Episodes = append(y.Episodes, episodeCard(ep))
}

// count gives a number and the word for what is counted.
func count(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return thousands(n) + " " + strings.TrimSpace(many)
}
