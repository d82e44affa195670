package intake

import (
	"strconv"

	"stillroom/content"
)

// BlankEpisode begins the show notes of an episode as a draft, with its number
// unless that is 0.
func BlankEpisode(name string, number int) File {
	f := new(front)
	f.WriteString("---\n")
	f.key("", "name", name, "")
	if number > 0 {
		f.blank("", "number", strconv.Itoa(number))
	}
	f.WriteString("summary:\nstatus: draft\naudio:\n  file:\nrecipes:\nchapters:\n  - 0:00 Welcome\n---\n\n")
	f.WriteString("<!-- check: write the show notes -->\n")
	return File{"content/episodes/" + content.Slug(name) + ".md", []byte(f.String())}
}
