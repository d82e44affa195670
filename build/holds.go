package build

import (
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"time"

	"stillroom/build/seal"
)

// A Seal stands for a published folder and all that is in it at one moment.
type Seal struct {
	Made time.Time
	Sum  string
}

// Holds reports whether the output is as it was when Write gave the seal, and
// another Write of the same files would do nothing. It is false as well when
// that is not certain, as when another run is writing there.
func (o Output) Holds(s Seal) bool {
	dir, err := filepath.EvalSymlinks(o.Dir)
	if err != nil || s.Sum == "" {
		return false
	}
	if dir, err = filepath.Abs(dir); err != nil {
		return false
	}
	release, err := lock(filepath.Dir(dir))
	if err != nil {
		return false
	}
	defer release()
	if _, err := os.Lstat(dir + ".next"); !errors.Is(err, fs.ErrNotExist) {
		return false // an earlier run was killed
	}
	now, err := sealed(dir, seal.Look{Began: s.Made})
	return err == nil && now.Sum == s.Sum
}

func sealed(dir string, l seal.Look) (Seal, error) {
	h := sha256.New()
	if err := l.Folder(h, dir); err != nil {
		return Seal{}, err
	}
	return Seal{Made: l.Began, Sum: hex.EncodeToString(h.Sum(nil))}, nil
}
