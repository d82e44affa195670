package build

import (
	"fmt"

	"stillroom/content"
)

// A SpokenCard is a recipe on the page of an episode that speaks of it.
type SpokenCard struct {
	Jar
	Picture *Picture // nil if it has none: then the jar is drawn
	At      string   // 0:32, where a chapter speaks of it; empty if none does
	Listen  string   // the address that plays from there; empty if there is nothing to listen to
	From    int      // the same in seconds
}

func (e *edition) spokenCards(ep *content.Episode, audio *Recording) []SpokenCard {
	var cards []SpokenCard
	for _, r := range e.spokenOf(ep) {
		card := SpokenCard{Jar: jar(r), Picture: e.picture(r.Picture)}
		for _, c := range ep.Chapters {
			if c.Recipe.V == r.Slug {
				card.At, card.From = clockTime(c.At.V), c.At.V
				break
			}
		}
		if audio != nil && card.At != "" {
			card.Listen = fmt.Sprintf("%s#t=%d", audio.Src, card.From)
		}
		cards = append(cards, card)
	}
	return cards
}

// drawn are the jars of cards without picture, whose drawings the page needs.
func drawn(cards []SpokenCard) []Jar {
	var jars []Jar
	for _, c := range cards {
		if c.Picture == nil {
			jars = append(jars, c.Jar)
		}
	}
	return jars
}
