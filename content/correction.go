package content

// A Correction tells readers who have an older copy what in it was wrong.
type Correction struct {
	Pos  Pos
	Date Field[Date]
	Text Field[string] // what was wrong, and what is right
}

// A Withdrawal takes a recipe back. Its address stays, so that whoever has
// printed or linked to it learns why.
type Withdrawal struct {
	Pos     Pos
	Date    Field[Date]
	Reason  Field[string]
	Instead Field[string] // the slug of a recipe to make in its place; empty if there is none
}

func (d *decoder) corrections(v value) (list []Correction) {
	d.list(v, func(v value) { list = append(list, d.correction(v)) })
	return list
}

func (d *decoder) correction(v value) Correction {
	c := Correction{Pos: d.place(v.Node)}
	d.each(v, func(v value) {
		switch v.key.Name {
		case "date":
			c.Date = as(d, v, ParseDate)
		case "text":
			c.Text = d.text(v)
		}
	})
	return c
}

func (d *decoder) withdrawn(v value) *Withdrawal {
	w := &Withdrawal{Pos: d.place(v.Node)}
	d.each(v, func(v value) {
		switch v.key.Name {
		case "date":
			w.Date = as(d, v, ParseDate)
		case "reason":
			w.Reason = d.text(v)
		case "instead":
			w.Instead = d.recipeSlug(v)
		}
	})
	return w
}

// LastChange is the latest of the days on which a recipe was published,
// updated, corrected or withdrawn.
func (r *Recipe) LastChange() Date {
	last := r.Published.V
	later := func(d Date) {
		if last.Before(d) {
			last = d
		}
	}
	later(r.Updated.V)
	for _, c := range r.Corrections {
		later(c.Date.V)
	}
	if r.Withdrawn != nil {
		later(r.Withdrawn.Date.V)
	}
	return last
}
