package validate

import "stillroom/content"

// guidRepeated reports two episodes that go by one guid.
var guidRepeated = &Rule{
	ID:       "guid-repeated",
	Severity: Error,
	Summary:  "two episodes that go by one guid",
	Doc: `Players take two episodes with one guid for the same, and show only one of them. It
happens when the show notes of an episode are copied to begin the next. Take the line
out of the newer one: an episode without a guid goes by its address, and
content/guids.txt remembers that for ever once it is published.`,
	Source:    Source{Title: "PSP-1, The Podcast RSS Standard (2023-08-07): guid"},
	CheckSite: checkGUIDRepeated,
}

func checkGUIDRepeated(s *content.Site) []Finding {
	var fs []Finding
	first := make(map[string]*content.Episode)
	for _, e := range s.Episodes {
		guid := s.GUID(e)
		other, taken := first[guid]
		switch {
		case guid == "":
		case !taken:
			first[guid] = e
		default:
			fs = append(fs, repeatedGUID(e, other), repeatedGUID(other, e))
		}
	}
	return fs
}

func repeatedGUID(e, other *content.Episode) Finding {
	return Finding{
		Pos:     guidPlace(e),
		Message: "the episode goes by the guid of " + other.File,
		Advice:  "Take the line out of the newer of the two.",
		Notes:   []Note{{guidPlace(other), "and here"}},
	}
}

// guidPlace is where an episode states its guid, or else its name.
func guidPlace(e *content.Episode) content.Pos {
	switch {
	case e.GUID.Set():
		return e.GUID.Pos
	case e.Name.Set():
		return e.Name.Pos
	}
	return content.Pos{File: e.File, Line: 1, Col: 1}
}
