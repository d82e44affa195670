package content

// ReadEpisode reads the show notes of one episode. name is its path relative
// to the site's folder. It gives as much as could be read, and the faults in
// order of their place.
func ReadEpisode(name string, data []byte) (*Episode, []Fault) {
	e := &Episode{File: name}
	d := decode(name, data, EpisodeKeys, func(d *decoder, v value) { d.episode(v, e) })
	e.Slug = d.slug()
	e.Body = d.body()
	e.Marks = d.marks()
	if e.Status.V == Draft {
		d.letWait()
	}
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
			e.Transcript = d.publishedName(v)
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
			a.File = d.publishedName(v)
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
