package validate

import (
	"fmt"
	"slices"
	"strings"

	"stillroom/content"
)

// A draft is a recipe that tests write from published values and then make
// worse.
type draft struct {
	name, kind, produce string
	ingredients         []string
	yield               string
	way                 content.Way
	process             string
	pack                content.Pack
	headspace           string
	acid                string
	sterilised          bool
	jars                []draftJar
}

// A draftJar is an entry of processing.
type draftJar struct {
	jar      string
	time     int // under pressure
	altitude []draftBand
	dial     []draftBand
	weighted []draftBand
}

// A draftBand is a band and its minutes, or its psi.
type draftBand struct {
	from, to int // feet; to is 0 for a band without an upper end
	value    int
}

func (d draft) clone() draft {
	d.ingredients = slices.Clone(d.ingredients)
	d.jars = slices.Clone(d.jars)
	for i := range d.jars {
		j := &d.jars[i]
		j.altitude, j.dial, j.weighted = slices.Clone(j.altitude), slices.Clone(j.dial), slices.Clone(j.weighted)
	}
	return d
}

// recipe reads the draft as a cook would have written it.
func (d draft) recipe() (*content.Recipe, []content.Fault) {
	return content.ReadRecipe("draft.md", []byte(d.text()))
}

func (d draft) text() string {
	var b strings.Builder
	line := func(format string, args ...any) { fmt.Fprintf(&b, format+"\n", args...) }
	line("---\nname: %q\nsummary: A published recipe.\npublished: 2026-01-01\nkind: %s\nproduce: [%s]\nyield: %q\ningredients:", d.name, d.kind, d.produce, d.yield)
	for _, in := range d.ingredients {
		line("  - %q", in)
	}
	line("keeping:\n  - way: %s", d.way)
	key := func(name, value string) {
		if value != "" {
			line("    %s: %s", name, value)
		}
	}
	key("process", d.process)
	key("pack", string(d.pack))
	key("headspace", d.headspace)
	key("acid", d.acid)
	if d.sterilised {
		key("jars_sterilised", "true")
	}
	line("    processing:")
	for _, j := range d.jars {
		line("      - jar: %s", j.jar)
		if j.time > 0 {
			line("        time: %d min", j.time)
		}
		writeBands(&b, "altitude", "min", j.altitude)
		writeBands(&b, "dial", "psi", j.dial)
		writeBands(&b, "weighted", "psi", j.weighted)
	}
	line("    keeps: 12 months\n---\n\n1. Wash your hands.")
	if d.sterilised {
		line("2. Boil the empty jars for 10 minutes to sterilise them.")
	}
	return b.String()
}

func writeBands(b *strings.Builder, key, unit string, bands []draftBand) {
	if len(bands) == 0 {
		return
	}
	fmt.Fprintf(b, "        %s:\n", key)
	for _, x := range bands {
		if x.to == 0 {
			fmt.Fprintf(b, "          above %d ft: %d %s\n", x.from-1, x.value, unit)
			continue
		}
		fmt.Fprintf(b, "          %d-%d ft: %d %s\n", x.from, x.to, x.value, unit)
	}
}

// errorsIn gives what stops the draft from being published.
func (d draft) errorsIn() []Finding {
	r, faults := d.recipe()
	fs := checkRecipe(r, Rules)
	for _, f := range faults {
		fs = append(fs, faultFinding(f))
	}
	return slices.DeleteFunc(fs, func(f Finding) bool { return f.Severity != Error })
}
