package preview

import (
	"bytes"
	"image"
	"image/png"
	"io"
	"io/fs"
	"net/http"
	"net/http/httptest"
	"regexp"
	"strings"
	"sync"
	"syscall"
	"testing"
	"testing/fstest"
)

// A fickle disk lists its files, and then fails to read some of them: one that
// another program has taken away in between, or that lies on a bad block.
type fickle struct {
	fstest.MapFS
	mu    sync.Mutex
	opens map[string]error // what comes of opening a file
	reads map[string]error // what comes of reading it, after its first bytes
}

func (f *fickle) set(of map[string]error, name string, err error) {
	f.mu.Lock()
	defer f.mu.Unlock()
	of[name] = err
}

// put writes a file anew, while others may be read.
func (f *fickle) put(name string, data []byte) {
	f.mu.Lock()
	defer f.mu.Unlock()
	f.MapFS[name] = &fstest.MapFile{Data: data}
}

func (f *fickle) Stat(name string) (fs.FileInfo, error) {
	f.mu.Lock()
	defer f.mu.Unlock()
	return f.MapFS.Stat(name)
}

func (f *fickle) ReadDir(name string) ([]fs.DirEntry, error) {
	f.mu.Lock()
	defer f.mu.Unlock()
	return f.MapFS.ReadDir(name)
}

func (f *fickle) Open(name string) (fs.File, error) {
	f.mu.Lock()
	defer f.mu.Unlock()
	if err := f.opens[name]; err != nil {
		return nil, &fs.PathError{Op: "open", Path: name, Err: err}
	}
	file, err := f.MapFS.Open(name)
	if bad := f.reads[name]; err == nil && bad != nil {
		return torn{file, &fs.PathError{Op: "read", Path: name, Err: bad}}, nil
	}
	return file, err
}

// ReadFile reads as a disk does, block by block.
func (f *fickle) ReadFile(name string) ([]byte, error) {
	file, err := f.Open(name)
	if err != nil {
		return nil, err
	}
	defer file.Close()
	return io.ReadAll(file)
}

// Sub keeps a folder of the disk as fickle as the disk.
func (f *fickle) Sub(dir string) (fs.FS, error) { return fs.Sub(struct{ fs.ReadFileFS }{f}, dir) }

// A torn file cannot be read to its end.
type torn struct {
	fs.File
	err error
}

func (t torn) Read(b []byte) (int, error) {
	n, err := t.File.Read(b[:min(len(b), 10)])
	if err == nil {
		err = t.err
	}
	return n, err
}

// openFickle opens the preview of a site with a picture and a recording.
func openFickle(t *testing.T) (*Preview, *fickle) {
	t.Helper()
	var picture bytes.Buffer
	if err := png.Encode(&picture, image.NewRGBA(image.Rect(0, 0, 800, 600))); err != nil {
		t.Fatal(err)
	}
	f := &fickle{opens: make(map[string]error), reads: make(map[string]error), MapFS: fstest.MapFS{
		"content/site.yaml":                   {Data: []byte("name: Ada's Larder\nauthor: Ada Sloe\n")},
		plumFile:                              {Data: []byte(strings.Replace(plum, "kind:", "picture: {file: plum.png, alt: A jar}\nkind:", 1))},
		"content/pictures/plum.png":           {Data: picture.Bytes()},
		"themes/enamel/files/own.css":         {Data: []byte("p{}")},
		"content/episodes/one.md":             {Data: []byte("---\nname: One\nnumber: 1\npublished: 2026-08-01\nsummary: Plums.\naudio: {file: one.mp3}\n---\nHello.\n")},
		"content/episodes/one.mp3":            {Data: bytes.Repeat([]byte("x"), 5000)},
		"content/recipes/another/pear-jam.md": {Data: []byte(plum)},
	}}
	p := New(f, today, nil)
	if err := p.Open(nil); err != nil {
		t.Fatal(err)
	}
	return p, f
}

// A text that vanishes or fails while it is read stays as it was; that it fails
// is told. When it can be read again, all is as before.
func TestTextVanishesWhileRead(t *testing.T) {
	p, f := openFickle(t)
	before := page(t, p, plumPage)
	f.put(plumFile, bytes.Replace(f.MapFS[plumFile].Data, []byte("Plum jam"), []byte("Plum cheese"), 1))
	f.set(f.opens, plumFile, fs.ErrNotExist)
	if unsure := p.Change([]string{plumFile}, false); len(unsure) != 1 || page(t, p, plumPage) != before {
		t.Errorf("vanished while it was read: unsure of %v", unsure)
	}
	f.set(f.opens, plumFile, nil)
	f.set(f.reads, plumFile, syscall.EIO)
	p.Change([]string{plumFile}, true)
	want := Trouble{plumFile, "cannot be read: " + syscall.EIO.Error()}
	if s := p.now.Load(); len(s.troubles) != 1 || s.troubles[0] != want || !strings.Contains(page(t, p, plumPage), "Plum jam") {
		t.Errorf("trouble: %v", s.troubles)
	}
	f.set(f.reads, plumFile, nil)
	p.Change([]string{plumFile}, false)
	if s := p.now.Load(); len(s.troubles) != 0 || !strings.Contains(page(t, p, plumPage), "Plum cheese") {
		t.Errorf("the end of it: trouble: %v", s.troubles)
	}
}

// A text that cannot be read when the preview begins is told of, and read as
// soon as it can be.
func TestTextFailsAtFirst(t *testing.T) {
	_, f := openFickle(t)
	f.set(f.reads, plumFile, syscall.EIO)
	p := New(f, today, nil)
	if err := p.Open(nil); err != nil {
		t.Fatal(err)
	}
	if s := p.now.Load(); len(s.troubles) != 1 || s.troubles[0].File != plumFile {
		t.Errorf("trouble: %v", s.troubles)
	}
	f.set(f.reads, plumFile, nil)
	p.again()
	if s := p.now.Load(); len(s.troubles) != 0 || !strings.Contains(page(t, p, plumPage), "Plum jam") {
		t.Errorf("the end of it: trouble: %v", s.troubles)
	}
}

// A picture or a recording that vanishes before it is fetched gives an answer
// that says so, and the pages that show it stand.
func TestMediaVanish(t *testing.T) {
	p, f := openFickle(t)
	get := func(address string) (int, string) {
		t.Helper()
		r := httptest.NewRequest(http.MethodGet, "http://localhost"+address, nil)
		w := httptest.NewRecorder()
		p.Handler(Hosts{}).ServeHTTP(w, r)
		return w.Code, w.Body.String()
	}
	f.set(f.opens, "content/pictures/plum.png", fs.ErrNotExist)
	p.show() // pages are made anew
	if code, body := get(plumPage); code != http.StatusOK || !strings.Contains(body, "<h1>Plum jam") {
		t.Errorf("without its picture the page is %d\n%s", code, body)
	}
	_, episode := get("/show-notes/one/")
	recording := regexp.MustCompile(`/[^"\s>]*\.mp3`).FindString(episode)
	f.set(f.opens, "content/episodes/one.mp3", fs.ErrNotExist)
	if code, body := get(recording); code != http.StatusInternalServerError || !strings.Contains(body, "This file cannot be read: ") {
		t.Errorf("a recording that is gone: %s is %d, %s", recording, code, body)
	}
	f.set(f.opens, "content/episodes/one.mp3", nil)
	if code, body := get(recording); code != http.StatusOK || len(body) != 5000 {
		t.Errorf("a recording that is back: %d, %d bytes", code, len(body))
	}
}

// A theme of which a file cannot be read is told of, and worn as it was.
func TestThemeFails(t *testing.T) {
	p, f := openFickle(t)
	f.put("themes/enamel/files/own.css", []byte("p{color:red}"))
	f.set(f.reads, "themes/enamel/files/own.css", syscall.EIO)
	p.Change([]string{"themes/enamel/files/own.css"}, false)
	if s := p.now.Load(); len(s.troubles) != 1 || !strings.Contains(s.troubles[0].Text, syscall.EIO.Error()) || s.proofs.Asset("own.css") == "" {
		t.Errorf("trouble: %v", s.troubles)
	}
	f.set(f.reads, "themes/enamel/files/own.css", nil)
	p.again() // nothing is told of a disk that is sound again
	if s := p.now.Load(); len(s.troubles) != 0 {
		t.Errorf("the end of it: trouble: %v", s.troubles)
	}
}
