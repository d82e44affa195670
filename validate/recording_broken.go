package validate

import (
	"fmt"
	"path"

	"stillroom/content"
)

// recordingBroken reports a recording that players could not play to its end,
// or that is not what its name says.
var recordingBroken = &Rule{
	ID:       "recording-broken",
	Severity: Error,
	Summary:  "a recording that is broken, cut short or not what its name says",
	Doc: `A recording is an MP3, M4A or Ogg file (Vorbis or Opus) that is all there and is
named as what it is: players go by the ending of its address, and a listener whose
copy stops in the middle cannot tell that there was more. Save it again from the
program that made it, or copy it again.`,
	Source: Source{Title: "PSP-1, The Podcast RSS Standard (2023-08-07): enclosure"},
	CheckEpisode: func(e *content.Episode, s *content.Site) []Finding {
		f, ok := recordingOf(e, s)
		if !ok || f.Sound.Fault == "" {
			return nil
		}
		return []Finding{{
			Pos:     e.Audio.File.Pos,
			Message: fmt.Sprintf("the recording %s %s", path.Base(f.Path), f.Sound.Fault),
			Advice:  "Put a sound recording in its place, under a name with the right ending: .mp3, .m4a or .ogg.",
		}}
	},
}

// recordingOf gives the recording that lies beside an episode. One that is not
// there is told by another rule.
func recordingOf(e *content.Episode, s *content.Site) (content.File, bool) {
	f, ok := s.Media[path.Join(path.Dir(e.File), e.Audio.File.V)]
	return f, ok && e.Audio.File.Set()
}
