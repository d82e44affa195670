package content

import (
	"bytes"
	"testing"
)

// Every byte at every place, among the least and the greatest that are plain.
func TestPlainRun(t *testing.T) {
	for _, around := range []string{" ", "~"} {
		for c := range 256 {
			for at := range 16 {
				b := bytes.Repeat([]byte(around), 16)
				b[at] = byte(c)
				want := 16
				if !isPlain(byte(c)) {
					want = at
				}
				if got := plainRun(b); got != want {
					t.Errorf("%q: %d, want %d", b, got, want)
				}
			}
		}
	}
}
