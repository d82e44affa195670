package main

import (
	"cmp"
	"fmt"
	"io"
	"slices"
	"strings"
	"text/tabwriter"

	"stillroom/content"
	"stillroom/validate"
)

const processesHelp = `List published tested processes, or show one in full.

    stillroom processes [WORDS]

WORDS narrow the list by food, id, method and pack. A whole id shows the times
and pressures for every jar and altitude, and where they were published. What
was written down from memory, and not seen in a published copy, is marked.

For example:

    stillroom processes beans raw
    stillroom processes green-beans-raw
`

type processesCommand struct {
	Words []string `arg:"" optional:""`
}

func (c *processesCommand) run(p *program) int {
	all := validate.Processes()
	if len(c.Words) == 1 {
		exact := slices.DeleteFunc(slices.Clone(all), func(t *validate.Process) bool { return t.ID != c.Words[0] })
		for i, t := range exact {
			if i > 0 {
				fmt.Fprintln(p.out)
			}
			writeProcess(p.out, t)
		}
		if len(exact) > 0 {
			return succeeded
		}
	}
	found := slices.DeleteFunc(slices.Clone(all), func(t *validate.Process) bool { return !speaksOf(t, c.Words) })
	if len(found) == 0 {
		return p.fail(noProcess(c.Words))
	}
	return listProcesses(p.out, found)
}

// speaksOf reports whether every word stands in what is said of a process.
func speaksOf(t *validate.Process, words []string) bool {
	text := strings.ToLower(strings.Join([]string{t.ID, t.Food, string(t.Method), string(t.Pack)}, " "))
	return !slices.ContainsFunc(words, func(w string) bool { return !strings.Contains(text, strings.ToLower(w)) })
}

// noProcess offers the IDs that are nearest to the words.
func noProcess(words []string) error {
	_, why := validate.FindProcess(strings.ToLower(strings.Join(words, "-")), "", "")
	return fmt.Errorf("no process has the words %s%s; to list them all, stillroom processes",
		strings.Join(words, " "), didYouMean(strings.Join(why.Nearest, " or ")))
}

func listProcesses(w io.Writer, all []*validate.Process) int {
	t := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	for _, p := range all {
		fmt.Fprintf(t, "%s\t%s\t%s\t%s\t%s%s\n", p.ID, p.Method, cmp.Or(string(p.Pack), "-"), jarNames(p), p.Food, howSeen(p))
	}
	t.Flush()
	return succeeded
}

func jarNames(p *validate.Process) string {
	var names []string
	for _, j := range p.Jars {
		names = append(names, cmp.Or(j.Jar, "any jar"))
	}
	return strings.Join(names, " ")
}

// howSeen says how much of a process is from memory; nothing if none is.
func howSeen(p *validate.Process) string {
	unseen, all := p.FromMemory()
	switch unseen {
	case 0:
		return ""
	case all:
		return " [from memory]"
	}
	return fmt.Sprintf(" [%d of %d figures from memory]", unseen, all)
}

// writeProcess shows a process in full: for each jar its times, and for each
// gauge its pressures, and then where all that stands.
func writeProcess(w io.Writer, p *validate.Process) {
	fmt.Fprintf(w, "%s: %s\n%s", p.ID, p.Food, p.Method)
	if p.Pack != "" {
		fmt.Fprintf(w, ", %s pack", p.Pack)
	}
	fmt.Fprintln(w)
	var sources []string
	for _, j := range p.Jars {
		writeJar(w, j)
		for _, s := range j.Schedules {
			sources = append(sources, dated(s.Source(p)))
		}
	}
	fmt.Fprintln(w)
	slices.Sort(sources)
	for _, s := range slices.Compact(sources) {
		fmt.Fprintf(w, "Source: %s\n", s)
	}
	if p.Edition != "" {
		fmt.Fprintf(w, "Its edition: %s\n", p.Edition)
	}
	fmt.Fprintf(w, "Edition of these tables: %s; the figures stand so since that of %s\n", validate.Edition, p.Since)
}

func writeJar(w io.Writer, j validate.JarProcess) {
	fmt.Fprintf(w, "\n%s", cmp.Or(j.Jar, "any jar"))
	if j.Headspace != nil {
		inches := content.Quantity{Low: j.Headspace, High: j.Headspace, Unit: content.Inch}
		fmt.Fprintf(w, ", headspace %s", inches)
	}
	fmt.Fprintln(w)
	for _, s := range j.Schedules {
		if s.Name != "" {
			fmt.Fprintf(w, "  %s\n", s.Name)
		}
		for _, b := range s.Bands {
			line := fmt.Sprintf("    %-15s  %7s  %6s%s", bandName(b), figure(b.Minutes, "min"), figure(b.PSI, "psi"), mark(b))
			fmt.Fprintln(w, strings.TrimRight(line, " "))
		}
	}
}

// bandName says which altitudes a figure is for.
func bandName(b validate.TestedBand) string {
	if b.From == 0 && b.To == 0 {
		return "any altitude"
	}
	return b.String()
}

func figure(n int, unit string) string {
	if n == 0 {
		return ""
	}
	return fmt.Sprintf("%d %s", n, unit)
}

func mark(b validate.TestedBand) string {
	if b.FromMemory() {
		return "  [from memory]"
	}
	return ""
}
