package validate

import (
	"crypto/sha256"
	"fmt"
	"os"
	"strings"
	"testing"
)

// The digest of each process is kept beside the edition of the tables that
// first had its figures. Whoever changes a figure sets Edition and runs
//
//	go test ./validate -run TestProcessEditions -update
//
// which gives the edition to the processes whose figures are others now, so
// that recipes that were checked before are told.
func TestProcessEditions(t *testing.T) {
	const name = "process-editions.tsv"
	known := map[string]row{}
	for _, r := range readTable(name) {
		known[r.text("process")+" "+r.text("method")] = r
	}
	b := strings.Builder{}
	b.WriteString("process\tmethod\tdigest\tedition\n")
	for _, p := range Processes() {
		edition := Edition
		r, ok := known[p.ID+" "+string(p.Method)]
		switch {
		case ok && r.text("digest") == digest(p):
			edition = r.text("edition")
		case !*update:
			t.Errorf("%s %s: its figures changed: set Edition to today and run this test with -update", p.ID, p.Method)
		}
		fmt.Fprintf(&b, "%s\t%s\t%s\t%s\n", p.ID, p.Method, digest(p), edition)
	}
	if len(known) != len(Processes()) && !*update {
		t.Errorf("%s has %d rows for %d processes", name, len(known), len(Processes()))
	}
	if *update {
		if err := os.WriteFile("tables/"+name, []byte(b.String()), 0o666); err != nil {
			t.Fatal(err)
		}
	}
}

// digest tells one set of figures from another: those of jars, headspace,
// minutes, pressures and acid.
func digest(p *Process) string {
	h := sha256.New()
	fmt.Fprintln(h, p.ID, p.Method, p.Pack, p.Acidity)
	for _, j := range p.Jars {
		fmt.Fprintln(h, j.Jar, j.Headspace)
		for _, s := range j.Schedules {
			fmt.Fprint(h, s.Name)
			for _, b := range s.Bands {
				fmt.Fprint(h, " ", b.From, b.To, b.Minutes, b.PSI)
			}
			fmt.Fprintln(h)
		}
	}
	need := AcidFor(p)
	fmt.Fprintln(h, need.Origin, need.LemonForVinegar)
	for _, c := range need.Choices {
		fmt.Fprint(h, c.Per, c.Jar, c.Low, c.High)
		for _, d := range c.Doses {
			fmt.Fprint(h, " ", d.Kind, d.Amount, d.Unit, d.Bottled)
		}
		fmt.Fprintln(h)
	}
	return fmt.Sprintf("%x", h.Sum(nil)[:6])
}

// A figure more, or another, is seen.
func TestDigest(t *testing.T) {
	p := *Processes()[0]
	before := digest(&p)
	p.Jars = append([]JarProcess(nil), p.Jars...)
	p.Jars[0].Schedules = append([]Schedule(nil), p.Jars[0].Schedules...)
	p.Jars[0].Schedules[0].Bands = append([]TestedBand(nil), p.Jars[0].Schedules[0].Bands...)
	p.Jars[0].Schedules[0].Bands[0].Minutes++
	if digest(&p) == before {
		t.Error("a minute more makes no difference")
	}
	if d := digest(Processes()[0]); d != before {
		t.Errorf("the digest is %s now and was %s", d, before)
	}
}

func TestPublications(t *testing.T) {
	for _, p := range Publications() {
		if p.Key == "" || p.Title == "" || p.Source.Title == "" {
			t.Errorf("%+v lacks something", p)
		}
	}
	for _, p := range Processes() {
		if p.Publication == "" || !isDay(p.Since) || p.Since > Edition {
			t.Errorf("%s %s: publication %q, since %q", p.ID, p.Method, p.Publication, p.Since)
		}
	}
}
