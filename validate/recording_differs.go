package validate

import (
	"fmt"
	"math/big"
	"slices"
	"strings"
	"time"

	"stillroom/content"
)

// recordingDiffers reports figures of a recording that its file does not bear
// out.
var recordingDiffers = &Rule{
	ID:       "recording-differs",
	Severity: Error,
	Summary:  "bytes, duration or type that are not those of the recording",
	Doc: `Under "audio:" only the file need be named: its bytes, its duration and its type are
read from it. Where they are written all the same, they must be right, for players
ask for as many bytes as they were told of. A duration may be rounded to minutes:
41 min, or 41 min 12 s. Take the line out, or write what the file
says.`,
	Source:       Source{Title: "PSP-1, The Podcast RSS Standard (2023-08-07): enclosure, itunes:duration"},
	CheckEpisode: checkRecordingDiffers,
}

func checkRecordingDiffers(e *content.Episode, s *content.Site) []Finding {
	f, ok := recordingOf(e, s)
	if !ok || f.Sound.Fault != "" {
		return nil
	}
	var fs []Finding
	differs := func(pos content.Pos, written, is, write string) {
		fs = append(fs, Finding{Pos: pos,
			Message: fmt.Sprintf("%s is written, but the recording %s", written, is),
			Advice:  fmt.Sprintf("Take the line out, since it is read from the file, or write %s.", write)})
	}
	a, played := e.Audio, f.Sound.Duration
	if a.Bytes.Set() && int64(a.Bytes.V) != f.Size {
		differs(a.Bytes.Pos, fmt.Sprintf("bytes: %d", a.Bytes.V), fmt.Sprintf("has %d", f.Size), fmt.Sprintf("bytes: %d", f.Size))
	}
	if a.Duration.Set() && !playsFor(a.Duration.V, played) {
		differs(a.Duration.Pos, a.Duration.V.Text, "plays for "+content.PlayingTime(played), content.PlayingTime(played))
	}
	if types := f.Sound.Format.MediaTypes(); a.Type.Set() && !slices.Contains(types, strings.ToLower(a.Type.V)) {
		differs(a.Type.Pos, a.Type.V, fmt.Sprintf("is %s", f.Sound.Format), types[0])
	}
	return fs
}

// playsFor reports whether a duration is the true one, give or take the
// rounding to whole minutes if it has no seconds. A second either way is none: encoders
// differ by the silence that they add.
func playsFor(d content.Duration, played time.Duration) bool {
	m := d.Minutes()
	if m == nil {
		return false
	}
	seconds, _ := new(big.Rat).Mul(m, big.NewRat(60, 1)).Float64()
	slack := 1.0
	if d.Unit == content.Minute || d.Unit == content.Hour {
		slack = 30
	}
	return played.Seconds() >= seconds-slack && played.Seconds() <= seconds+slack
}
