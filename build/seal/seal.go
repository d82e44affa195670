// Package seal tells whether files are as they were: what has not changed need
// not be made again.
package seal

import (
	"bufio"
	"encoding/binary"
	"errors"
	"fmt"
	"hash"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"time"
)

// A Look goes over files and puts into a hash all that tells one state of them
// from another. Two looks with the same fields, over files that did not change
// between them, put in the same.
//
// A file is known by its marks: size, mode, number, and the times at which its
// bytes and its marks were last changed. The last of these, which the system
// alone can set, shows a change that keeps size and time. Where a system does
// not tell it, or only roughly, the bytes are read as well.
type Look struct {
	Began time.Time // no later than the look itself; what changed just before it or since is known by its bytes as well
	Small int64     // a file of up to so many bytes is known by them alone, and may be touched, moved and copied
	Since time.Time // if set, a file of which the bytes are newer is an error
	Pass  string    // if not empty, a file that is left out
}

// A clock that files are stamped with may stand still for so long, 10 ms being
// the slowest tick of Linux: CONFIG_HZ in its kernel/Kconfig.hz.
const tick = 20 * time.Millisecond

// Folder puts in a folder with all that is in it, in order of name; one that
// is missing is told from one that is empty. Links and devices are errors,
// since what they stand for may change without a mark here.
func (l Look) Folder(h hash.Hash, dir string) error {
	info, err := os.Stat(dir)
	if errors.Is(err, fs.ErrNotExist) {
		io.WriteString(h, "none\n")
		return nil
	}
	if err != nil {
		return err
	}
	w := bufio.NewWriterSize(h, 32<<10)
	return errors.Join(l.folder(w, dir, info), w.Flush())
}

func (l Look) folder(w *bufio.Writer, dir string, info fs.FileInfo) error {
	entries, err := os.ReadDir(dir)
	if err != nil {
		return err
	}
	number(w, int64(info.Mode()))
	for _, e := range entries {
		name := filepath.Join(dir, e.Name())
		if name == l.Pass {
			continue
		}
		w.WriteString(e.Name())
		w.WriteByte(0)
		info, err := e.Info()
		if err != nil {
			return err
		}
		if info.IsDir() {
			err = l.folder(w, name, info)
		} else {
			err = l.file(w, name, info)
		}
		if err != nil {
			return err
		}
	}
	return w.WriteByte('/') // no name begins with it
}

// File puts in one file, which may be a link.
func (l Look) File(h hash.Hash, name string) error {
	info, err := os.Stat(name)
	if err != nil {
		return err
	}
	w := bufio.NewWriter(h)
	return errors.Join(l.file(w, name, info), w.Flush())
}

func (l Look) file(w *bufio.Writer, name string, info fs.FileInfo) error {
	if !info.Mode().IsRegular() {
		return fmt.Errorf("%s is no plain file", name)
	}
	if !l.Since.IsZero() && info.ModTime().After(l.Since) {
		return changed(name)
	}
	if info.Size() <= l.Small {
		return bytesOf(w, name, info.Size())
	}
	m, sure := marksOf(info)
	number(w, info.Size(), int64(info.Mode()), info.ModTime().UnixNano(), m.changed, m.number, m.disk)
	if sure && m.changed < l.Began.Add(-tick).UnixNano() {
		return nil
	}
	return bytesOf(w, name, info.Size())
}

// marks are what a system tells of a file beside what all do.
type marks struct {
	changed      int64 // when anything of it was changed, in nanoseconds since 1970
	number, disk int64 // which file it is
}

// fine reports whether a time was noted closely enough to tell by. Some disks
// keep seconds or hundredths: those of FAT and exFAT do.
func fine(nanoseconds int64) bool { return nanoseconds%int64(10*time.Millisecond) != 0 }

func number(w *bufio.Writer, values ...int64) {
	for _, v := range values {
		w.Write(binary.AppendVarint(w.AvailableBuffer(), v))
	}
}

// bytesOf puts in how many bytes a file has, so that no two files in a row can
// pass for two others, and the bytes.
func bytesOf(w *bufio.Writer, name string, size int64) error {
	f, err := os.Open(name)
	if err != nil {
		return err
	}
	defer f.Close()
	number(w, size)
	n, err := io.Copy(w, f)
	if err == nil && n != size {
		err = changed(name)
	}
	return err
}

func changed(name string) error { return fmt.Errorf("%s was changed meanwhile", name) }
