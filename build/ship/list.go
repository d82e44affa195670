package ship

import (
	"fmt"
	"io/fs"
	"maps"
	"slices"
	"strconv"
	"strings"

	"stillroom/build"
)

// listName is the file that lists what Stillroom has put there. A folder into
// which publish writes has one of the same name, with paths alone.
const listName = build.ListName

// An entry is what is known of a file that was put there. The zero entry is of
// one whose bytes are not known.
type entry struct {
	sum   string // of its bytes and what goes with them, in hex
	size  int64
	stamp string
}

// readList reads a list. It is nil if the text is not one of ours. Whoever can
// write there can write into it, so a path that leads out of the place is none
// of ours.
func readList(text []byte) map[string]entry {
	rest, ours := strings.CutPrefix(string(text), build.ListHead)
	if !ours {
		return nil
	}
	list := make(map[string]entry)
	for line := range strings.Lines(rest) {
		line = strings.TrimRight(line, "\r\n")
		parts := strings.SplitN(line, "\t", 4)
		if at := parts[len(parts)-1]; !fs.ValidPath(at) || at == "." {
			continue
		}
		if len(parts) < 4 {
			list[line] = entry{}
			continue
		}
		size, err := strconv.ParseInt(parts[1], 10, 64)
		if err != nil {
			parts[0] = "" // damaged: the file is sent again
		}
		list[parts[3]] = entry{parts[0], size, parts[2]}
	}
	return list
}

// writeList writes a list, in order of path. A path stands at the end of its
// line, and alone if nothing is known of the file.
func writeList(list map[string]entry) []byte {
	text := []byte(build.ListHead)
	for _, p := range slices.Sorted(maps.Keys(list)) {
		if e := list[p]; e.sum != "" {
			text = fmt.Appendf(text, "%s\t%d\t%s\t", e.sum, e.size, e.stamp)
		}
		text = append(append(text, p...), '\n')
	}
	return text
}
