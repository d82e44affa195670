package validate

import (
	"cmp"
	"slices"
	"strings"
	"sync"

	"stillroom/content"
)

var processes = sync.OnceValue(loadProcesses)

func loadProcesses() []*Process {
	published := map[string]Publication{}
	for _, p := range publications() {
		published[p.Key] = p
	}
	facts := processFacts()
	var all []*Process
	byKey := map[string]*Process{}
	for _, r := range readTable("processes.tsv") {
		p := &Process{
			ID:          r.text("process"),
			Food:        r.text("food"),
			Method:      content.Way(r.text("method")),
			Pack:        content.Pack(r.text("pack")),
			Publication: published[r.text("publication")].Title,
			Edition:     published[r.text("publication")].Edition,
			Facts:       facts[r.text("process")],
		}
		all = append(all, p)
		byKey[p.ID+" "+r.text("method")] = p
	}
	for _, r := range readTable("schedules.tsv") {
		byKey[r.text("process")+" "+r.text("method")].add(r)
	}
	for _, r := range readTable("process-editions.tsv") {
		if p := byKey[r.text("process")+" "+r.text("method")]; p != nil {
			p.Since = r.text("edition")
		}
	}
	slices.SortFunc(all, func(a, b *Process) int {
		return cmp.Or(cmp.Compare(a.ID, b.ID), cmp.Compare(a.Method, b.Method))
	})
	return all
}

// add takes in a row of schedules.tsv. The rows of one jar follow each other.
func (p *Process) add(r row) {
	s := Schedule{Name: r.text("schedule"), Table: r.text("table"), Bands: bandsOf(r)}
	s.Gauge, _, _ = strings.Cut(s.Name, "-")
	last := len(p.Jars) - 1
	if last < 0 || p.Jars[last].Jar != r.text("jar") {
		p.Jars = append(p.Jars, JarProcess{Jar: r.text("jar"), Headspace: r.rat("headspace_in")})
		last++
	}
	if p.Table == "" {
		p.Table = s.Table
	}
	p.Jars[last].Schedules = append(p.Jars[last].Schedules, s)
}

// bandsOf reads the figures of a schedule: 0-2000:20@11 is 20 minutes at 11
// psi from 0 to 2,000 ft. Their evidence is one for all, or one for each.
func bandsOf(r row) []TestedBand {
	seen := strings.Fields(r.text("evidence"))
	var bands []TestedBand
	for text := range strings.FieldsSeq(r.text("bands")) {
		altitude, figures, _ := strings.Cut(text, ":")
		from, to, _ := strings.Cut(altitude, "-")
		minutes, psi, _ := strings.Cut(figures, "@")
		bands = append(bands, TestedBand{
			From:     r.whole(from),
			To:       r.whole(to),
			Minutes:  r.whole(minutes),
			PSI:      r.whole(psi),
			Evidence: evidence(seen[min(len(bands), len(seen)-1)]),
		})
	}
	return bands
}
