package content

import (
	"regexp"

	"go.yaml.in/yaml/v4"
)

// ReadSettings reads site.yaml. name is its path relative to the site's
// folder. It gives as much as could be read, and the faults in order of their
// place.
func ReadSettings(name string, data []byte) (Settings, []Fault) {
	s := Settings{File: name, Language: Field[string]{V: "en"}}
	d := &decoder{source: newSource(name, data), keys: SiteKeys}
	if !d.lost {
		d.matter = d.settingsMatter()
		d.read(func(d *decoder, v value) { d.settings(v, &s) })
	}
	return s, d.sorted()
}

// settingsMatter reads a whole file as YAML. A line --- may open it.
func (s *source) settingsMatter() matter {
	first := s.firstLine()
	m := matter{pos: s.begin(1), first: first, complete: true}
	if string(s.line(first)) == "---" && first < len(s.lines) {
		m.first++
	}
	m.root = s.yaml(s.data[s.lines[m.first-1]:], m)
	return m
}

func (d *decoder) settings(v value, s *Settings) {
	s.Keys = d.each(v, func(v value) {
		switch v.key.Name {
		case "name":
			s.Name = d.text(v)
		case "tagline":
			s.Tagline = d.text(v)
		case "language":
			if f := as(d, v, parseLanguage); f.Set() {
				s.Language = f
			}
		case "author":
			s.Author = d.author(v)
		case "address":
			s.Address = as(d, v, parseSiteAddress)
		case "programme":
			s.Programme = d.programme(v)
		case "theme":
			s.Theme = d.fileName(v)
		case "units":
			s.Units = word[Units](d, v)
		case "altitude":
			s.Altitude = as(d, v, ParseAltitude)
		case "labels":
			s.Labels = d.labels(v)
		case "destination":
			s.Destination = d.text(v)
		}
	})
}

func (d *decoder) author(v value) (a Author) {
	if v.Kind == yaml.ScalarNode {
		a.Name = d.text(v)
		return a
	}
	d.each(v, func(v value) {
		switch v.key.Name {
		case "name":
			a.Name = d.text(v)
		case "about":
			a.About = d.text(v)
		}
	})
	return a
}

func (d *decoder) programme(v value) *Programme {
	p := &Programme{Pos: d.place(v.Node)}
	d.each(v, func(v value) {
		switch v.key.Name {
		case "name":
			p.Name = d.text(v)
		case "summary":
			p.Summary = d.text(v)
		case "picture":
			p.Picture = d.fileName(v)
		case "category":
			p.Category = d.text(v)
		case "explicit":
			p.Explicit = d.truth(v)
		case "owner":
			p.Owner = d.owner(v)
		case "feed_id":
			p.FeedID = d.text(v)
		}
	})
	return p
}

func (d *decoder) owner(v value) (o Owner) {
	if v.Kind == yaml.ScalarNode {
		o.Name = d.text(v)
		return o
	}
	d.each(v, func(v value) {
		switch v.key.Name {
		case "name":
			o.Name = d.text(v)
		case "email":
			o.Email = d.text(v)
		}
	})
	return o
}

func (d *decoder) labels(v value) Field[Labels] {
	if v.Kind == yaml.ScalarNode {
		f := d.text(v)
		return Field[Labels]{Labels{Preset: f.V}, f.Pos}
	}
	var l Labels
	d.each(v, func(v value) {
		switch v.key.Name {
		case "page":
			l.Page = word[string](d, v).V
		case "columns":
			l.Columns = d.whole(v).V
		case "rows":
			l.Rows = d.whole(v).V
		case "width":
			l.Width = as(d, v, ParseLength).V
		case "height":
			l.Height = as(d, v, ParseLength).V
		case "column_gap":
			l.ColumnGap = as(d, v, ParseLength).V
		case "row_gap":
			l.RowGap = as(d, v, ParseLength).V
		case "side":
			l.Side = as(d, v, ParseLength).V
		case "top":
			l.Top = as(d, v, ParseLength).V
		case "round":
			l.Round = d.truth(v).V
		}
	})
	return Field[Labels]{l, d.place(v.Node)}
}

// languageTag is the outer form of a tag of BCP 47, section 2.1; the words are
// not looked up.
var languageTag = regexp.MustCompile(`^[A-Za-z]{2,8}(-[A-Za-z0-9]{1,8})*$`)

func parseLanguage(s string) (string, error) {
	if !languageTag.MatchString(s) {
		return "", amiss(s, "is no language", "write its short sign, such as en or en-GB")
	}
	return s, nil
}
