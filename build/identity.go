package build

import (
	"cmp"
	"crypto/sha1"
	"fmt"
	"maps"
	"net/url"
	"regexp"
	"strings"

	"stillroom/content"
	"stillroom/validate"
)

// GUIDs are those of the site's list with what is published now: each episode
// that listeners get, and the programme. An episode whose file was renamed
// stands under its new name alone. What is gone is remembered too, so that no
// other takes its place. With them stands the address at which the feed of recipes
// began, unless that is only an example, which every new site has.
func GUIDs(c validate.Checked) content.GUIDs {
	return newEdition(c.Site(), c.Day(), nil).guids()
}

func (e *edition) guids() content.GUIDs {
	kept := make(content.GUIDs)
	maps.Copy(kept, e.site.GUIDs)
	if first := e.site.FirstAddress(); first != "" && !isExample(first) {
		kept[content.FeedBegan] = content.Field[string]{V: first}
	}
	if e.settings.Programme == nil || e.settings.Address.V == "" {
		return kept
	}
	published := make(map[string]bool)
	for _, ep := range e.episodes {
		published[e.guid(ep)] = true
	}
	maps.DeleteFunc(kept, func(_ string, guid content.Field[string]) bool { return published[guid.V] })
	for _, ep := range e.episodes {
		kept[ep.File] = content.Field[string]{V: e.guid(ep)}
	}
	kept[e.settings.File] = content.Field[string]{V: e.feedGUID()}
	return kept
}

// isExample reports whether an address is one that nobody can own: RFC 2606, 2
// and 3.
func isExample(address string) bool {
	u, err := url.Parse(address)
	return err != nil || exampleHost.MatchString(u.Hostname())
}

var exampleHost = regexp.MustCompile(`(?i)(^|\.)(test|example|invalid|localhost|example\.(com|net|org))\.?$`)

// guid is what tells players that it is the same episode: what it states, or
// was published by, else its address.
func (e *edition) guid(ep *content.Episode) string {
	return cmp.Or(e.site.GUID(ep), e.absolute(episodeAddress(ep)))
}

// feedGUID is what tells players that it is the same programme. The first time
// it is made of the feed's address, without its scheme.
// https://github.com/Podcastindex-org/podcast-namespace/blob/main/docs/tags/guid.md
func (e *edition) feedGUID() string {
	_, address, _ := strings.Cut(e.absolute(programmeAddress), "://")
	return cmp.Or(e.site.FeedID(), nameUUID(podcasts, strings.TrimRight(address, "/")))
}

// podcasts is the namespace ead4c236-bf58-58c6-a2c6-a6b28d128cb6.
var podcasts = [16]byte{0xea, 0xd4, 0xc2, 0x36, 0xbf, 0x58, 0x58, 0xc6, 0xa2, 0xc6, 0xa6, 0xb2, 0x8d, 0x12, 0x8c, 0xb6}

// nameUUID makes the UUID of a name in a namespace: RFC 9562, 5.5, version 5.
func nameUUID(space [16]byte, name string) string {
	h := sha1.New()
	h.Write(space[:])
	h.Write([]byte(name))
	u := h.Sum(nil)
	u[6], u[8] = u[6]&0x0f|0x50, u[8]&0x3f|0x80
	return fmt.Sprintf("%x-%x-%x-%x-%x", u[:4], u[4:6], u[6:8], u[8:10], u[10:16])
}
