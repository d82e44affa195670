package ship

import (
	"context"
	"io"
)

// A place holds files under slash-separated paths. Each of its methods may be
// tried again after an error, and several may run at once.
type place interface {
	// list gives what is there, by path. Of a folder for which within is false,
	// only the folder may be given.
	list(ctx context.Context, within func(dir string) bool) (map[string]found, error)

	// read gives a small file. The error is fs.ErrNotExist if there is none.
	read(ctx context.Context, path string) ([]byte, error)

	// put puts a file there in one step: whoever asks for it gets the old one
	// or the new one. It gives the stamp that list will give.
	put(ctx context.Context, path string, body io.Reader, size int64) (stamp string, err error)

	// remove removes a file, and folders that are empty without it. It is no
	// error if there is none.
	remove(ctx context.Context, path string) error

	// tidy removes what tries that failed have left.
	tidy(ctx context.Context) error

	// claim puts a file there if what is there is still what was seen, or if
	// nothing was and nothing is. It reports whether it did.
	claim(ctx context.Context, path string, data, seen []byte) (bool, error)

	// label says what goes with a file besides its bytes.
	label(path string) string

	// passing reports whether an error may go away by itself.
	passing(err error) bool

	// explain says what an error means, and what to do about it.
	explain(err error) error

	close()
}

// found is what stands at a path.
type found struct {
	kind  kind
	size  int64
	stamp string // differs when the file was written anew
}

// A kind is what sort of thing stands at a path.
type kind byte

const (
	file kind = iota
	folder
	link // or something odder
)
