package build

import (
	"fmt"

	"stillroom/content"
)

// An EpisodeCard is an episode in a list.
type EpisodeCard struct {
	Name      string
	Address   string
	Number    int    // 0 if it has none
	Place     string // Series 2, episode 1; empty if it has neither
	Summary   string
	Published Day
	Length    string // 1 min 20 s
	At        string // 0:32, where it speaks of the recipe whose page this is
}

func (e *edition) episodeCard(ep *content.Episode) EpisodeCard {
	return EpisodeCard{
		Name:      ep.Name.V,
		Address:   episodeAddress(ep),
		Number:    ep.Number.V,
		Summary:   ep.Summary.V,
		Published: day(ep.Published.V),
		Length:    typeset(e.playingTime(ep)),
		Place:     place(ep),
	}
}

// playingTime is how long an episode plays, as its author puts it if they do.
func (e *edition) playingTime(ep *content.Episode) string {
	if d := e.plays(ep); !ep.Audio.Duration.Set() && d > 0 {
		return content.PlayingTime(d)
	}
	return ep.Audio.Duration.V.Text
}

func place(ep *content.Episode) string {
	switch {
	case ep.Series.Set() && ep.Number.Set():
		return fmt.Sprintf("Series %d, episode %d", ep.Series.V, ep.Number.V)
	case ep.Series.Set():
		return fmt.Sprintf("Series %d", ep.Series.V)
	case ep.Number.Set():
		return fmt.Sprintf("Episode %d", ep.Number.V)
	}
	return ""
}

// heardIn gives the episodes that name a recipe. Nobody writes that link twice.
func (e *edition) heardIn(r *content.Recipe) []EpisodeCard {
	var cards []EpisodeCard
	for _, ep := range e.heard[r.Slug] {
		c := e.episodeCard(ep)
		for _, ch := range ep.Chapters {
			if ch.Recipe.V == r.Slug && c.At == "" {
				c.At = clockTime(ch.At.V)
			}
		}
		cards = append(cards, c)
	}
	return cards
}

// clockTime gives seconds as a player shows them: 0:32, 1:02:09.
func clockTime(seconds int) string {
	h, m, s := seconds/3600, seconds/60%60, seconds%60
	if h > 0 {
		return fmt.Sprintf("%d:%02d:%02d", h, m, s)
	}
	return fmt.Sprintf("%d:%02d", m, s)
}
