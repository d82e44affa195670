package build

import (
	"maps"
	"strings"
)

// A headerRule says which headers of HTTP go with the addresses that a pattern
// takes in. In a pattern * stands for any text, strokes too.
type headerRule struct {
	Path string            `json:"path"`
	Set  map[string]string `json:"set"`
}

// How long a browser may keep what it has got without asking again: for good if
// its name holds a hash of the bytes (RFC 8246). A recording is not renamed when
// it is cut anew, so it is asked for after a day.
const (
	forGood  = "public, max-age=31536000, immutable"
	forADay  = "public, max-age=86400"
	askAgain = "no-cache"
)

// everywhere goes with every file. The policy of a page stands in the page;
// only what has no effect there is said here: https://www.w3.org/TR/CSP3/#meta-element
var everywhere = map[string]string{
	"Cache-Control":              askAgain,
	"Content-Security-Policy":    "frame-ancestors 'none'",
	"Cross-Origin-Opener-Policy": "same-origin",
	"Permissions-Policy":         "camera=(), geolocation=(), microphone=()",
	"Referrer-Policy":            "strict-origin-when-cross-origin",
	"X-Content-Type-Options":     "nosniff",
}

// forOthers goes with what programs and pages elsewhere may show or play.
var forOthers = map[string]string{"Access-Control-Allow-Origin": "*", "Cross-Origin-Resource-Policy": "cross-origin"}

// openToOthers are the feeds, and what they point at.
var openToOthers = []string{
	"/recipes.atom", "/recipes.json", "/programme.xml", "*/chapters.json", "*.vtt", "*.srt",
	"*.mp3", "*.m4a", "*.ogg", "*.oga", "*.opus", "/assets/*.jpg", "/assets/*.jpeg", "/assets/*.png",
}

// namedByHash are the pictures, styles and scripts, and the search index.
var namedByHash = []string{"/assets/*", "/search/*.json"}

// headerRules are in the order in which they are obeyed: a later one overrules
// those before it.
func headerRules() []headerRule {
	rules := []headerRule{{"*", everywhere}}
	for _, t := range typesByEnding {
		rules = append(rules, headerRule{"*" + t.ending, map[string]string{"Content-Type": t.name}})
	}
	for _, ending := range []string{".mp3", ".m4a", ".ogg", ".oga", ".opus"} {
		rules = append(rules, headerRule{"*" + ending, map[string]string{"Cache-Control": forADay}})
	}
	for _, pattern := range openToOthers {
		rules = append(rules, headerRule{pattern, forOthers})
	}
	for _, pattern := range namedByHash {
		rules = append(rules, headerRule{pattern, map[string]string{"Cache-Control": forGood}})
	}
	return rules
}

// takesIn reports whether a pattern takes in an address.
func (r headerRule) takesIn(address string) bool {
	before, after, any := strings.Cut(r.Path, "*")
	if !any {
		return address == r.Path
	}
	return len(address) >= len(before)+len(after) && strings.HasPrefix(address, before) && strings.HasSuffix(address, after)
}

// Headers gives the headers with which a host has to hand out the file of a
// path. Of a compressed copy, they are those of what it is a copy of, and say
// how it is compressed: RFC 9110, 8.4.
func Headers(path string) map[string]string {
	original, coding := compressedFrom(path)
	set := make(map[string]string)
	for _, r := range headerRules() {
		if r.takesIn("/" + original) {
			maps.Copy(set, r.Set)
		}
	}
	if coding != "" {
		set["Content-Encoding"], set["Vary"] = coding, "Accept-Encoding"
	}
	return set
}

// headerList is /headers.json: the rules for whoever sets up a host, since no
// two hosts want them in one form. A page that comes over https asks browsers
// to come that way for a year; other names of the same domain are not for this
// site to speak for.
func (e *edition) headerList() []File {
	rules := headerRules()
	if strings.HasPrefix(e.settings.Address.V, "https:") {
		rules = append(rules, headerRule{"*", map[string]string{"Strict-Transport-Security": "max-age=31536000"}})
	}
	return []File{NewFile("headers.json", mustJSON(map[string]any{"headers": rules}))}
}
