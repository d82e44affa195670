package validate

import (
	"fmt"
	"maps"
	"slices"

	"stillroom/content"
)

// guidLost reports a published episode that is gone while a new one goes by no
// guid yet: it may be the same under another name.
var guidLost = &Rule{
	ID:       "guid-lost",
	Severity: Warning,
	Summary:  "a published episode that is gone, while there is one that was never published",
	Doc: `An episode without a guid of its own goes by the address of its first publication,
which content/guids.txt remembers by the name of its file. When the file is renamed,
the new one does not know of it, and players would load the episode once more as a
new one. Write the old guid into the renamed file. If the episode was taken away and
the other one is really new, nothing need be done: once that is published, this is
not said again.`,
	Source:    Source{Title: "PSP-1, The Podcast RSS Standard (2023-08-07): guid"},
	CheckSite: checkGUIDLost,
}

func checkGUIDLost(s *content.Site) []Finding {
	var nameless *content.Episode
	here := map[string]bool{s.Settings.File: true, content.FeedBegan: true}
	known := make(map[string]bool)
	for _, e := range s.Episodes {
		here[e.File] = true
		guid := s.GUID(e)
		known[guid] = true
		if guid == "" && e.Status.V != content.Draft {
			nameless = e
		}
	}
	if nameless == nil {
		return nil
	}
	var fs []Finding
	for _, file := range slices.Sorted(maps.Keys(s.GUIDs)) {
		kept := s.GUIDs[file]
		if here[file] || known[kept.V] {
			continue
		}
		fs = append(fs, Finding{
			Pos:     kept.Pos,
			Message: file + " was published and is gone",
			Advice:  fmt.Sprintf("If %s is that episode under a new name, write guid: %s into it.", nameless.File, kept.V),
			Notes:   []Note{{guidPlace(nameless), "this one was never published"}},
		})
	}
	return fs
}
