//go:build unix && !solaris && !illumos && !aix

package build

import (
	"errors"
	"os"

	"golang.org/x/sys/unix"
)

// lock keeps a second run from writing beside the same output. The system
// gives the lock up when the program ends, however it ends.
func lock(dir string) (release func(), err error) {
	d, err := os.Open(dir)
	if err != nil {
		return func() {}, nil // a folder may be written to and not read
	}
	if err := unix.Flock(int(d.Fd()), unix.LOCK_EX|unix.LOCK_NB); errors.Is(err, unix.EWOULDBLOCK) {
		d.Close()
		return nil, errors.New("another run is writing there; try again when it is done")
	}
	return func() { d.Close() }, nil // some network disks know no locks
}

// syncDir has the disk keep the names in a folder.
func syncDir(dir string) {
	if d, err := os.Open(dir); err == nil {
		d.Sync()
		d.Close()
	}
}
