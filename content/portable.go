package content

import (
	"fmt"
	"strings"
)

// longestName is the most bytes that a name in a folder has on the usual disks
// of every system.
const longestName = 255

// unportable tells as a clause why some system on which the site may be made or
// kept can hold no file or folder of a name; nothing if all can. What Windows
// allows is from Naming Files, Paths, and Namespaces, Microsoft; from memory.
func unportable(name string) string {
	switch {
	case IsDevice(name):
		return "holds a name that Windows keeps for itself"
	case strings.ContainsAny(name, `<>:"\|?*`):
		return `holds one of < > : " \ | ? *, which no name on Windows does`
	case strings.HasSuffix(name, ".") || strings.HasSuffix(name, " "):
		return "has a name that ends with a point or a space, which Windows takes away"
	case len(name) > longestName:
		return fmt.Sprintf("holds a name of more than %d bytes, which no disk does", longestName)
	}
	return ""
}
