package ship

import (
	"crypto/rand"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"os"
	"path/filepath"
)

// errBusy says that a seat is taken.
var errBusy = errors.New("another run on this machine is sending a site there; try again when it is done")

// TakeSeat takes the seat from which this machine sends to an address, in a
// folder for such things. As long as it is held no other run on this machine
// has it; so a lock at the other end that bears its name was left behind by a
// run that is dead, and need not be waited for. Where there can be no seat, its
// name is empty.
func TakeSeat(folder string, to Address) (name string, leave func(), err error) {
	nobody := func() {}
	sum := sha256.Sum256([]byte(to.String()))
	if os.MkdirAll(folder, 0o700) != nil {
		return "", nobody, nil
	}
	f, err := os.OpenFile(filepath.Join(folder, hex.EncodeToString(sum[:8])), os.O_RDWR|os.O_CREATE, 0o600)
	if err != nil {
		return "", nobody, nil
	}
	switch free, known := lockFile(f); {
	case !known:
		f.Close()
		return "", nobody, nil
	case !free:
		f.Close()
		return "", nobody, fmt.Errorf("%s: %w", to, errBusy)
	}
	text := make([]byte, 26)
	n, _ := f.ReadAt(text, 0)
	if n < len(text) {
		copy(text, rand.Text())
		if _, err := f.WriteAt(text, 0); err != nil {
			f.Close()
			return "", nobody, nil
		}
	}
	return string(text), func() { f.Close() }, nil
}
