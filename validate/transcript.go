package validate

import (
	"bytes"
	"io/fs"
	"path"
	"strconv"
	"strings"

	"stillroom/content"
)

// textOfEpisode reads what an episode says: its front matter, its show notes,
// and the transcript. One that is not there, or too long to be read, is told of
// elsewhere.
func textOfEpisode(e *content.Episode, s *content.Site) *Text {
	t := &Text{Episode: e, Site: s, cutter: cutters.Get().(*cutter)}
	t.line(placeName, e.Name)
	t.line(placeSummary, e.Summary)
	for _, c := range e.Chapters {
		t.line(placeChapter, c.Title)
	}
	t.passages = append(t.passages, readBody(e.Body, t.cutter)...)
	if e.Transcript.V != "" && s != nil && s.FS != nil {
		name := path.Join(path.Dir(e.File), e.Transcript.V)
		if _, known := s.Media[name]; !known {
			return t
		}
		if data, err := fs.ReadFile(s.FS, name); err == nil {
			t.passages = append(t.passages, readTranscript(name, data, t.cutter)...)
		}
	}
	return t
}

// A cueReader makes passages of a WebVTT or SubRip file: a new one begins when
// another speaks, or after a pause.
type cueReader struct {
	source []byte
	begin  content.Pos
	*cutter
	passages []*passage
	w        scribe
	from, to float64 // of what is being read
	speaker  string
}

// pause is the silence, in seconds, that parts two passages.
const pause = 0.5

func readTranscript(name string, data []byte, c *cutter) []*passage {
	data = bytes.TrimPrefix(data, []byte("\ufeff"))
	r := &cueReader{source: data, begin: content.Pos{File: name, Line: 1, Col: 1}, cutter: c, w: c.scribe(data)}
	inCue := false
	for at := 0; at < len(data); {
		end := at + bytes.IndexByte(data[at:], '\n')
		if end < at {
			end = len(data)
		}
		switch line := bytes.TrimSpace(data[at:end]); {
		case len(line) == 0:
			inCue = false
		case bytes.Contains(line, []byte("-->")):
			inCue = r.timing(string(line))
		case inCue:
			r.line(at, end)
		}
		at = end + 1
	}
	r.close()
	return r.passages
}

// timing begins a cue.
func (r *cueReader) timing(line string) bool {
	from, to, _ := strings.Cut(line, "-->")
	start, ok := clockSeconds(from)
	if !ok {
		return false
	}
	if start-r.to > pause {
		r.close()
	}
	if r.w.len() == 0 {
		r.from = start
	}
	r.to, _ = clockSeconds(to)
	return true
}

// clockSeconds reads 00:01:02.500, 1:02,5.
func clockSeconds(s string) (float64, bool) {
	s, _, _ = strings.Cut(strings.TrimSpace(s), " ")
	total, ok := 0.0, s != ""
	for part := range strings.SplitSeq(strings.Replace(s, ",", ".", 1), ":") {
		n, err := strconv.ParseFloat(part, 64)
		ok = ok && err == nil && n >= 0 && n < 1e6
		total = total*60 + n
	}
	return total, ok
}

// line takes a line of a cue, without its tags. <v Name> may change the
// speaker.
func (r *cueReader) line(from, to int) {
	for from < to {
		open := bytes.IndexByte(r.source[from:to], '<')
		if open < 0 {
			break
		}
		r.w.segment(from, from+open, false)
		shut := bytes.IndexByte(r.source[from+open:to], '>')
		if shut < 0 {
			from += open
			break
		}
		r.tag(string(r.source[from+open+1 : from+open+shut]))
		from += open + shut + 1
	}
	r.w.segment(from, to, false)
	r.w.space()
}

func (r *cueReader) tag(tag string) {
	name, ok := strings.CutPrefix(tag, "v ")
	if !ok || name == r.speaker {
		return
	}
	if r.speaker != "" {
		at := r.from
		r.close()
		r.from = at
	}
	r.speaker = name
}

// close makes a passage of what was read.
func (r *cueReader) close() {
	if strings.TrimSpace(r.w.written()) != "" {
		p := passage{place: placeSpoken, second: r.from, trace: trace{begin: r.begin}}
		r.passages = append(r.passages, r.takeUp(p, &r.w))
	}
	r.w = r.scribe(r.source)
}
