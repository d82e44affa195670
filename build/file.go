package build

import (
	"bytes"
	"fmt"
	"io"
	"io/fs"
	"slices"
	"strings"
	"sync"
)

// A File is a file of the published site. Its bytes are made, or looked up, when
// somebody asks for them, and nobody keeps them: a large site has more of them
// than there is room for.
type File struct {
	Path string // slash-separated, without a stroke at its beginning: recipes/damson-jam/index.html

	// Open gives the bytes, which are the same each time. Several goroutines may
	// call it at once. An error says which file it is about.
	Open func() (io.ReadSeekCloser, error)
}

// NewFile makes a file of bytes, which nobody may change from then on.
func NewFile(path string, data []byte) File {
	return madeLater(path, func() ([]byte, error) { return data, nil })
}

// madeLater is a file of which the bytes are made each time that they are asked
// for.
func madeLater(path string, data func() ([]byte, error)) File {
	return File{path, func() (io.ReadSeekCloser, error) {
		d, err := data()
		return inMemory(d), err
	}}
}

// printed is a file that is printed each time that it is asked for.
func printed(path string, print func(*bytes.Buffer) error) File {
	return File{path, func() (io.ReadSeekCloser, error) {
		b := galleys.Get().(*bytes.Buffer)
		b.Reset()
		err := print(b)
		return galley{memoryReader{bytes.NewReader(b.Bytes())}, b}, err
	}}
}

// A galley is a file in a buffer that may be used again when all have done with
// it, which closing alone does not tell: a request that was given up may read on.
type galley struct {
	memoryReader
	buffer *bytes.Buffer
}

var galleys = sync.Pool{New: func() any { return new(bytes.Buffer) }}

func (g galley) giveBack() { galleys.Put(g.buffer) }

// Bytes gives all the bytes at once.
func (f File) Bytes() ([]byte, error) {
	r, err := f.Open()
	if err != nil {
		return nil, err
	}
	defer r.Close()
	return io.ReadAll(r)
}

// inMemory are bytes to read.
func inMemory(data []byte) io.ReadSeekCloser { return memoryReader{bytes.NewReader(data)} }

type memoryReader struct{ *bytes.Reader }

func (memoryReader) Close() error { return nil }

// openIn opens a file that is too large to be held in memory, unless it can only
// be read from its beginning to its end.
func openIn(fsys fs.FS, name string) (io.ReadSeekCloser, error) {
	file, err := fsys.Open(name)
	if err != nil {
		return nil, err
	}
	if r, ok := file.(io.ReadSeekCloser); ok {
		return r, nil
	}
	defer file.Close()
	data, err := io.ReadAll(file)
	return inMemory(data), err
}

// arrange puts files in order of path. Two files that claim one path are our
// mistake, or a theme's; so are two paths that differ only in their case,
// which many disks take for one.
func arrange(files []File) ([]File, error) {
	files = slices.Clone(files)
	slices.SortFunc(files, func(a, b File) int { return strings.Compare(a.Path, b.Path) })
	seen := make(map[string]string, len(files))
	for _, f := range files {
		folded := strings.ToLower(f.Path)
		if other, ok := seen[folded]; ok {
			return nil, fmt.Errorf("two files of the site would be %s and %s, which is one place", other, f.Path)
		}
		seen[folded] = f.Path
	}
	return files, nil
}
