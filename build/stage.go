package build

import (
	"bytes"
	"cmp"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"sync"
	"sync/atomic"
)

// A stage is the folder in which a site is made ready.
type stage struct {
	old      *tree // what is published now
	dir      string
	progress func(done, total int)
	same     atomic.Int64
	done     int
	mu       sync.Mutex // guards done and calls of progress
}

// fill writes a site into the folder, the list of its files first.
func (s *stage) fill(files []File) error {
	paths := make([]string, len(files))
	for i, f := range files {
		if !filepath.IsLocal(filepath.FromSlash(f.Path)) || f.Path == ListName {
			return fmt.Errorf("%s cannot be the path of a published file", f.Path)
		}
		paths[i] = f.Path
	}
	if err := s.makeFolder(); err != nil {
		return err
	}
	if err := writeSynced(filepath.Join(s.dir, ListName), manifest(paths)); err != nil {
		return err
	}
	if err := s.makeFolders(paths); err != nil {
		return err
	}
	return s.putAll(files)
}

// makeFolder makes the folder itself, with the mode of the one that it will
// stand in for: the author may share that with a group.
func (s *stage) makeFolder() error {
	if err := os.Mkdir(s.dir, 0o777); err != nil {
		return err
	}
	info, err := os.Stat(s.old.dir)
	if err != nil {
		return nil // there is none yet
	}
	return os.Chmod(s.dir, info.Mode()&(fs.ModePerm|fs.ModeSetgid|fs.ModeSticky))
}

func writeSynced(name string, data []byte) error {
	f, err := os.Create(name)
	if err != nil {
		return err
	}
	_, err = f.Write(data)
	return errors.Join(err, f.Sync(), f.Close())
}

func (s *stage) makeFolders(paths []string) error {
	made := map[string]bool{".": true} // the stage itself, which was empty
	var folder func(p string) error
	folder = func(p string) error {
		if made[p] {
			return nil
		}
		made[p] = true
		if err := folder(path.Dir(p)); err != nil {
			return err
		}
		err := os.Mkdir(filepath.Join(s.dir, filepath.FromSlash(p)), 0o777)
		if errors.Is(err, fs.ErrExist) {
			return nil // two names may be one to a disk
		}
		return err
	}
	for _, p := range paths {
		if err := folder(path.Dir(p)); err != nil {
			return err
		}
	}
	return nil
}

// inARow is how many files that lie side by side one processor writes: a recipe's
// are made of the same.
const inARow = 8

// putAll writes the files on every processor. After an error none is begun, and
// those that are finish: so it is always that of the first file in order.
func (s *stage) putAll(files []File) error {
	rows := slices.Collect(slices.Chunk(files, inARow))
	errs := make([]error, len(rows))
	var failed atomic.Bool
	SideBySide(len(rows), func(i int) {
		if failed.Load() {
			return
		}
		if errs[i] = s.putRow(rows[i], len(files)); errs[i] != nil {
			failed.Store(true)
		}
	})
	return cmp.Or(errs...)
}

func (s *stage) putRow(files []File, total int) error {
	for _, f := range files {
		if err := s.make(f); err != nil {
			return err
		}
		s.mu.Lock()
		s.done++
		if s.progress != nil {
			s.progress(s.done, total)
		}
		s.mu.Unlock()
	}
	return nil
}

// make makes one file, which is let go when it is written.
func (s *stage) make(f File) error {
	r, err := f.Open()
	if err != nil {
		return err
	}
	defer r.Close()
	if err := s.put(f.Path, r); err != nil {
		return fmt.Errorf("write %s: %w", f.Path, err)
	}
	if g, ok := r.(galley); ok {
		g.giveBack()
	}
	return nil
}

// put writes one file. One that has not changed is linked to the file of the
// old site, and keeps its time: servers go by it when they are asked for what
// is new.
func (s *stage) put(path string, r io.ReadSeeker) error {
	name := filepath.FromSlash(path)
	if s.old.made[path] && unchanged(filepath.Join(s.old.dir, name), r) {
		if os.Link(filepath.Join(s.old.dir, name), filepath.Join(s.dir, name)) == nil {
			s.same.Add(1)
			return nil
		}
	}
	if _, err := r.Seek(0, io.SeekStart); err != nil {
		return err
	}
	// A linked file must never be written into, so this one may not exist yet.
	w, err := os.OpenFile(filepath.Join(s.dir, name), os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o666)
	if err != nil {
		return err
	}
	_, err = io.Copy(w, r)
	return errors.Join(err, w.Close())
}

// unchanged reports whether the file of that name has the bytes of a reader.
func unchanged(name string, r io.Reader) bool {
	old, err := os.Open(name)
	if err != nil {
		return false
	}
	defer old.Close()
	return sameBytes(old, r)
}

func sameBytes(a, b io.Reader) bool {
	bufA, bufB := make([]byte, 16<<10), make([]byte, 16<<10)
	for {
		n, errA := io.ReadFull(a, bufA)
		m, errB := io.ReadFull(b, bufB)
		if !bytes.Equal(bufA[:n], bufB[:m]) {
			return false
		}
		if errA != nil || errB != nil {
			return ended(errA) && ended(errB)
		}
	}
}

// ended reports whether a reading came to the end of what there was.
func ended(err error) bool { return err == io.EOF || err == io.ErrUnexpectedEOF }
