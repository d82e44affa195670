package validate

import (
	"fmt"

	"stillroom/content"
)

// guidChanged reports an episode that goes by another guid than the one by
// which it was published.
var guidChanged = &Rule{
	ID:       "guid-changed",
	Severity: Error,
	Summary:  "an episode, or the programme, whose guid is not the one by which it was published",
	Doc: `Players know an episode by its guid alone. With another one it counts as new: it is
loaded again, and stands twice in every list. So a guid stays as it is when the name,
the file or the recording changes, and when the site moves. content/guids.txt remembers
by which guid each episode was published; it is the older of the two that counts.

If this is another episode under the name of an old file, give its file another name.`,
	Source:    Source{Title: "PSP-1, The Podcast RSS Standard (2023-08-07): guid"},
	CheckSite: checkGUIDChanged,
}

func checkGUIDChanged(s *content.Site) []Finding {
	written := make(map[string]bool)
	for _, e := range s.Episodes {
		written[e.GUID.V] = true
	}
	var fs []Finding
	for _, e := range s.Episodes {
		kept := s.GUIDs[e.File]
		if e.GUID.Set() && kept.Set() && e.GUID.V != kept.V && !written[kept.V] { // else the file was renamed
			fs = append(fs, changedGUID(e.GUID, kept, "guid", "the episode"))
		}
	}
	if p := s.Settings.Programme; p != nil {
		kept := s.GUIDs[s.Settings.File]
		if p.FeedID.Set() && kept.Set() && p.FeedID.V != kept.V {
			fs = append(fs, changedGUID(p.FeedID, kept, "feed_id", "the programme"))
		}
	}
	return fs
}

func changedGUID(now, kept content.Field[string], key, what string) Finding {
	return Finding{
		Pos:     now.Pos,
		Message: fmt.Sprintf("%s was published by another %s", what, key),
		Advice:  fmt.Sprintf("Write %s: %s again: with another one listeners get it twice.", key, kept.V),
		Notes:   []Note{{kept.Pos, "remembered here"}},
	}
}
