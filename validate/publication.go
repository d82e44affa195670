package validate

import "sync"

// A Publication is where tested processes were published.
type Publication struct {
	Key     string // guide
	Title   string
	Edition string // December 2015; empty where each page is revised by itself, which are read by the Edition of the tables
	Source  Source
}

// Publications gives every publication, in order of key. Nobody may change
// them.
func Publications() []Publication { return publications() }

var publications = sync.OnceValue(func() []Publication {
	var ps []Publication
	for _, r := range readTable("publications.tsv") {
		ps = append(ps, Publication{
			Key:     r.text("key"),
			Title:   r.text("title"),
			Edition: r.text("edition"),
			Source:  r.source("title"),
		})
	}
	return ps
})
