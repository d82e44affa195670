package content

import (
	"bytes"
	"cmp"
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"
)

// GUIDsFile is where a site remembers by what guid each of its episodes was
// published, and its programme, which goes by the name of the settings. It is
// text, a line for each:
//
//	content/episodes/a-crock-in-october.md: 0cdf1f80-5b16-4407-8085-bfa1e47753e3
//
// in order of file, so that two people's additions come together by themselves.
// A line that begins with # is for people.
const GUIDsFile = "content/guids.txt"

// FeedBegan is what the address goes by in the list at which the feed of
// recipes was first published.
const FeedBegan = "content/recipes"

// GUIDs are guids by the file that they were published for.
type GUIDs map[string]Field[string]

// guids reads the site's own list; an empty one if there is none yet.
func (w *walk) guids() (GUIDs, []Fault, error) {
	if !w.has(GUIDsFile) {
		return make(GUIDs), nil, nil
	}
	data, err := readText(w.fsys, GUIDsFile)
	if err != nil {
		return nil, nil, fmt.Errorf("read %s: %w", GUIDsFile, err)
	}
	kept, faults := ReadGUIDs(data)
	return kept, faults, nil
}

// ReadGUIDs reads the text of the list. What cannot be read is a fault: a line
// that two people changed at a time must not be lost.
func ReadGUIDs(data []byte) (GUIDs, []Fault) {
	kept := make(GUIDs)
	if message, advice := unreadable(data); message != "" {
		return kept, []Fault{{Pos: Pos{GUIDsFile, 1, 1}, Kind: BadText, Message: message, Advice: advice}}
	}
	var faults []Fault
	n := 0
	for line := range strings.Lines(string(bytes.TrimPrefix(data, byteOrderMark))) {
		n++
		line = strings.TrimSpace(line)
		if line == "" || line[0] == '#' {
			continue
		}
		file, guid, ok := strings.Cut(line, ": ")
		f := Field[string]{strings.TrimSpace(guid), Pos{GUIDsFile, n, len(file) + 3}}
		first, twice := kept[file]
		switch at := (Pos{GUIDsFile, n, 1}); {
		case !ok || f.V == "" || !isListed(file, f.V) || !utf8.ValidString(line), strings.ContainsFunc(line, isUnseen):
			faults = append(faults, Fault{Pos: at, Kind: BadValue, Message: "this is no file and guid",
				Advice: "each line is a file of content/episodes, a colon and its guid; keep the lines of both sides if two versions met here"})
		case twice && first.V != f.V:
			faults = append(faults, Fault{Pos: at, Kind: RepeatedKey, Message: fmt.Sprintf("%s has two guids", file),
				Advice: "keep the one by which listeners know it, which is the older", Also: first.Pos, AlsoSay: "the other stands here"})
		default:
			kept[file] = f
		}
	}
	return kept, faults
}

// isListed reports whether a line of the list may hold these two.
func isListed(file, guid string) bool {
	if file != FeedBegan {
		return SortOf(file) != NoPart
	}
	address, err := parseSiteAddress(guid)
	return err == nil && address == guid
}

const guidsHead = `# The guid by which each episode was published. Players go by it: with another
# one they would load the episode again as a new one. So it is with the address at
# which the feed of recipes began. Stillroom adds to this file when it publishes;
# keep it with the site.
`

// Text writes the list as ReadGUIDs reads it.
func (g GUIDs) Text() []byte {
	files := make([]string, 0, len(g))
	for file := range g {
		files = append(files, file)
	}
	slices.SortFunc(files, cmp.Compare[string])
	b := bytes.NewBufferString(guidsHead)
	for _, file := range files {
		fmt.Fprintf(b, "%s: %s\n", file, g[file].V)
	}
	return b.Bytes()
}

// GUID gives the guid by which an episode goes: the one that it states, else
// the one by which it was published. It is empty if the episode has neither.
func (s *Site) GUID(e *Episode) string { return cmp.Or(e.GUID.V, s.GUIDs[e.File].V) }

// FeedID gives what tells players that it is the same programme, by the same
// rule.
func (s *Site) FeedID() string {
	if s.Settings.Programme == nil {
		return ""
	}
	return cmp.Or(s.Settings.Programme.FeedID.V, s.GUIDs[settingsFile].V)
}

// FirstAddress gives the address at which the feed of recipes was first
// published, else that of the site as it is now; empty if there is neither.
func (s *Site) FirstAddress() string { return cmp.Or(s.GUIDs[FeedBegan].V, s.Settings.Address.V) }
