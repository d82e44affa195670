//go:build linux || darwin

package seal

import (
	"io/fs"
	"syscall"
)

// marksOf gives the marks of a file: stat(2). It reports whether they are all
// there.
func marksOf(info fs.FileInfo) (m marks, sure bool) {
	s, ok := info.Sys().(*syscall.Stat_t)
	if !ok {
		return marks{}, false
	}
	m = marks{changed: changedAt(s), number: int64(s.Ino), disk: int64(s.Dev)}
	return m, fine(m.changed)
}
