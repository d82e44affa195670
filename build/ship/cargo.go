package ship

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"io"

	"stillroom/build"
)

// A parcel is a file of the site, measured.
type parcel struct {
	build.File
	size int64
	sum  string
}

// measure takes the size and the sum of every file. What goes with a file is
// part of its sum: if that changes, the file is sent again.
func measure(files []build.File, label func(string) string) ([]parcel, error) {
	parcels := make([]parcel, len(files))
	errs := make([]error, len(files))
	build.SideBySide(len(files), func(i int) { parcels[i], errs[i] = measureOne(files[i], label(files[i].Path)) })
	for i, err := range errs {
		if err != nil {
			return nil, fmt.Errorf("read %s: %w", files[i].Path, err)
		}
	}
	return parcels, nil
}

func measureOne(f build.File, label string) (parcel, error) {
	r, err := f.Open()
	if err != nil {
		return parcel{}, err
	}
	defer r.Close()
	h := sha256.New()
	io.WriteString(h, label)
	n, err := io.Copy(h, r)
	return parcel{f, n, hex.EncodeToString(h.Sum(nil))}, err
}
