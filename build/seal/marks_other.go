//go:build !linux && !darwin

package seal

import "io/fs"

// marksOf has nothing to go by: bytes are read.
func marksOf(fs.FileInfo) (m marks, sure bool) { return marks{}, false }
