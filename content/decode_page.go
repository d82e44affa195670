package content

// ReadPage reads one page. name is its path relative to the site's folder. It
// gives as much as could be read, and the faults in order of their place.
func ReadPage(name string, data []byte) (*Page, []Fault) {
	p := &Page{File: name}
	d := decode(name, data, PageKeys, func(d *decoder, v value) { d.page(v, p) })
	p.Slug = d.slug()
	p.Body = d.body()
	return p, d.sorted()
}

func (d *decoder) page(v value, p *Page) {
	p.Keys = d.each(v, func(v value) {
		switch v.key.Name {
		case "name":
			p.Name = d.text(v)
		case "summary":
			p.Summary = d.summary(v)
		case "published":
			p.Published = as(d, v, ParseDate)
		case "updated":
			p.Updated = as(d, v, ParseDate)
		case "status":
			p.Status = word[Status](d, v)
		case "picture":
			p.Picture = d.picture(v)
		}
	})
}
