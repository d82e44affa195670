package build

import (
	"fmt"
	"html"
	"io/fs"
	"regexp"
	"strconv"
	"strings"

	"stillroom/content"
)

// A Turn is what one speaker says without a pause.
type Turn struct {
	Speaker string // empty if it is the same as before, or nobody is named
	At      string // 0:08
	Address string // plays from there; empty if there is nothing to listen to
	Lines   []Spoken
}

// A Spoken is a line of a transcript.
type Spoken struct {
	From string // in seconds: 8.092
	Text string
}

// transcript reads an episode's WebVTT or SubRip file as text for readers. It
// is empty if the episode has none, or names one that is not there.
func (e *edition) transcript(ep *content.Episode, audio *Recording) ([]Turn, error) {
	name := mediaPath(ep, ep.Transcript.V)
	if _, ok := e.site.Media[name]; !ok {
		return nil, nil
	}
	text, err := fs.ReadFile(e.site.FS, name)
	if err != nil {
		return nil, fmt.Errorf("read the transcript of an episode: %w", err)
	}
	all := turns(cues(string(text)))
	for i := range all {
		if audio != nil {
			all[i].Address = audio.Src + "#t=" + all[i].Lines[0].From // https://www.w3.org/TR/media-frags/
		}
	}
	return all, nil
}

// A cue is a line of a transcript and when it is spoken.
type cue struct {
	from, to float64 // seconds
	speaker  string
	text     string
}

// pause is the silence, in seconds, that parts two paragraphs.
const pause = 0.5

// turns joins cues into paragraphs: a new one begins with another speaker or
// after a pause.
func turns(cues []cue) []Turn {
	var all []Turn
	var last cue
	for i, c := range cues {
		if i == 0 || c.speaker != last.speaker || c.from-last.to >= pause {
			t := Turn{At: clockTime(int(c.from))}
			if i == 0 || c.speaker != last.speaker {
				t.Speaker = c.speaker
			}
			all = append(all, t)
		}
		t := &all[len(all)-1]
		t.Lines = append(t.Lines, Spoken{strconv.FormatFloat(c.from, 'f', -1, 64), c.text})
		last = c
	}
	return all
}

// cues reads blocks parted by empty lines. What has no timing line is a header
// or a note, and is passed over. https://www.w3.org/TR/webvtt1/
func cues(text string) []cue {
	text = strings.TrimPrefix(strings.NewReplacer("\r\n", "\n", "\r", "\n").Replace(text), "\ufeff")
	var all []cue
	for _, block := range strings.Split(text, "\n\n") {
		if c, ok := readCue(strings.Split(strings.Trim(block, "\n"), "\n")); ok {
			all = append(all, c)
		}
	}
	return all
}

func readCue(lines []string) (cue, bool) {
	for i, line := range lines {
		m := timing.FindStringSubmatch(line)
		if m == nil {
			continue
		}
		c := cue{from: seconds(m[1]), to: seconds(m[2])}
		c.speaker, c.text = spoken(strings.Join(lines[i+1:], " "))
		return c, c.text != ""
	}
	return cue{}, false
}

var (
	timing    = regexp.MustCompile(`^\s*((?:\d+:)?\d+:\d+[.,]\d+)\s+-->\s+((?:\d+:)?\d+:\d+[.,]\d+)`)
	voice     = regexp.MustCompile(`<v(?:\.[^ \t>]*)?[ \t]+([^>]+)>`)
	tags      = regexp.MustCompile(`<[^>]*>`)
	nameFirst = regexp.MustCompile(`^(\p{Lu}[\pL.'’-]*(?: \p{Lu}[\pL.'’-]*){0,3}): `)
)

// seconds reads 1:02:09.500 and 00:08,092.
func seconds(clock string) float64 {
	total := 0.0
	for part := range strings.SplitSeq(strings.Replace(clock, ",", ".", 1), ":") {
		n, _ := strconv.ParseFloat(part, 64) // digits and a point, by the pattern
		total = total*60 + n
	}
	return total
}

// spoken parts the words from who says them: <v Name> in WebVTT, "Name:" in
// SubRip.
func spoken(text string) (speaker, words string) {
	if m := voice.FindStringSubmatch(text); m != nil {
		speaker = m[1]
	}
	text = tags.ReplaceAllString(text, "")
	if m := nameFirst.FindStringSubmatch(text); m != nil && speaker == "" {
		speaker, text = m[1], text[len(m[0]):]
	}
	return strings.TrimSpace(html.UnescapeString(speaker)), strings.Join(strings.Fields(html.UnescapeString(text)), " ")
}
