package build

import (
	"cmp"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"syscall"
	"time"

	"stillroom/build/seal"
)

// An Output is the folder that a site is published into.
type Output struct {
	Dir      string
	Progress func(done, total int) // told of each file; may be nil
}

// Written says what came of writing.
type Written struct {
	Files   int  // of the whole site
	Same    int  // that were there before with the same bytes, and keep their time
	Gone    int  // that were there before and are no more
	OneStep bool // the whole site was put in place at once
	Seal    Seal // of the folder as it is now; zero if somebody else was at it
}

// Write puts a site in place of the one that was published before. It writes
// everything into a folder beside the output and then exchanges the two, so
// that a reader, or a machine that stops, sees either the old site or the new
// one. A file system that cannot exchange folders gets one file after another.
//
// Write replaces nothing that it did not make: if the output holds other
// files, the error names them, and nothing is changed. If somebody puts files
// there while it writes, the earlier site is kept beside the new one, and the
// error names both. After any other error the earlier site is as it was.
func (o Output) Write(files []File) (Written, error) {
	return o.write(files, exchange)
}

// write is Write with a way to exchange two folders.
func (o Output) write(files []File, exchange func(a, b string) error) (Written, error) {
	dir, err := o.place()
	if err != nil {
		return Written{}, err
	}
	release, err := lock(filepath.Dir(dir))
	if err != nil {
		return Written{}, fmt.Errorf("write %s: %w", o.Dir, err)
	}
	defer release()
	old, err := readTree(dir)
	if err != nil {
		return Written{}, err
	}
	next, err := readTree(dir + ".next") // left behind when an earlier run was killed
	if err != nil {
		return Written{}, err
	}
	if err := next.remove(); err != nil {
		return Written{}, fmt.Errorf("clear what an earlier run left: %w", err)
	}
	s := &stage{old: old, dir: next.dir, progress: o.Progress}
	if err := s.fill(files); err != nil {
		next.remove()
		return Written{}, err
	}
	filled := time.Now()
	w := Written{Files: len(files), Same: int(s.same.Load()), Gone: len(old.without(files))}
	w.OneStep, err = install(next.dir, old, files, exchange)
	if err != nil {
		return Written{}, err
	}
	next.made = old.made // after an exchange this is the old site
	if foreign, err := next.foreign(); w.OneStep && err == nil && len(foreign) > 0 {
		return Written{}, fmt.Errorf("%s is published; but meanwhile files were put into the site before it, which is kept as %s for their sake: %s", o.Dir, next.dir, some(foreign))
	}
	next.remove() // a rest is cleared by the next run
	if !w.OneStep {
		filled = time.Now()
	}
	w.Seal, _ = sealed(dir, seal.Look{Began: time.Now(), Since: filled})
	return w, nil
}

// Look says what Write would do, and changes nothing. Both lists are in order.
func (o Output) Look(files []File) (changed, gone []string, err error) {
	dir, err := filepath.EvalSymlinks(o.Dir)
	if err != nil {
		dir = o.Dir // there is none yet
	}
	old, err := readTree(dir)
	if err != nil {
		return nil, nil, err
	}
	differ, errs := make([]bool, len(files)), make([]error, len(files))
	SideBySide(len(files), func(i int) { differ[i], errs[i] = old.differs(files[i]) })
	if err := cmp.Or(errs...); err != nil {
		return nil, nil, err
	}
	for i, f := range files {
		if differ[i] {
			changed = append(changed, f.Path)
		}
	}
	return changed, old.without(files), nil
}

// place makes the folder above the output, and gives the output's own path. A
// link in its place is followed: the site belongs where it points to.
func (o Output) place() (string, error) {
	dir, err := filepath.Abs(o.Dir)
	if err != nil {
		return "", err
	}
	if err := os.MkdirAll(filepath.Dir(dir), 0o777); err != nil {
		return "", fmt.Errorf("make room for %s: %w", o.Dir, err)
	}
	switch real, err := filepath.EvalSymlinks(dir); {
	case err == nil:
		return real, nil
	case !errors.Is(err, fs.ErrNotExist):
		return "", err
	}
	return dir, nil
}

// install puts the finished folder next in place of the old site. It reports
// whether it could do so in one step.
func install(next string, old *tree, files []File, exchange func(a, b string) error) (oneStep bool, err error) {
	syncAll(next)
	defer syncDir(filepath.Dir(old.dir))
	if !old.exists {
		return true, os.Rename(next, old.dir)
	}
	err = exchange(next, old.dir)
	if err != nil && cannotExchange(err) {
		return false, moveIn(next, old, files)
	}
	return err == nil, err
}

// cannotExchange reports whether the file system, and not the folders, stands
// against an exchange: some network disks, a mount point, Windows.
func cannotExchange(err error) bool {
	for _, e := range []error{errors.ErrUnsupported, syscall.EINVAL, syscall.EXDEV, syscall.EPERM, syscall.EBUSY} {
		if errors.Is(err, e) {
			return true
		}
	}
	return false
}
