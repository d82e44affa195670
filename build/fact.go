package build

import (
	"math/big"
	"strconv"
	"strings"

	"stillroom/content"
)

// facts gives the figures of a way of keeping, in the order in which they are
// needed: the jar, what goes into it, how full, how it is kept, how long.
func facts(k *content.Keeping) []Fact {
	var all []Fact
	add := func(f Fact) {
		if f.Number != "" {
			all = append(all, f)
		}
	}
	add(jarFact(k))
	if k.Pack.V != "" {
		add(Fact{Name: "Pack", Figure: Figure{Number: capital(string(k.Pack.V))}, Note: packNotes[k.Pack.V]})
	}
	add(acidFact(k))
	add(headspaceFact(k.Headspace.V))
	add(measure("Salt", k.Salt.V.Quantity, "by weight"))
	add(temperatureFact(k.Temperature.V))
	add(measure("Blanch", k.Blanch.V.Quantity, ""))
	add(Fact{Name: "Container", Figure: Figure{Number: capital(k.Container.V)}})
	add(measure("Takes", k.Duration.V.Quantity, ""))
	add(phFact(k))
	add(measure("Keeps", k.Keeps.V.Quantity, "for best quality"))
	return all
}

var packNotes = map[content.Pack]string{
	content.Hot: "food hot, jars hot",
	content.Raw: "food put in raw",
}

// measure gives a fact that needs no more than to be named; its figure is empty
// if nothing was written.
func measure(name string, q content.Quantity, note string) Fact {
	return Fact{Name: name, Figure: written(q), Note: note}
}

func jarFact(k *content.Keeping) Fact {
	var names, volumes []string
	for _, p := range k.Processing {
		names = append(names, jarName(p.Jar.V))
		if v := jarVolume(p.Jar.V); v != "" {
			volumes = append(volumes, v)
		}
	}
	name := "Jar"
	if len(names) > 1 {
		name = "Jars"
	}
	return Fact{Name: name, Figure: Figure{Number: capital(strings.ToLower(list(names)))}, Note: list(volumes)}
}

func acidFact(k *content.Keeping) Fact {
	f := Fact{Name: "Acid"}
	switch a := k.Acid.V; a.Source {
	case content.AcidNatural:
		f.Number, f.Note = "Its own", "the food is acid enough by itself"
	case content.AcidInRecipe:
		f.Number, f.Note = "In the recipe", "leave none of it out"
	case content.AcidPerJar:
		f.Figure = written(a.Added.Amount)
		f.Note = a.Added.Item + " in each " + a.Per.String() + " jar"
		for _, p := range k.Processing {
			if half(p.Jar.V, a.Per) {
				f.Note += ", half as much in each " + p.Jar.V.String() + " jar"
			}
		}
	}
	return f
}

// half reports whether one jar holds exactly half of what another does: a pint
// of tomatoes takes half the acid of a quart (USDA Complete Guide to Home
// Canning, AIB 539 (2015), guide 3). No other share is worked out.
func half(small, large content.Jar) bool {
	s, l := small.Millilitres(), large.Millilitres()
	return s != nil && l != nil && new(big.Rat).Add(s, s).Cmp(l) == 0
}

func headspaceFact(h content.Length) Fact {
	f := measure("Headspace", h.Quantity, "from the rim down")
	if mm, ok := nearest(h.Quantity, content.Millimetre); ok && h.Unit != content.Millimetre {
		f.Also = thousands(mm) + "\u00a0mm"
	}
	return f
}

// temperatureFact gives degrees Fahrenheit in Celsius too, and the other way
// round.
func temperatureFact(t content.Temperature) Fact {
	f := Fact{Name: "Temperature", Figure: written(content.Quantity{Text: t.String()})}
	other := content.Celsius
	if t.Unit == content.Celsius {
		other = content.Fahrenheit
	}
	if c, ok := t.In(other); ok && !t.IsZero() {
		low, _ := nearest(content.Quantity{Low: c.Low, High: c.Low, Unit: other}, other)
		high, _ := nearest(content.Quantity{Low: c.High, High: c.High, Unit: other}, other)
		f.Also = strconv.Itoa(low)
		if high != low {
			f.Also += "–" + strconv.Itoa(high)
		}
		f.Also += "\u00a0" + string(other)
	}
	return f
}

func phFact(k *content.Keeping) Fact {
	if !k.PH.Set() {
		return Fact{}
	}
	f := Fact{Name: "pH", Figure: written(k.PH.V), Note: "the highest that was measured"}
	if k.Measured.Set() {
		f.Note += ", " + day(k.Measured.V).Text
	}
	return f
}
