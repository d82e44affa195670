package content

import (
	"regexp"
	"strings"

	"go.yaml.in/yaml/v4"
)

func (d *decoder) chapters(v value) (list []Chapter) {
	d.list(v, func(v value) { list = append(list, d.chapter(v)) })
	return list
}

func (d *decoder) chapter(v value) Chapter {
	c := Chapter{Pos: d.place(v.Node)}
	if v.Kind == yaml.ScalarNode {
		if f := as(d, v, parseChapter); f.Set() {
			c.At, c.Title = Field[int]{f.V.at, f.Pos}, Field[string]{f.V.title, f.Pos}
		}
		return c
	}
	d.each(v, func(v value) {
		switch v.key.Name {
		case "at":
			c.At = as(d, v, parseMark)
		case "title":
			c.Title = d.text(v)
		case "recipe":
			c.Recipe = d.recipeSlug(v)
		}
	})
	return c
}

// A mark is a chapter on one line: 12:30 The brine.
type mark struct {
	at    int
	title string
}

func parseChapter(s string) (mark, error) {
	clock, title, _ := strings.Cut(s, " ")
	at, err := parseMark(clock)
	title = strings.TrimSpace(title)
	if err == nil && title == "" {
		err = amiss(s, "has no title", "write it after the time")
	}
	return mark{at, title}, err
}

var clock = regexp.MustCompile(`^(?:([0-9]{1,2}):)?([0-9]{1,2}):([0-5][0-9])$`)

// parseMark reads minutes and seconds, or hours, minutes and seconds, and
// gives seconds.
func parseMark(s string) (int, error) {
	m := clock.FindStringSubmatch(s)
	if m == nil || m[1] != "" && wholeOf(m[2]) > 59 {
		return 0, amiss(s, "is no place in a recording", "write it as 12:30 or 1:02:30")
	}
	return int(wholeOf(m[1])*3600 + wholeOf(m[2])*60 + wholeOf(m[3])), nil
}
