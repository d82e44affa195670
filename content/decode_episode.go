package content

import (
	"cmp"
	"net/url"
	"path"
	"regexp"
	"strings"

	"go.yaml.in/yaml/v4"
)

// ReadEpisode reads the show notes of one episode. name is its path relative
// to the site's folder. It gives as much as could be read, and the faults in
// order of their place.
func ReadEpisode(name string, data []byte) (*Episode, []Fault) {
	e := &Episode{File: name}
	d := decode(name, data, EpisodeKeys, func(d *decoder, v value) { d.episode(v, e) })
	e.Slug = d.slug()
	e.Body = d.body()
	return e, d.sorted()
}

func (d *decoder) episode(v value, e *Episode) {
	e.Keys = d.each(v, func(v value) {
		switch v.key.Name {
		case "name":
			e.Name = d.text(v)
		case "number":
			e.Number = d.whole(v)
		case "series":
			e.Series = d.whole(v)
		case "published":
			e.Published = as(d, v, ParseDate)
		case "status":
			e.Status = word[Status](d, v)
		case "summary":
			e.Summary = d.summary(v)
		case "audio":
			e.Audio = d.audio(v)
		case "recipes":
			e.Recipes = fields(d, v, d.recipeSlug)
		case "chapters":
			e.Chapters = d.chapters(v)
		case "transcript":
			e.Transcript = d.fileName(v)
		case "links":
			d.list(v, func(v value) { e.Links = append(e.Links, d.link(v)) })
		case "next":
			e.Next = d.text(v)
		case "guid":
			e.GUID = d.text(v)
		}
	})
	d.published(v, e.Keys, e.Status)
}

func (d *decoder) audio(v value) Audio {
	a := Audio{Pos: d.place(v.Node)}
	d.each(v, func(v value) {
		switch v.key.Name {
		case "file":
			a.File = d.fileName(v)
		case "address":
			a.Address = d.address(v)
		case "bytes":
			a.Bytes = d.whole(v)
		case "duration":
			a.Duration = as(d, v, ParseDuration)
		case "type":
			a.Type = d.text(v)
		}
	})
	return a
}

func (d *decoder) recipeSlug(v value) Field[string] {
	return as(d, v, func(s string) (string, error) {
		if isSlug(s) {
			return s, nil
		}
		return "", amiss(s, "is not the name of a recipe's file", "write "+cmp.Or(Slug(path.Base(strings.TrimSuffix(s, ".md"))), "it as damson-jam"))
	})
}

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

func (d *decoder) link(v value) (l Link) {
	d.each(v, func(v value) {
		switch v.key.Name {
		case "title":
			l.Title = d.text(v)
		case "address":
			l.Address = d.address(v)
		}
	})
	return l
}

// address reads the address of a page or a file on the web.
func (d *decoder) address(v value) Field[string] { return as(d, v, parseAddress) }

func parseAddress(s string) (string, error) {
	u, err := url.Parse(s)
	if err != nil || u.Host == "" || u.Scheme != "https" && u.Scheme != "http" || u.User != nil || strings.ContainsAny(s, " \\") {
		return "", amiss(s, "is no address", "write all of it, such as https://example.org/page")
	}
	return s, nil
}
