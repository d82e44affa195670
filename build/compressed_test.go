package build

import (
	"bytes"
	"compress/gzip"
	"io"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"github.com/andybalholm/brotli"
)

// HC-04, HC-07 and HC-08 of the table of standards: copies of texts only, none
// of what is small or would not get smaller, the same bytes each time, and from
// each the very text again.
func TestCompressed(t *testing.T) {
	files := published(t)
	all, err := Compressed(files)
	if err != nil {
		t.Fatal(err)
	}
	again, err := Compressed(files)
	if err != nil {
		t.Fatal(err)
	}
	plain := make(map[string][]byte)
	for _, f := range files {
		plain[f.Path] = bytesOf(t, f)
	}
	copies, smaller := 0, 0
	for i, f := range all {
		if again[i].Path != f.Path || !bytes.Equal(bytesOf(t, again[i]), bytesOf(t, f)) {
			t.Errorf("%s: other bytes the second time", f.Path)
		}
		original, coding := compressedFrom(f.Path)
		if coding == "" {
			continue
		}
		copies++
		smaller += len(plain[original]) - len(bytesOf(t, f))
		if got := opened(t, coding, bytesOf(t, f)); !bytes.Equal(got, plain[original]) || len(bytesOf(t, f)) >= len(got) || len(got) < 1024 {
			t.Errorf("%s: %d bytes become %d, of %d", f.Path, len(bytesOf(t, f)), len(got), len(plain[original]))
		}
		if slices.ContainsFunc([]string{".jpg", ".webp", ".mp3", ".woff2"}, func(e string) bool { return strings.Contains(f.Path, e) }) {
			t.Errorf("%s: a copy of what is compressed as it is", f.Path)
		}
	}
	if len(all) != len(files)+copies || copies < 20 {
		t.Errorf("%d files and %d copies make %d", len(files), copies, len(all))
	}
	t.Logf("%d copies, smaller by %d bytes in all", copies, smaller)
}

func opened(t *testing.T, coding string, data []byte) []byte {
	t.Helper()
	var r io.Reader = brotli.NewReader(bytes.NewReader(data))
	if coding == "gzip" {
		zip, err := gzip.NewReader(bytes.NewReader(data))
		if err != nil {
			t.Fatal(err)
		}
		if !zip.ModTime.IsZero() || zip.Name != "" {
			t.Errorf("the copy holds a name or a time: %+v", zip.Header)
		}
		r = zip
	}
	text, err := io.ReadAll(r)
	if err != nil {
		t.Fatal(err)
	}
	return text
}

// A small text, a picture of any size, and what would not get smaller stand
// alone.
func TestNotCompressed(t *testing.T) {
	noise := make([]byte, 9999)
	rand.NewChaCha8([32]byte{7}).Read(noise)
	files := []File{
		NewFile("a.css", bytes.Repeat([]byte("a"), leastCompressed-1)),
		NewFile("b.jpg", bytes.Repeat([]byte("b"), 9999)),
		NewFile("c.txt", noise),
	}
	if all, err := Compressed(files); err != nil || len(all) != len(files) {
		t.Errorf("Compressed gives %d files, %v", len(all), err)
	}
}
