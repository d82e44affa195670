//go:build unix && !solaris && !illumos && !aix

package ship

import (
	"errors"
	"os"

	"golang.org/x/sys/unix"
)

// lockFile locks a file until it is closed or the program ends, however it
// ends. It is not known whether it is free on a disk that knows no locks.
func lockFile(f *os.File) (free, known bool) {
	err := unix.Flock(int(f.Fd()), unix.LOCK_EX|unix.LOCK_NB)
	taken := errors.Is(err, unix.EWOULDBLOCK)
	return err == nil, err == nil || taken
}
