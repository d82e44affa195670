package content

import (
	"slices"
	"strings"
	"unicode/utf8"
)

// IsDevice reports whether Windows takes a name for a device, whatever its
// ending: there no file of that name can be made (Naming Files, Paths, and
// Namespaces, Microsoft; from memory).
func IsDevice(name string) bool {
	name, _, _ = strings.Cut(strings.ToLower(name), ".")
	name = strings.TrimRight(name, " ")
	port := strings.TrimRight(name, "0123456789¹²³")
	one := utf8.RuneCountInString(name) == 4
	return slices.Contains([]string{"con", "prn", "aux", "nul"}, name) || one && (port == "com" || port == "lpt")
}
