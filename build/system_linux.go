package build

import (
	"os"

	"golang.org/x/sys/unix"
)

// exchange swaps two folders in one step, so that neither name is ever
// missing.
func exchange(a, b string) error {
	return unix.Renameat2(unix.AT_FDCWD, a, unix.AT_FDCWD, b, unix.RENAME_EXCHANGE)
}

// syncAll has the disk keep all that was written to the file system of dir. One
// call costs as much as a hundred for single files. Where it fails, nothing
// can be done: the site is right, and safe once the system has written it.
func syncAll(dir string) {
	if d, err := os.Open(dir); err == nil {
		unix.Syncfs(int(d.Fd()))
		d.Close()
	}
}
