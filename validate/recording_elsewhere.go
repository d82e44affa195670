package validate

import (
	"net/url"
	"path"

	"stillroom/content"
)

// recordingElsewhere reports what directories have to be told of a recording
// that is not published with the site.
var recordingElsewhere = &Rule{
	ID:       "recording-elsewhere",
	Severity: Warning,
	Summary:  "a recording elsewhere without bytes or duration, or one that directories do not take",
	Doc: `Of a recording beside its episode everything is read from the file. Of one that lies
elsewhere the author has to say its bytes and its duration: directories refuse an
episode without them. They go by the end of the address, and take MP3 and M4A alone;
an Ogg file is played by few.`,
	Source:       Source{Title: "PSP-1, The Podcast RSS Standard (2023-08-07): enclosure, itunes:duration"},
	CheckEpisode: checkRecordingElsewhere,
}

func checkRecordingElsewhere(e *content.Episode, _ *content.Site) []Finding {
	a := e.Audio
	name, local := a.File, a.File.Set()
	if !local {
		name = a.Address
	}
	if !name.Set() {
		return nil
	}
	var fs []Finding
	say := func(message, advice string) {
		fs = append(fs, Finding{Pos: name.Pos, Message: message, Advice: advice})
	}
	if !local && !a.Bytes.Set() {
		say("nobody says how many bytes the recording has", "Write bytes: and their number.")
	}
	if !local && !a.Duration.Set() {
		say("nobody says how long the recording plays", "Write duration: and how long, such as 41 min 12 s.")
	}
	switch format := formatAt(name.V); {
	case format == content.Ogg:
		say("the recording is an Ogg file, and directories take MP3 and M4A alone", "Save it as MP3.")
	case format == "" && !local:
		say("the address does not end as a recording does", "Give an address that ends in .mp3 or .m4a: players go by it.")
	}
	return fs
}

// formatAt is the format for which a file's name or an address stands.
func formatAt(name string) content.SoundFormat {
	if u, err := url.Parse(name); err == nil {
		name = path.Base(u.Path)
	}
	return content.SoundFormatOf(name)
}
