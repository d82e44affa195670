package seal

import "syscall"

// changedAt gives when anything of a file was changed, in nanoseconds since 1970.
func changedAt(s *syscall.Stat_t) int64 { return s.Ctim.Nano() }
