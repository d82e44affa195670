package validate

import (
	"cmp"
	"math/big"
	"slices"
	"strings"
	"sync"

	"stillroom/content"
)

// A Process is a published tested process of one food for one method and one
// pack. Nobody may change it.
type Process struct {
	ID          string // green-beans-raw
	Food        string // as published: "green beans (snap, wax, italian), pieces"
	Method      content.Way
	Pack        content.Pack // empty where the publication names none
	Jars        []JarProcess // smallest first
	Publication string
	Table       string // of its first schedule; the tables of dial and weighted gauges have names of their own
	Facts              // what holds for the food whatever the method
}

// A JarProcess is what a process asks of one size of jar.
type JarProcess struct {
	Jar       string   // half-pint, pint, quart, half-gallon; empty where none is published
	Headspace *big.Rat // inches; nil where none is published
	Schedules []Schedule
}

// A Schedule is one whole way to process a jar: one for boiling water; for
// pressure one for each gauge, and where the publication offers a choice of
// pressures one for each of them.
type Schedule struct {
	Name  string       // dial, weighted-10; empty for boiling water
	Gauge string       // dial, weighted; empty for boiling water
	Bands []TestedBand // lowest first, without gaps
	Table string       // where in the publication it stands
}

// A TestedBand is one published figure.
type TestedBand struct {
	From, To int    // feet; To is 0 where the band has no upper end
	Minutes  int    // 0 only for what is kept in the refrigerator and not heated
	PSI      int    // 0 for boiling water
	Evidence string // address of a published copy, or "memory"
}

// FromMemory reports whether the figure was not seen in a published copy.
func (b TestedBand) FromMemory() bool { return b.Evidence == memory }

// Gauge names of schedules.
const (
	DialGauge     = "dial"
	WeightedGauge = "weighted"
)

// FromMemory counts the figures of the process that were not seen in a
// published copy, and all of them.
func (p *Process) FromMemory() (unseen, all int) {
	for _, j := range p.Jars {
		for _, s := range j.Schedules {
			for _, b := range s.Bands {
				all++
				if b.FromMemory() {
					unseen++
				}
			}
		}
	}
	return unseen, all
}

// Source is where the process was published: with the address of a copy that
// was seen, if any was.
func (p *Process) Source() Source {
	title := p.Publication + ": " + p.Table
	for _, j := range p.Jars {
		for _, s := range j.Schedules {
			for _, b := range s.Bands {
				if !b.FromMemory() {
					return sourceOf(title, b.Evidence)
				}
			}
		}
	}
	return sourceOf(title, memory)
}

// Source is where the schedule stands in the publication of its process.
func (s Schedule) Source(p *Process) Source {
	return sourceOf(p.Publication+": "+s.Table, s.Bands[0].Evidence)
}

// Largest is the largest jar that was tested; empty where none is published.
func (p *Process) Largest() string { return p.Jars[len(p.Jars)-1].Jar }

// Jar gives what the process asks of a size of jar: that of the size itself,
// or of the next published size up, as for a size that was not tested. It is
// nil for a jar larger than any that was.
func (p *Process) Jar(j content.Jar) (tested *JarProcess, exact bool) {
	size, ok := jarOunces(j)
	if !ok {
		return nil, false
	}
	for i := range p.Jars {
		published := JarOunces(p.Jars[i].Jar)
		if published == nil {
			continue // kept in whatever jar there is
		}
		if c := size.Cmp(published); c <= 0 {
			return &p.Jars[i], c == 0
		}
	}
	return nil, false
}

// Missing says why no process was found. The zero Missing says that one was.
type Missing struct {
	Unknown bool           // nothing is published by that ID
	Nearest []string       // with Unknown: the IDs most like it, best first; empty if none is near
	Ways    []content.Way  // the ID is known, but for these methods only
	Packs   []content.Pack // the ID is known for the method, but for these packs only
	Instead []string       // with Ways or Packs: IDs of the same food that have what was asked for
}

// Processes gives every process, in order of ID and method. Nobody may change
// them.
func Processes() []*Process { return processes() }

// FindProcess gives the process of that ID for a way of keeping and a pack;
// an empty pack stands for any. Atmospheric steam uses the boiling-water
// processes of acid and acidified foods. If p is nil, why says what is missing.
func FindProcess(id string, way content.Way, pack content.Pack) (p *Process, why Missing) {
	all := processes()
	i, ok := slices.BinarySearchFunc(all, id, func(p *Process, id string) int { return strings.Compare(p.ID, id) })
	if !ok {
		return nil, Missing{Unknown: true, Nearest: nearestIDs(id)}
	}
	method := way
	if way == content.AtmosphericSteam {
		method = content.BoilingWater
	}
	for ; i < len(all) && all[i].ID == id; i++ {
		p := all[i]
		switch {
		case p.Method != method, way == content.AtmosphericSteam && p.Acidity == LowAcid:
			why.Ways = append(why.Ways, p.Method)
		case pack != "" && p.Pack != "" && p.Pack != pack:
			why.Packs = append(why.Packs, p.Pack)
		default:
			return p, Missing{}
		}
	}
	if len(why.Packs) > 0 {
		why.Ways = nil
	}
	why.Instead = sameFood(all[i-1].Food, method, pack)
	return nil, why
}

// sameFood gives the IDs of the processes of a food for a method and a pack.
func sameFood(food string, method content.Way, pack content.Pack) []string {
	var ids []string
	for _, p := range processes() {
		if p.Food == food && p.Method == method && (pack == "" || p.Pack == pack) {
			ids = append(ids, p.ID)
		}
	}
	return ids
}

// nearestIDs gives the IDs that are most like a misspelt one, at most three.
func nearestIDs(id string) []string {
	var ids []string
	for _, p := range processes() {
		ids = append(ids, p.ID)
	}
	return nearest(id, slices.Compact(ids), 3)
}

var processes = sync.OnceValue(loadProcesses)

func loadProcesses() []*Process {
	publications := map[string]string{}
	for _, r := range readTable("publications.tsv") {
		publications[r.text("key")] = r.text("title")
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
			Publication: publications[r.text("publication")],
			Facts:       facts[r.text("process")],
		}
		all = append(all, p)
		byKey[p.ID+" "+r.text("method")] = p
	}
	for _, r := range readTable("schedules.tsv") {
		byKey[r.text("process")+" "+r.text("method")].add(r)
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
