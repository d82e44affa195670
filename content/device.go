package content

import (
	"slices"
	"strings"
)

// IsDevice reports whether Windows takes a name for a device, whatever its
// ending: there no file of that name can be made (Naming Files, Paths, and
// Namespaces, Microsoft; from memory).
func IsDevice(name string) bool {
	name, _, _ = strings.Cut(strings.ToLower(name), ".")
	port := strings.TrimRight(name, "0123456789")
	return slices.Contains([]string{"con", "prn", "aux", "nul"}, name) || len(name) == 4 && (port == "com" || port == "lpt")
}
