package intake

import (
	"cmp"
	"fmt"
	"net/mail"
	"regexp"
	"strconv"
	"strings"
	"time"
	"unicode/utf8"

	"github.com/mmcdole/gofeed"
	ext "github.com/mmcdole/gofeed/extensions"
)

// episode writes show notes.
func episode(item *gofeed.Item, audio *gofeed.Enclosure, slugs map[string]int) Arrival {
	title := oneLine(item.Title)
	f := new(front)
	if title == "" {
		title = strings.TrimSpace("Episode " + episodeNumber(item))
		f.check("", "the feed gives no title")
	}
	f.key("", "name", title, "")
	writeWhole(f, "number", episodeNumber(item))
	writeWhole(f, "series", seasonNumber(item))
	writeAired(f, item)
	notes := item.Content
	if notes == "" {
		notes = item.Description
	}
	writeAbout(f, item, notes)
	writeAudio(f, item, audio)
	if item.GUID != "" {
		f.WriteString("guid: " + scalar(item.GUID) + "\n")
	} else {
		f.check("", "the feed gives no guid; players told the episode by the address of its recording")
	}
	writeBeside(f, item, "chapters", "write them into chapters")
	writeBeside(f, item, "transcript", "save it beside this file and name it in transcript")
	head := "---\n"
	if len(f.checks) > 0 {
		head += "status: draft\n"
	}
	text := head + f.String() + "---\n"
	if body := toMarkdown(notes); body != "" {
		text += "\n" + body + "\n"
	}
	return Arrival{Name: title, From: "the feed", Text: File{"content/episodes/" + uniqueSlug(title, "episode", slugs) + ".md", []byte(text)}, Checks: f.checks}
}

// writeBeside tells the author of a file that the feed names with an episode.
func writeBeside(f *front, item *gofeed.Item, name, do string) {
	for _, e := range podcast(item, name) {
		if address := e.Attrs["url"]; address != "" {
			f.check("", fmt.Sprintf("the feed has a %s file at %s: %s", name, oneLine(address), do))
		}
	}
}

// uniqueSlug gives an address to a title; the second of a name gets a number.
func uniqueSlug(title, otherwise string, taken map[string]int) string {
	slug := slugOf(title, otherwise)
	unique := slug
	for taken[unique] > 0 {
		taken[slug]++
		unique = fmt.Sprintf("%s-%d", slug, taken[slug])
	}
	taken[unique]++
	return unique
}

// podcast gives the elements of the open podcast namespace.
func podcast(item *gofeed.Item, name string) []ext.Extension { return item.Extensions["podcast"][name] }

// itunes gives the elements of the other namespace, none where the feed has none.
func itunes(item *gofeed.Item) ext.ITunesItemExtension {
	if item.ITunesExt == nil {
		return ext.ITunesItemExtension{}
	}
	return *item.ITunesExt
}

func episodeNumber(item *gofeed.Item) string {
	return cmp.Or(itunes(item).Episode, firstOf(podcast(item, "episode")))
}

func seasonNumber(item *gofeed.Item) string {
	return cmp.Or(itunes(item).Season, firstOf(podcast(item, "season")))
}

func firstOf(elements []ext.Extension) string {
	for _, e := range elements {
		return e.Value
	}
	return ""
}

func writeWhole(f *front, name, text string) {
	text = strings.TrimSpace(text)
	if text == "" {
		return
	}
	if n, err := strconv.Atoi(text); err == nil && n > 0 {
		fmt.Fprintf(f, "%s: %d\n", name, n)
		return
	}
	f.check("", fmt.Sprintf("write %s: the feed says %q", name, text))
}

// writeAired writes the day of an episode in the zone of the feed.
func writeAired(f *front, item *gofeed.Item) {
	day, err := mail.ParseDate(item.Published)
	if err != nil && item.PublishedParsed != nil {
		day, err = *item.PublishedParsed, nil
	}
	switch {
	case item.Published == "":
		f.check("", "write published: the feed has no day")
		return
	case err != nil:
		f.check("", fmt.Sprintf("write published: the feed says %q", item.Published))
		return
	}
	f.WriteString("published: " + day.Format(time.DateOnly) + "\n")
}

// writeAbout writes the summary: the feed's own, or the start of the notes.
func writeAbout(f *front, item *gofeed.Item, notes string) {
	x := itunes(item)
	for _, t := range []string{x.Summary, x.Subtitle, item.Description, notes} {
		switch t = oneLine(t); {
		case t == "":
			continue
		case utf8.RuneCountInString(t) > maxSummary:
			t = shortened(t)
		}
		f.key("", "summary", t, "")
		return
	}
	f.check("", "write summary: one or two sentences; the feed has none")
}

func writeAudio(f *front, item *gofeed.Item, audio *gofeed.Enclosure) {
	f.WriteString("audio:\n  address: " + scalar(addressOf(spaced(audio.URL))) + "\n")
	if n, err := strconv.Atoi(audio.Length); err == nil && n > 0 {
		fmt.Fprintf(f, "  bytes: %d\n", n)
	} else {
		f.check("  ", "write bytes: the size of the recording; the feed does not say")
	}
	length := itunes(item).Duration
	if d := playingTime(length); d != "" {
		f.WriteString("  duration: " + d + "\n")
	} else {
		f.check("  ", strings.TrimSuffix(fmt.Sprintf("write duration: as in 24 min 30 s; the feed says %q", length), `; the feed says ""`))
	}
	if audio.Type != "" {
		f.WriteString("  type: " + scalar(audio.Type) + "\n")
	}
}

var clock = regexp.MustCompile(`^(?:(?:(\d{1,3}):)?(\d{1,3}):)?(\d{1,6})(?:\.\d+)?$`)

// playingTime writes the time of a recording as show notes do. Feeds give
// seconds, or 1:02:03.
func playingTime(text string) string {
	m := clock.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return ""
	}
	n := func(i int) int { v, _ := strconv.Atoi(m[i]); return v }
	seconds := n(1)*3600 + n(2)*60 + n(3)
	var parts []string
	for _, u := range []struct {
		size int
		name string
	}{{3600, "h"}, {60, "min"}, {1, "s"}} {
		if v := seconds / u.size; v > 0 {
			parts = append(parts, fmt.Sprintf("%d %s", v, u.name))
		}
		seconds %= u.size
	}
	return strings.Join(parts, " ")
}
