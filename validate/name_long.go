package validate

import (
	"fmt"
	"unicode/utf8"

	"stillroom/content"
)

// nameLong reports names that directories of programmes do not take.
var nameLong = &Rule{
	ID:       "name-long",
	Severity: Warning,
	Summary:  "a name of the programme, or of an episode, that is longer than directories take",
	Doc: `A value of a programme's feed has at most 255 letters: a directory cuts a longer name
off, or refuses the feed. Say the rest in the summary. That may have 4,000 bytes, as
has every text in front matter; a letter like é counts as two.`,
	Source: Source{Title: "PSP-1, The Podcast RSS Standard (2023-08-07): lengths of values"},
	CheckEpisode: func(e *content.Episode, _ *content.Site) []Finding {
		return longName(e.Name, "the episode")
	},
	CheckSite: func(s *content.Site) []Finding {
		if s.Settings.Programme == nil {
			return nil
		}
		return longName(s.Settings.Programme.Name, "the programme")
	},
}

// inName is how many letters a name in a feed may have.
const inName = 255

func longName(name content.Field[string], of string) []Finding {
	n := utf8.RuneCountInString(name.V)
	if n <= inName {
		return nil
	}
	return []Finding{{
		Pos:     name.Pos,
		Message: fmt.Sprintf("the name of %s has %d letters, and directories take %d", of, n, inName),
		Advice:  "Shorten it, and say the rest in the summary.",
	}}
}
