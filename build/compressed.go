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
// style.css. A copy that would save nothing is left out. Files that are in
// order of path stay so.
func Compressed(files []File) ([]File, error) {
	copies := make([][]File, len(files))
	errs := make([]error, len(files))
	compressors := sync.Pool{New: func() any { return newCompressor() }}
	SideBySide(len(files), func(i int) {
		if !slices.Contains(compressible, strings.ToLower(path.Ext(files[i].Path))) {
			return
		}
		c := compressors.Get().(*compressor)
		copies[i], errs[i] = c.copies(files[i])
		compressors.Put(c)
	})
	if err := cmp.Or(errs...); err != nil {
		return nil, err
	}
	return arrange(append(slices.Concat(copies...), files...))
}

// A compressor keeps its writers: they are large.
type compressor struct {
	gzip         *gzip.Writer
	quick, thick *brotli.Writer
}

func newCompressor() *compressor {
	zip, err := gzip.NewWriterLevel(nil, gzip.BestCompression)
	if err != nil {
		panic(err) // there is such a level
	}
	return &compressor{zip, brotli.NewWriterLevel(nil, 5), brotli.NewWriterLevel(nil, brotli.BestCompression)}
}

// copies compresses one file. The thickest brotli takes a hundred times as long
// as a page does, so it is for assets, which seldom change.
func (c *compressor) copies(f File) ([]File, error) {
	r, err := f.Reader()
	if err != nil {
		return nil, err
	}
	defer r.Close()
	data, err := io.ReadAll(r)
	if err != nil || len(data) < leastCompressed {
		return nil, err
	}
	br := c.quick
	if strings.HasPrefix(f.Path, "assets/") {
		br = c.thick
	}
	var copies []File
	for _, way := range []struct {
		ending string
		w      interface {
			io.WriteCloser
			Reset(io.Writer)
		}
	}{{".br", br}, {".gz", c.gzip}} {
		var out bytes.Buffer
		way.w.Reset(&out)
		way.w.Write(data)
		way.w.Close() // into memory, which does not fail
		if out.Len() < len(data) {
			copies = append(copies, File{Path: f.Path + way.ending, Data: out.Bytes()})
		}
	}
	return copies, nil
}
