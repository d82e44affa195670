package validate

import "sync"

// A Remark is a sentence or two for readers, and who published it.
type Remark struct {
	Says   string
	Source Source
}

// remark gives a row of remarks.tsv. Each pair is the name of a brace and what
// stands for it.
func remark(id string, pairs ...string) Remark {
	m, ok := remarks()[id]
	if !ok {
		panic("no remark " + id)
	}
	m.Says = filledIn(m.Says, pairs)
	return m
}

var remarks = sync.OnceValue(func() map[string]Remark {
	m := map[string]Remark{}
	for _, r := range readTable("remarks.tsv") {
		v := Remark{Says: r.text("says")}
		if r.text("publication") != "" {
			v.Source = r.source("publication")
		}
		m[r.text("remark")] = v
	}
	return m
})

// limitText writes the figure of a limit with a unit, as in 50-70 °F; the value
// itself where it is a word.
func limitText(id, unit string) string {
	l := LimitOf(id)
	if l.Low == nil {
		return l.Value + " " + unit
	}
	text := percent(l.Low)
	if l.High.Cmp(l.Low) != 0 {
		text += "-" + percent(l.High)
	}
	return text + " " + unit
}
