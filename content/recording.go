package content

import (
	"bytes"
	"cmp"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"path"
	"strings"
	"sync"
	"time"
)

// A Sound is what a recording's own bytes say about it. The zero Sound is that
// of a file that is no recording, such as a transcript.
type Sound struct {
	Format   SoundFormat
	Duration time.Duration // 0 if Fault is set
	Fault    string        // a clause that tells its owner what is wrong: "is cut short: …"; empty if it is sound
}

// SoundFormat is how a recording is written down.
type SoundFormat string

// The formats of recordings.
const (
	MP3 SoundFormat = "MP3"
	M4A SoundFormat = "M4A"
	Ogg SoundFormat = "Ogg"
)

// soundFormats gives the format that the ending of a file's name stands for.
var soundFormats = map[string]SoundFormat{".mp3": MP3, ".m4a": M4A, ".ogg": Ogg, ".oga": Ogg, ".opus": Ogg}

// SoundFormatOf gives the format that a file's name stands for; empty if it is
// not that of a recording.
func SoundFormatOf(file string) SoundFormat { return soundFormats[strings.ToLower(path.Ext(file))] }

// MediaTypes are the media types by which a format is known, the one to be
// given first. RFC 3003, RFC 5334; audio/x-m4a is what directories ask for.
func (f SoundFormat) MediaTypes() []string {
	switch f {
	case MP3:
		return []string{"audio/mpeg"}
	case M4A:
		return []string{"audio/x-m4a", "audio/mp4", "audio/m4a"}
	case Ogg:
		return []string{"audio/ogg"}
	}
	return nil
}

// PlayingTime writes how long something plays, to the second: 1 h 2 min 5 s.
func PlayingTime(d time.Duration) string {
	all := int64(d.Round(time.Second) / time.Second)
	var parts []string
	for _, u := range []struct {
		name string
		n    int64
	}{{"h", all / 3600}, {"min", all / 60 % 60}, {"s", all % 60}} {
		if u.n > 0 {
			parts = append(parts, fmt.Sprintf("%d %s", u.n, u.name))
		}
	}
	return cmp.Or(strings.Join(parts, " "), "0 s")
}

// listen reads the sound of every recording among files, without holding more
// than a small part of one in memory.
func listen(fsys fs.FS, files map[string]File) {
	var names []string
	for name := range files {
		names = append(names, name)
	}
	sounds := make([]Sound, len(names))
	next := make(chan int)
	var group sync.WaitGroup
	for range workers {
		group.Go(func() {
			for i := range next {
				sounds[i] = Listen(fsys, files[names[i]].Path)
			}
		})
	}
	for i := range names {
		next <- i
	}
	close(next)
	group.Wait()
	for i, name := range names {
		f := files[name]
		f.Sound = sounds[i]
		files[name] = f
	}
}

// Listen reads how a recording is written down and how long it plays. A file
// whose name is not that of a recording has no sound.
func Listen(fsys fs.FS, file string) Sound {
	named := SoundFormatOf(file)
	if named == "" {
		return Sound{}
	}
	f, err := fsys.Open(file)
	if err != nil {
		return Sound{Fault: "cannot be opened"}
	}
	defer f.Close()
	r, ok := f.(io.ReadSeeker)
	if !ok {
		return Sound{Fault: "cannot be read from the middle"}
	}
	s, err := ReadSound(r)
	switch {
	case err != nil:
		s.Fault = err.Error()
	case s.Format != named:
		s.Fault = fmt.Sprintf("is named as %s but holds %s", named, s.Format)
	case s.Duration <= 0:
		s.Fault = "holds no sound"
	case s.Duration > longestSound:
		s.Fault = "says that it plays for more than a thousand hours"
	}
	if s.Fault != "" {
		s.Duration = 0
	}
	return s
}

// longestSound is more than any episode lasts; what says so is damaged.
const longestSound = 1000 * time.Hour

// playing is so many seconds, or longer than any sound if a Duration cannot
// hold them.
func playing(seconds float64) time.Duration {
	return time.Duration(min(seconds, 2*longestSound.Seconds()) * float64(time.Second))
}

var (
	errNoRecording = errors.New("is no recording that can be played, or is broken")
	errSoundCut    = errors.New("is cut short: its end is missing")
)

// ReadSound tells a recording's format and length by its bytes, whatever its
// name. The error is a clause that tells its owner what is wrong.
func ReadSound(r io.ReadSeeker) (Sound, error) {
	size, err := r.Seek(0, io.SeekEnd)
	if err != nil {
		return Sound{}, fmt.Errorf("cannot be read: %w", err)
	}
	t := &tape{r: r, size: size, window: make([]byte, 0, windowSize+2*windowBack)}
	head := t.peekAt(0, 16)
	switch {
	case size == 0:
		return Sound{}, errors.New("is empty")
	case bytes.HasPrefix(head, []byte("OggS")):
		d, err := t.ogg()
		return Sound{Format: Ogg, Duration: d}, err
	case len(head) >= 8 && string(head[4:8]) == "ftyp":
		d, err := t.mp4()
		return Sound{Format: M4A, Duration: d}, err
	}
	for _, o := range others {
		if strings.HasPrefix(string(head), o.begins) && strings.Contains(string(head), o.holds) {
			return Sound{}, fmt.Errorf("is %s, which no player takes as an episode; save it as MP3 or M4A", o.name)
		}
	}
	d, err := t.mp3()
	return Sound{Format: MP3, Duration: d}, err
}

// others are what is taken for a recording by mistake, by the bytes that it
// begins with.
var others = []struct{ begins, holds, name string }{
	{"RIFF", "WAVE", "a WAV file"},
	{"FORM", "AIFF", "an AIFF file"},
	{"fLaC", "", "a FLAC file"},
	{"\xff\xf1", "", "a bare AAC stream"}, // ADTS, ISO/IEC 13818-7
	{"\xff\xf9", "", "a bare AAC stream"},
	{"<", "", "a web page"},
	{"PK\x03\x04", "", "a ZIP file"},
}

// A tape is a recording that is read from place to place, a little at a time.
type tape struct {
	r      io.ReadSeeker
	size   int64
	window []byte // what was read last
	from   int64  // where the window stands
}

// How much is read at a time, and how much of it lies before the place that is
// looked at: whoever looks for a frame looks ahead and comes back.
const (
	windowSize = 64 << 10
	windowBack = 4 << 10
)

// peekAt gives n bytes at a place, fewer at the end of the file. They are good
// until the next call.
func (t *tape) peekAt(at int64, n int) []byte {
	if at < 0 || at >= t.size {
		return nil
	}
	if end := min(at+int64(n), t.size); at < t.from || end > t.from+int64(len(t.window)) {
		t.wind(max(0, at-windowBack))
	}
	w := t.window[min(at-t.from, int64(len(t.window))):]
	return w[:min(n, len(w))]
}

// wind reads the window that begins at a place.
func (t *tape) wind(from int64) {
	t.from, t.window = from, t.window[:0]
	if _, err := t.r.Seek(from, io.SeekStart); err != nil {
		return
	}
	n, _ := io.ReadFull(t.r, t.window[:cap(t.window)]) // the size of the file tells what is missing
	t.window = t.window[:n]
}
