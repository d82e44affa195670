package content

import (
	"bytes"
	"encoding/binary"
	"io/fs"
	"os"
	"testing"
	"testing/fstest"
	"time"
)

// recordings are two and a half seconds of a tone in each format, made with
// ffmpeg 5.1, LAME 3.100, oggenc 1.4 and opusenc 0.2. The lengths are those to
// which ffmpeg decodes them; ffprobe, which guesses from the bit rate where no
// count is written, says 2.473 s of plain-vbr.mp3.
var recordings = []struct {
	file   string
	format SoundFormat
	length time.Duration
}{
	{"vbr.mp3", MP3, 2500 * time.Millisecond},        // frames counted, padding known
	{"lame.mp3", MP3, 2500 * time.Millisecond},       // constant rate, MPEG 2
	{"lame-plain.mp3", MP3, 2592 * time.Millisecond}, // nothing counted: padding is heard
	{"plain.mp3", MP3, 2534 * time.Millisecond},      // constant rate
	{"plain-vbr.mp3", MP3, 2534 * time.Millisecond},  // the rate varies, between ID3v2 and ID3v1
	{"mpeg25.mp3", MP3, 2612 * time.Millisecond},     // MPEG 2.5, two channels
	{"end.m4a", M4A, 2500 * time.Millisecond},        // the list of contents after the sound
	{"front.m4a", M4A, 2500 * time.Millisecond},      // and before it
	{"vorbis.ogg", Ogg, 2500 * time.Millisecond},     //
	{"opus.opus", Ogg, 2500 * time.Millisecond},      // 312 samples at the beginning are not played
}

const recordingsFolder = "testdata/recordings"

func TestListen(t *testing.T) {
	for _, c := range recordings {
		s := Listen(os.DirFS(recordingsFolder), c.file)
		if s.Fault != "" || s.Format != c.format || (s.Duration-c.length).Abs() > time.Millisecond {
			t.Errorf("%s: %+v, want %s of %v", c.file, s, c.format, c.length)
		}
	}
}

func TestListenFaults(t *testing.T) {
	file := func(name string) []byte {
		data, err := os.ReadFile(recordingsFolder + "/" + name)
		if err != nil {
			t.Fatal(err)
		}
		return data
	}
	half := func(name string) []byte { d := file(name); return d[:len(d)/2] }
	for _, c := range []struct {
		name string
		data []byte
		want string
	}{
		{"empty.mp3", nil, "is empty"},
		{"notes.mp3", []byte("Rain since Tuesday. Cabbage, salt and time.\n"), errNoRecording.Error()},
		{"noise.mp3", bytes.Repeat([]byte{0xff, 0xfb, 0x00, 0x00, 0x17}, 40000), errNoRecording.Error()},
		{"gone.mp3", []byte("<!doctype html><title>Not found</title>"), "is a web page, which no player takes as an episode; save it as MP3 or M4A"},
		{"field.mp3", []byte("RIFF\x24\x00\x00\x00WAVEfmt "), "is a WAV file, which no player takes as an episode; save it as MP3 or M4A"},
		{"bare.m4a", file("bare.aac"), "is a bare AAC stream, which no player takes as an episode; save it as MP3 or M4A"},
		{"liar.mp3", file("end.m4a"), "is named as MP3 but holds M4A"},
		{"liar.ogg", file("plain.mp3"), "is named as Ogg but holds MP3"},
		{"cut.mp3", half("vbr.mp3"), errSoundCut.Error()},
		{"cut-plain.mp3", half("plain.mp3"), errSoundCut.Error()},
		{"cut.m4a", half("end.m4a"), errSoundCut.Error()},
		{"cut-front.m4a", half("front.m4a"), errSoundCut.Error()},
		{"no-list.m4a", file("end.m4a")[:bytes.Index(file("end.m4a"), []byte("moov"))-4], "is cut short: the list of its contents is missing"},
		{"fragments.m4a", file("fragments.m4a"), "is written in fragments, as for streaming; save it as an ordinary M4A file"},
		{"cut.ogg", half("vorbis.ogg"), errSoundCut.Error()},
		{"cut.opus", half("opus.opus"), errSoundCut.Error()},
		{"segments.ogg", append([]byte("OggS\x00\x02"), bytes.Repeat([]byte{255}, 60)...), errSoundCut.Error()}, // 255 of them, and 39 are there
		{"chain.ogg", append(file("vorbis.ogg"), file("opus.opus")...), "holds several recordings in one Ogg file; save it as one"},
		{"film.ogg", append([]byte("OggS\x00\x02"), append(make([]byte, 20), "\x01\x1e\x80theora..........................."...)...), "holds neither Vorbis nor Opus"},
	} {
		got := Listen(fstest.MapFS{c.name: {Data: c.data}}, c.name)
		if got.Fault != c.want || got.Duration != 0 {
			t.Errorf("%s: %+v, want %q", c.name, got, c.want)
		}
	}
	if got := Listen(fstest.MapFS{"one.vtt": {Data: []byte("WEBVTT\n")}}, "one.vtt"); got != (Sound{}) {
		t.Errorf("a transcript sounds as %+v", got)
	}
}

// TestListenJoined holds that recordings joined end to end, tags and all, play
// as long as their parts.
func TestListenJoined(t *testing.T) {
	one, err := os.ReadFile(recordingsFolder + "/plain-vbr.mp3")
	if err != nil {
		t.Fatal(err)
	}
	one = one[:len(one)-128] // ID3v1 stands at the end of a file alone
	s, err := ReadSound(bytes.NewReader(append(bytes.Clone(one), one...)))
	if want := 2 * 2534 * time.Millisecond; err != nil || (s.Duration-want).Abs() > time.Millisecond {
		t.Errorf("%v, %v; want %v", s.Duration, err, want)
	}
}

func TestPlayingTime(t *testing.T) {
	for d, want := range map[time.Duration]string{
		0:                           "0 s",
		1499 * time.Millisecond:     "1 s",
		59500 * time.Millisecond:    "1 min",
		83 * time.Second:            "1 min 23 s",
		2*time.Hour + 5*time.Second: "2 h 5 s",
	} {
		if got := PlayingTime(d); got != want {
			t.Errorf("PlayingTime(%v) = %q, want %q", d, got, want)
		}
	}
}

func FuzzReadSound(f *testing.F) {
	for _, c := range recordings {
		data, err := fs.ReadFile(os.DirFS(recordingsFolder), c.file)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(data)
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		if s, err := ReadSound(bytes.NewReader(data)); err == nil && s.Duration < 0 {
			t.Errorf("a recording of %v", s.Duration)
		}
	})
}

// BenchmarkListen reads an hour at 128 kbit/s: one whose frames are counted,
// and one in which they must be.
func BenchmarkListen(b *testing.B) {
	header := []byte{0xff, 0xfb, 0x90, 0x00} // MPEG 1, 128 kbit/s, 44.1 kHz
	hour := bytes.Repeat(append(header, make([]byte, 413)...), 137813)
	counted := bytes.Clone(hour)
	copy(counted[36:], "Xing\x00\x00\x00\x03")
	binary.BigEndian.PutUint32(counted[44:], 137812)
	binary.BigEndian.PutUint32(counted[48:], uint32(len(counted)))
	for name, data := range map[string][]byte{"counted": counted, "uncounted": hour} {
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if s, err := ReadSound(bytes.NewReader(data)); err != nil || s.Duration.Round(time.Second) != time.Hour {
					b.Fatal(s, err)
				}
			}
		})
	}
}
