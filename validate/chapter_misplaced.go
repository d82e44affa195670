package validate

import (
	"fmt"
	"math/big"
	"time"

	"stillroom/content"
)

// chapterMisplaced reports chapters to which no player can go.
var chapterMisplaced = &Rule{
	ID:       "chapter-misplaced",
	Severity: Warning,
	Summary:  "a chapter that starts after the end of its recording, or before the chapter above it",
	Doc: `Players take the chapters of an episode in the order in which they stand, each up
to the start of the next. One that starts earlier than the one above it is never
shown, or shown in the wrong place; one that starts when the recording is over cannot
be listened to. Put them in the order of their times, and look whether hours and
minutes were mixed up: 1:30 is a minute and a half.

Of a recording that lies elsewhere the end is known only where its duration is
written.`,
	Source:       Source{Title: "Podcast namespace, JSON chapters 1.2 (2026-05-13): startTime"},
	CheckEpisode: checkChapterMisplaced,
}

func checkChapterMisplaced(e *content.Episode, s *content.Site) []Finding {
	var fs []Finding
	end := lengthOf(e, s)
	for i, c := range e.Chapters {
		if !c.At.Set() {
			continue
		}
		at := time.Duration(c.At.V) * time.Second
		switch {
		case end > 0 && at >= end:
			fs = append(fs, Finding{Pos: c.At.Pos,
				Message: fmt.Sprintf("the chapter starts at %s, when the recording of %s is over", content.PlayingTime(at), content.PlayingTime(end)),
				Advice:  "Write the time at which it starts, as in 12:30 or 1:02:30."})
		case i > 0 && c.At.V <= e.Chapters[i-1].At.V && e.Chapters[i-1].At.Set():
			fs = append(fs, Finding{Pos: c.At.Pos,
				Message: "the chapter does not start after the one above it",
				Advice:  "Put the chapters in the order of their times, each with a time of its own.",
				Notes:   []Note{{e.Chapters[i-1].At.Pos, "the one above it"}}})
		}
	}
	return fs
}

// lengthOf is how long an episode plays: by its file, else by what is written;
// 0 if neither says.
func lengthOf(e *content.Episode, s *content.Site) time.Duration {
	if f, ok := recordingOf(e, s); ok && f.Sound.Duration > 0 {
		return f.Sound.Duration
	}
	m := e.Audio.Duration.V.Minutes()
	if m == nil {
		return 0
	}
	seconds, _ := new(big.Rat).Mul(m, big.NewRat(60, 1)).Float64()
	return time.Duration(seconds * float64(time.Second))
}
