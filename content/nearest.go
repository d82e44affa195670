package content

import (
	"slices"
	"strings"
)

// otherNames are the words under which other people's front matter holds what
// a key of ours holds.
var otherNames = map[string][]string{
	"name":        {"title"},
	"title":       {"name"},
	"summary":     {"description", "excerpt", "intro", "subtitle"},
	"published":   {"date", "created"},
	"updated":     {"modified", "lastmod"},
	"status":      {"draft"},
	"kind":        {"type", "category", "categories"},
	"yield":       {"serves", "servings", "makes", "portions"},
	"times":       {"time", "timing"},
	"hands_on":    {"prep", "prep_time", "active"},
	"cooking":     {"cook", "cook_time"},
	"waiting":     {"rest", "total"},
	"picture":     {"image", "photo", "cover"},
	"pictures":    {"images", "photos", "gallery"},
	"gear":        {"equipment", "tools"},
	"cautions":    {"warnings", "notes"},
	"formerly":    {"aliases", "redirects", "redirect_from"},
	"inspired_by": {"source", "credit", "adapted_from"},
	"item":        {"ingredient", "name"},
	"amount":      {"quantity", "qty"},
	"items":       {"ingredients"},
	"for":         {"group", "name", "heading"},
	"way":         {"method"},
	"keeps":       {"shelf_life", "lasts"},
	"jar":         {"size"},
	"at":          {"start", "time"},
	"address":     {"url", "href", "link"},
	"about":       {"bio"},
	"programme":   {"podcast", "show"},
}

// misplaced tells where to go with what belongs under no such key.
var misplaced = map[string]string{
	"ph":           "a measured pH goes to the batch in which it was measured, under batches",
	"method":       methodAdvice,
	"steps":        methodAdvice,
	"instructions": methodAdvice,
	"directions":   methodAdvice,
	"slug":         "the name of the file makes the address",
	"permalink":    "the name of the file makes the address",
}

const methodAdvice = "the method is the first numbered list below the front matter"

// unknownKey tells what to do about a key that is not in the table t, in a file
// whose keys are those of root.
func unknownKey(name string, t, root KeyTable) string {
	var parts []string
	likely := strings.NewReplacer("-", "_", " ", "_").Replace(strings.ToLower(name))
	if near := t.nearest(likely); near != "" {
		parts = append(parts, "did you mean "+near+"?")
	} else if advice, ok := misplaced[likely]; ok {
		return advice
	}
	if places := root.places(likely, ""); len(places) > 0 && t.Find(likely) == nil {
		parts = append(parts, likely+" belongs "+strings.Join(places, " or "))
	}
	switch {
	case len(parts) > 0:
		return strings.Join(parts, " ")
	case strings.Contains(name, " "):
		return "put a text that holds a colon in quotation marks"
	}
	return "the keys known here are " + strings.Join(t.names(), ", ")
}

// nearest gives the name of the key that was most likely meant, or nothing.
func (t KeyTable) nearest(name string) string {
	for _, k := range t {
		if slices.Contains(otherNames[k.Name], name) {
			return k.Name
		}
	}
	return nearest(name, t.names())
}

// places tells of every map of the front matter in which name is a key.
func (t KeyTable) places(name, under string) []string {
	var found []string
	for _, k := range t {
		if k.Name == name {
			found = append(found, place(under))
		}
		below := k.Name
		if under != "" {
			below = under + ", " + k.Name
		}
		found = append(found, k.Keys.places(name, below)...)
	}
	return found
}

func place(under string) string {
	if under == "" {
		return "at the top of the front matter"
	}
	return "under " + under
}

func (t KeyTable) names() []string {
	names := make([]string, len(t))
	for i, k := range t {
		names[i] = k.Name
	}
	return names
}

// nearest gives the word of the list that is written most like s, or nothing
// if none comes near.
func nearest(s string, list []string) string {
	const longest = 40 // of all words that are looked up, and more
	if len(s) > longest {
		return ""
	}
	s = strings.ToLower(s)
	best, most := "", max(1, (len(s)+1)/3)
	for _, w := range list {
		if d := distance(s, w); d <= most {
			best, most = w, d-1
		}
	}
	return best
}

// distance counts the letters that are added, left out, changed or swapped with
// their neighbour between a and b (optimal string alignment).
func distance(a, b string) int {
	before, last, row := make([]int, len(b)+1), make([]int, len(b)+1), make([]int, len(b)+1)
	for j := range last {
		last[j] = j
	}
	for i := 1; i <= len(a); i++ {
		row[0] = i
		for j := 1; j <= len(b); j++ {
			change := last[j-1]
			if a[i-1] != b[j-1] {
				change++
			}
			row[j] = min(last[j]+1, row[j-1]+1, change)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				row[j] = min(row[j], before[j-2]+1)
			}
		}
		before, last, row = last, row, before
	}
	return last[len(b)]
}
