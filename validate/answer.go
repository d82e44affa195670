package validate

import "sync"

// An answer is a row of answers.tsv.
type answer struct {
	verdict Verdict
	says    string // with braces for what differs from process to process
	source  Source // zero where it is that of a process
}

var verdicts = map[string]Verdict{"may": May, "may-not": MayNot, "unknown": Unknown}

// answers gives the rows by change and case: "less-salt ferment".
var answers = sync.OnceValue(func() map[string]answer {
	m := map[string]answer{}
	for _, r := range readTable("answers.tsv") {
		a := answer{verdict: word(r, "verdict", verdicts), says: r.text("says")}
		if r.text("publication") != "" {
			a.source = r.source("publication")
		}
		m[r.text("change")+" "+r.text("case")] = a
	}
	return m
})

// change makes the change of the answer that was picked.
func (q question) change(a *asking, p picked) Change {
	row, ok := answers()[q.id+" "+p.which]
	if !ok {
		panic("no answer " + q.id + " " + p.which)
	}
	c := Change{ID: q.id, Asks: q.asks, Verdict: row.verdict, Says: filledIn(row.says, p.words), Source: row.source}
	switch {
	case c.Source != (Source{}):
	case p.source != (Source{}):
		c.Source = p.source
	default:
		c.Source = a.Process.Source()
	}
	return c
}
