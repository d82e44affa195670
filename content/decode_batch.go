package content

func (d *decoder) batches(v value) (list []Batch) {
	d.list(v, func(v value) { list = append(list, d.batch(v)) })
	return list
}

func (d *decoder) batch(v value) Batch {
	b := Batch{Pos: d.place(v.Node)}
	d.each(v, func(v value) {
		switch v.key.Name {
		case "made":
			b.Made = as(d, v, ParseDate)
		case "factor":
			b.Factor = d.factor(v)
		case "yield":
			b.Yield = as(d, v, ParseYield)
		case "ph":
			b.PH = d.ph(v)
		case "set":
			b.Set = d.text(v)
		case "altitude":
			b.Altitude = as(d, v, ParseAltitude)
		case "seals_failed":
			b.SealsFailed = d.whole(v)
		case "note":
			b.Note = d.text(v)
		case "public":
			b.Public = d.truth(v)
		}
	})
	return b
}
