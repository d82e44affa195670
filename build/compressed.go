package build

import (
	"bytes"
	"cmp"
	"compress/gzip"
	"io"
	"path"
	"slices"
	"strings"
	"sync"

	"github.com/andybalholm/brotli"
)

// Copies smaller than this are not worth a second file.
const leastCompressed = 1 << 10

// Text compresses well. Pictures, recordings and typefaces are compressed as
// they are.
var compressible = []string{".html", ".htm", ".css", ".js", ".json", ".xml", ".svg", ".txt", ".vtt", ".srt", ".webmanifest", ".atom"}

// compressedFrom gives the path of which a path is a compressed copy, and the
// content coding by its name in HTTP; the path itself if it is none.
func compressedFrom(p string) (original, coding string) {
	for ending, coding := range map[string]string{".gz": "gzip", ".br": "br"} {
		if original, ok := strings.CutSuffix(p, ending); ok && slices.Contains(compressible, path.Ext(original)) {
			return original, coding
		}
	}
	return p, ""
}

// Compressed gives a site with a gzip and a brotli copy beside each text, for
// servers that hand out such copies: style.css.gz and style.css.br beside
// style.css. A copy that would save nothing is left out, for which every text is
// made once. Files that are in order of path stay so.
func Compressed(files []File) ([]File, error) {
	c := newCompressor()
	worth, errs := make([]bool, len(files)), make([]error, len(files))
	SideBySide(len(files), func(i int) { worth[i], errs[i] = c.worthCopying(files[i]) })
	if err := cmp.Or(errs...); err != nil {
		return nil, err
	}
	var all []File
	for i, f := range files {
		if worth[i] {
			all = append(all, c.withCopies(f)...)
		} else {
			all = append(all, f)
		}
	}
	return arrange(all)
}

// A compressor keeps its writers, which are large, and the last few texts: a
// text and its copies are wanted in a row.
type compressor struct {
	letters, gzip, quick, thick sync.Pool
	texts                       lately[string, []byte]
}

func newCompressor() *compressor {
	return &compressor{
		letters: sync.Pool{New: func() any { return newGzip(gzip.HuffmanOnly) }},
		gzip:    sync.Pool{New: func() any { return newGzip(gzip.BestCompression) }},
		quick:   sync.Pool{New: func() any { return brotli.NewWriterLevel(nil, 5) }},
		thick:   sync.Pool{New: func() any { return brotli.NewWriterLevel(nil, brotli.BestCompression) }},
	}
}

func newGzip(level int) *gzip.Writer {
	w, err := gzip.NewWriterLevel(nil, level)
	if err != nil {
		panic(err) // there is such a level
	}
	return w
}

// worthCopying reports whether a file is a text that gets smaller. Short codes
// for frequent letters are the least that any way of compressing does, and take
// little time.
func (c *compressor) worthCopying(f File) (bool, error) {
	if !slices.Contains(compressible, strings.ToLower(path.Ext(f.Path))) {
		return false, nil
	}
	text, err := f.Bytes()
	return len(text) >= leastCompressed && len(compress(text, &c.letters)) < len(text), err
}

// withCopies gives a file and its copies. The thickest brotli takes a hundred
// times as long as a page does, so it is for assets, which seldom change.
func (c *compressor) withCopies(f File) []File {
	br := &c.quick
	if strings.HasPrefix(f.Path, "assets/") {
		br = &c.thick
	}
	text := func() ([]byte, error) { return c.texts.of(f.Path, f.Bytes) }
	by := func(writers *sync.Pool) func() ([]byte, error) {
		return func() ([]byte, error) {
			data, err := text()
			return compress(data, writers), err
		}
	}
	return []File{madeLater(f.Path, text), madeLater(f.Path+".br", by(br)), madeLater(f.Path+".gz", by(&c.gzip))}
}

func compress(data []byte, writers *sync.Pool) []byte {
	w := writers.Get().(interface {
		io.WriteCloser
		Reset(io.Writer)
	})
	defer writers.Put(w)
	var out bytes.Buffer
	w.Reset(&out)
	w.Write(data)
	w.Close() // into memory, which does not fail
	return out.Bytes()
}
