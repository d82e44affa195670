package content

import "go.yaml.in/yaml/v4"

func (d *decoder) keepings(v value) (list []Keeping) {
	d.list(v, func(v value) { list = append(list, d.keeping(v)) })
	return list
}

func (d *decoder) keeping(v value) Keeping {
	k := Keeping{Pos: d.place(v.Node)}
	k.Keys = d.each(v, func(v value) {
		switch v.key.Name {
		case "way":
			k.Way = word[Way](d, v)
		case "process":
			k.Process = d.text(v)
		case "tested_by":
			k.TestedBy = d.testedBy(v)
		case "pack":
			k.Pack = word[Pack](d, v)
		case "headspace":
			k.Headspace = as(d, v, ParseLength)
		case "acid":
			k.Acid = as(d, v, ParseAcid)
		case "jars_sterilised":
			k.JarsSterilised = d.truth(v)
		case "processing":
			d.list(v, func(v value) { k.Processing = append(k.Processing, d.processing(v)) })
		case "factor":
			k.Factor = d.factor(v)
		case "keeps":
			k.Keeps = as(d, v, ParseDuration)
		case "ph":
			k.PH = d.ph(v)
		case "measured":
			k.Measured = as(d, v, ParseDate)
		case "salt":
			k.Salt = as(d, v, ParseShare)
		case "temperature":
			k.Temperature = as(d, v, ParseTemperature)
		case "duration":
			k.Duration = as(d, v, ParseDuration)
		case "blanch":
			k.Blanch = as(d, v, ParseDuration)
		case "container":
			k.Container = d.text(v)
		}
	})
	return k
}

func (d *decoder) testedBy(v value) *TestedBy {
	t := &TestedBy{Pos: d.place(v.Node)}
	d.each(v, func(v value) {
		switch v.key.Name {
		case "authority":
			t.Authority = d.text(v)
		case "reference":
			t.Reference = d.text(v)
		case "date":
			t.Date = as(d, v, ParseDate)
		}
	})
	return t
}

func (d *decoder) processing(v value) Processing {
	p := Processing{Pos: d.place(v.Node)}
	p.Keys = d.each(v, func(v value) {
		switch v.key.Name {
		case "jar":
			p.Jar = as(d, v, ParseJar)
		case "altitude":
			p.Altitude = bands(d, v, WantDuration, ParseDuration)
		case "time":
			p.Time = as(d, v, ParseDuration)
		case "dial":
			p.Dial = bands(d, v, WantPressure, ParsePressure)
		case "weighted":
			p.Weighted = bands(d, v, WantPressure, ParsePressure)
		}
	})
	return p
}

// bands reads a map whose keys are bands of altitude, in the order in which
// they were written. A band whose value cannot be read is left out.
func bands[T any](d *decoder, v value, want Want, parse func(string) (T, error)) (list []Band[T]) {
	d.pairs(v, func(name, n *yaml.Node) {
		b := Band[T]{Pos: d.place(name), Text: name.Value}
		var err error
		if b.From, b.Over, b.To, err = ParseBand(name.Value); err != nil {
			d.bad(b.Pos, err)
			return
		}
		d.given(value{Node: n, key: &Key{Name: name.Value, Want: want}}, b.Pos, func(v value) {
			if b.Value = as(d, v, parse); b.Value.Set() {
				list = append(list, b)
			}
		})
	})
	return list
}
