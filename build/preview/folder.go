package preview

import (
	"io/fs"
	"os"
)

// A Folder is the file system below a folder of the disk, or of whatever stands
// under its name by then. It holds nothing that a link within leads out of it
// to.
type Folder string

func (f Folder) in(do func(*os.Root) error) error {
	r, err := os.OpenRoot(string(f))
	if err != nil {
		return err
	}
	defer r.Close()
	return do(r)
}

// Open opens a file to be read.
func (f Folder) Open(name string) (file fs.File, err error) {
	err = f.in(func(r *os.Root) (err error) {
		file, err = r.FS().Open(name)
		return err
	})
	return file, err
}

// ReadFile gives a file's bytes.
func (f Folder) ReadFile(name string) (data []byte, err error) {
	err = f.in(func(r *os.Root) (err error) {
		data, err = fs.ReadFile(r.FS(), name)
		return err
	})
	return data, err
}

// Stat describes a file, or the one that a link leads to.
func (f Folder) Stat(name string) (info fs.FileInfo, err error) {
	err = f.in(func(r *os.Root) (err error) {
		info, err = fs.Stat(r.FS(), name)
		return err
	})
	return info, err
}

// Lstat describes a file or a link.
func (f Folder) Lstat(name string) (info fs.FileInfo, err error) {
	err = f.in(func(r *os.Root) (err error) {
		info, err = fs.Lstat(r.FS(), name)
		return err
	})
	return info, err
}

// ReadLink gives what a link leads to.
func (f Folder) ReadLink(name string) (target string, err error) {
	err = f.in(func(r *os.Root) (err error) {
		target, err = fs.ReadLink(r.FS(), name)
		return err
	})
	return target, err
}
