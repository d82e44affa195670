package intake

import (
	"bytes"
	"fmt"
	"path"
	"regexp"
	"slices"
	"strings"

	"github.com/mmcdole/gofeed"

	"stillroom/content"
)

// IsFeed reports whether a file is a feed, and no page, as its beginning tells.
func IsFeed(data []byte) bool {
	const beginning = 64 << 10
	switch gofeed.DetectFeedType(bytes.NewReader(data[:min(len(data), beginning)])) {
	case gofeed.FeedTypeRSS, gofeed.FeedTypeAtom:
		return true
	}
	return false
}

// ReadFeed gives the episodes of a programme from its feed, in the order of
// the feed, and what was left out. An error means that it could not be read at
// all. Nothing is fetched.
func ReadFeed(name string, data []byte) ([]Arrival, []Trouble, error) {
	if err := overgrown(name, data, true); err != nil {
		return nil, nil, err
	}
	feed, err := gofeed.NewParser().Parse(bytes.NewReader(data))
	if err != nil {
		return nil, nil, fmt.Errorf("%s: is no feed that can be read: %w", name, err)
	}
	var all []Arrival
	var troubles []Trouble
	lines := itemLines(data)
	slugs, guids := make(map[string]int), make(map[string]bool)
	marks := 0
	for i, item := range feed.Items {
		pos := content.Pos{File: name}
		if len(lines) == len(feed.Items) {
			pos.Line = lines[i]
		}
		title := oneLine(item.Title)
		audio := recording(item)
		switch {
		case audio == nil:
			troubles = append(troubles, Trouble{pos, fmt.Sprintf("entry %d, %q, has no recording and was left out", i+1, title)})
			continue
		case item.GUID != "" && guids[item.GUID]:
			troubles = append(troubles, Trouble{pos, fmt.Sprintf("entry %d, %q, has the guid of one before it and was left out", i+1, title)})
			continue
		case isTangled(item.Content), isTangled(item.Description), isTangled(item.Title), marks > mostMarked:
			troubles = append(troubles, Trouble{pos, fmt.Sprintf("entry %d, %q, is longer or more tangled than any that is written for people, and was left out", i+1, clipped(title))})
			continue
		}
		marks += marksIn(item.Content) + marksIn(item.Description)
		guids[item.GUID] = true
		all = append(all, episode(item, audio, slugs))
	}
	if len(all) == 0 {
		troubles = append(troubles, Trouble{content.Pos{File: name}, "holds no entry with a recording"})
	}
	return all, troubles, nil
}

var itemTag = regexp.MustCompile(`<(item|entry)[\s>]`)

// itemLines gives the lines on which entries begin.
func itemLines(data []byte) []int {
	var lines []int
	line, from := 1, 0
	for _, at := range itemTag.FindAllIndex(data, -1) {
		line += bytes.Count(data[from:at[0]], []byte("\n"))
		from = at[0]
		lines = append(lines, line)
	}
	return lines
}

// recording gives the enclosure that is to be heard; nil if there is none.
func recording(item *gofeed.Item) *gofeed.Enclosure {
	for _, e := range item.Enclosures {
		ending := strings.ToLower(path.Ext(fileOf(e.URL)))
		if addressOf(spaced(e.URL)) != "" && (strings.HasPrefix(strings.ToLower(e.Type), "audio/") || slices.Contains([]string{".mp3", ".m4a", ".ogg", ".oga", ".opus"}, ending)) {
			return e
		}
	}
	return nil
}

// spaced writes the spaces of an address as it must: feeds often do not.
func spaced(address string) string { return strings.ReplaceAll(address, " ", "%20") }
