package build

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"image"
	"io/fs"
	"slices"
	"strings"
	"sync"
	"testing"
	"testing/fstest"
	"time"

	"stillroom/content"
)

// memory is a Cache for tests.
type memory struct {
	mu   sync.Mutex
	kept map[string][]byte
	puts int
	full bool // takes no more
}

func (m *memory) Get(key string) ([]byte, bool) {
	m.mu.Lock()
	defer m.mu.Unlock()
	data, ok := m.kept[key]
	return data, ok
}

func (m *memory) Put(key string, data []byte) error {
	m.mu.Lock()
	defer m.mu.Unlock()
	if m.full {
		return errors.New("the disk is full")
	}
	if m.kept == nil {
		m.kept = make(map[string][]byte)
	}
	m.kept[key] = data
	m.puts++
	return nil
}

// jamSite is a site of one recipe with a picture.
func jamSite(t *testing.T, picture []byte) *content.Site {
	t.Helper()
	return checked(t, "2026-09-01", map[string]string{
		"content/site.yaml":        "name: Larder\nauthor: Ada Sloe\naddress: https://larder.example\n",
		"content/pictures/jam.jpg": string(picture),
		"content/recipes/jam.md":   recipeText("Jam", "published: 2026-08-01\npicture: {file: jam.jpg, alt: Jam}\n---\n1. Stew.\n"),
	}).Site()
}

var jamJob = job{"jam.jpg", "content/pictures/jam.jpg", forPages | forSearch}

func TestPrintsAreKept(t *testing.T) {
	s := jamSite(t, held(jpegOf(t, corners(640, 480)), 6))
	cache := new(memory)
	d := &Darkroom{Cache: cache}
	first, err := d.all(s.FS, []job{jamJob})
	if err != nil {
		t.Fatal(err)
	}
	puts := cache.puts
	again, err := d.all(s.FS, []job{jamJob})
	if err != nil || cache.puts != puts {
		t.Errorf("made again: %d more, %v", cache.puts-puts, err)
	}
	if fmt.Sprint(first) != fmt.Sprint(again) || len(first[0]) != 6 {
		t.Errorf("first %v, then %v", first, again)
	}
	if other, err := d.all(s.FS, []job{{jamJob.name, jamJob.file, forFeed}}); err != nil || len(other[0]) != 1 || other[0][0].Use != aCover {
		t.Errorf("for another use: %v, %v", other, err)
	}
}

// A cache may lose anything, or take nothing: the prints are the same.
func TestCacheMayLose(t *testing.T) {
	s := jamSite(t, jpegOf(t, corners(640, 480)))
	want, err := new(Darkroom).all(s.FS, []job{jamJob})
	if err != nil {
		t.Fatal(err)
	}
	cache := new(memory)
	for _, d := range []*Darkroom{{Cache: cache}, {Cache: &memory{full: true}}} {
		prints, err := d.all(s.FS, []job{jamJob})
		if err != nil {
			t.Fatal(err)
		}
		clear(cache.kept)
		for i, p := range prints[0] {
			got, err := d.bytes(s.FS, jamJob, p)
			if err != nil || !bytes.Equal(got, want[0][i].data) {
				t.Errorf("print %d: %d bytes, %v; want %d", i, len(got), err, len(want[0][i].data))
			}
		}
	}
}

// A picture that is exchanged while a site is being published is told of, and
// never published under the other's name.
func TestChangedMeanwhile(t *testing.T) {
	s := jamSite(t, jpegOf(t, corners(64, 48)))
	cache := new(memory)
	d := &Darkroom{Cache: cache}
	prints, err := d.all(s.FS, []job{jamJob})
	if err != nil {
		t.Fatal(err)
	}
	clear(cache.kept)
	other := jamSite(t, jpegOf(t, corners(32, 48)))
	if _, err := d.bytes(other.FS, jamJob, prints[0][0]); err == nil || err.Error() != "the picture jam.jpg was changed while it was being published" {
		t.Errorf("error %v", err)
	}
}

// Nothing that a camera has noted is in a print: SP-07 of the table of
// standards.
func TestPrintsAreBare(t *testing.T) {
	data := segment(jpegOf(t, corners(640, 480)), 0xe1, []byte("Exif\x00\x00at home"))
	data = segment(data, 0xfe, []byte("by Ada"))
	prints, err := develops("JPEG", data, forPages|forSearch|forFeed)
	if err != nil || len(prints) != 9 {
		t.Fatal(len(prints), err)
	}
	for _, p := range prints {
		for _, word := range []string{"Exif", "EXIF", "XMP", "ICC", "home", "Ada"} {
			if bytes.Contains(p.data, []byte(word)) {
				t.Errorf("%s %dx%d holds %q", p.Format, p.Width, p.Height, word)
			}
		}
		img, err := content.ReadImage("x"+string(p.Format), p.data)
		if err != nil || img.Width != p.Width || img.Height != p.Height {
			t.Errorf("%s %dx%d is %v, %v", p.Format, p.Width, p.Height, img, err)
		}
	}
}

// A file that is sound from outside and not within is named; so are all.
func TestBrokenWithin(t *testing.T) {
	data := jpegOf(t, corners(640, 480))
	bad := slices.Clone(data)
	scan := bytes.Index(bad, []byte{0xff, 0xda}) + 14
	for i := scan; i < len(bad)-2; i++ {
		bad[i] = 0x55
	}
	if _, err := content.ReadImage("jam.jpg", bad); err != nil {
		t.Fatalf("from outside: %v", err)
	}
	s := jamSite(t, bad)
	jobs := []job{jamJob, {"again.jpg", jamJob.file, forPages}}
	_, err := new(Darkroom).all(s.FS, jobs)
	broken, ok := err.(BrokenPictures)
	if !ok || len(broken) != 2 || !strings.HasPrefix(broken["jam.jpg"], "jam.jpg is broken within: ") {
		t.Errorf("error %v", err)
	}
}

func TestDarkroomTellsHowFarItIs(t *testing.T) {
	s := jamSite(t, jpegOf(t, corners(64, 48)))
	var told []string
	d := &Darkroom{Progress: func(done, total int) { told = append(told, fmt.Sprint(done, " of ", total)) }}
	if _, err := d.all(s.FS, []job{jamJob, jamJob, jamJob}); err != nil {
		t.Fatal(err)
	}
	if want := []string{"1 of 3", "2 of 3", "3 of 3"}; !slices.Equal(told, want) {
		t.Errorf("told %q", told)
	}
}

// No more is on the bench than it has room for, but for one large picture.
func TestBench(t *testing.T) {
	b := newBench(10)
	var mu sync.Mutex
	var on, most, large int
	var group sync.WaitGroup
	for _, pixels := range []int{4, 4, 25, 4, 9, 25, 1, 4, 10, 3} {
		group.Go(func() {
			b.take(pixels)
			mu.Lock()
			on += pixels
			most = max(most, on)
			if pixels > 10 && on != pixels {
				large++
			}
			mu.Unlock()
			time.Sleep(time.Millisecond)
			mu.Lock()
			on -= pixels
			mu.Unlock()
			b.give(pixels)
		})
	}
	group.Wait()
	if most != 25 || large > 0 || b.taken != 0 {
		t.Errorf("%d at most, %d large ones were not alone, %d left", most, large, b.taken)
	}
}

// What is kept from earlier builds is found by what it was made from and how.
// This is the sum of prints as they are made now; Go's own JPEG writer is not in
// it, since its version is part of the key.
func TestPrintingIsRaised(t *testing.T) {
	m := scale(corners(97, 61), image.Rect(3, 5, 90, 61), 40, 26)
	data, err := asWebP.encode(m)
	if err != nil {
		t.Fatal(err)
	}
	h := sha256.New()
	h.Write(m.Pix)
	h.Write(data)
	fmt.Fprintln(h, printing, pageWidths, shapes, shapeWidth, coverSide, shareWidth, shareHigh, jpegQuality, webpQuality, webpEffort)
	const want = "b8533582011ef8ad"
	if got := hex.EncodeToString(h.Sum(nil)[:8]); got != want {
		t.Errorf("prints have changed: raise printing, and write %s here for %s", got, want)
	}
}

func BenchmarkDarkroom(b *testing.B) {
	data, err := fs.ReadFile(content.Starter, "content/pictures/blackberry-jam.jpg")
	if err != nil {
		b.Fatal(err)
	}
	b.Run("new", func(b *testing.B) {
		for b.Loop() {
			if _, err := develops("JPEG", data, forPages|forSearch); err != nil {
				b.Fatal(err)
			}
		}
	})
	b.Run("kept", func(b *testing.B) {
		fsys := fstest.MapFS{"a.jpg": {Data: data}}
		d := &Darkroom{Cache: new(memory)}
		for b.Loop() {
			if _, err := d.all(fsys, []job{{"a.jpg", "a.jpg", forPages | forSearch}}); err != nil {
				b.Fatal(err)
			}
		}
	})
}
