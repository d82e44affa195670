package main

import (
	"fmt"
	"io"
	"strings"
	"text/tabwriter"

	"stillroom/build"
)

// writeScaled writes a recipe for people at a terminal.
func writeScaled(w io.Writer, s build.Scaled) error {
	fmt.Fprintf(w, "%s\n\n%s\n", s.Name, strings.Join(s.Says, "\n"))
	for _, g := range s.Groups {
		fmt.Fprintln(w)
		if g.For != "" {
			fmt.Fprintf(w, "For %s\n", g.For)
		}
		t := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
		if len(s.Pots) > 0 {
			fmt.Fprintf(t, "    %s\n", strings.Join(append([]string{"in all"}, s.Pots...), "\t"))
		}
		for _, l := range g.Lines {
			cells := append([]string{l.Total}, l.Pots...)
			for len(cells) < len(s.Pots)+1 {
				cells = append(cells, "")
			}
			fmt.Fprintf(t, "    %s\t%s\n", strings.Join(cells, "\t"), l.Item)
		}
		if err := t.Flush(); err != nil {
			return err
		}
	}
	for _, p := range s.Parts {
		fmt.Fprintln(w)
		if p.Heading != "" {
			fmt.Fprintln(w, p.Heading)
		}
		for i, step := range p.Steps {
			fmt.Fprintf(w, "%3d. %s\n", p.First+i, step)
		}
	}
	return writeLast(w, s, "Whatever the batch:", "    ")
}

// writeScaledMarkdown writes a recipe as Markdown. What could be taken for
// marks of emphasis is kept from being so.
func writeScaledMarkdown(w io.Writer, s build.Scaled) error {
	fmt.Fprintf(w, "# %s\n\n%s\n\n## Ingredients\n", plainMarks.Replace(s.Name), strings.Join(s.Says, " "))
	for _, g := range s.Groups {
		fmt.Fprintln(w)
		if g.For != "" {
			fmt.Fprintf(w, "### For %s\n\n", plainMarks.Replace(g.For))
		}
		for _, l := range g.Lines {
			fmt.Fprintf(w, "- %s\n", plainMarks.Replace(lineInWords(s.Pots, l)))
		}
	}
	fmt.Fprintln(w, "\n## Method")
	for _, p := range s.Parts {
		fmt.Fprintln(w)
		if p.Heading != "" {
			fmt.Fprintf(w, "### %s\n\n", plainMarks.Replace(p.Heading))
		}
		for i, step := range p.Steps {
			fmt.Fprintf(w, "%d. %s\n", p.First+i, plainMarks.Replace(step))
		}
	}
	return writeLast(w, s, "## Whatever the batch\n", "- ")
}

var plainMarks = strings.NewReplacer("*", `\*`, "_", `\_`, "`", "\\`", "<", "&lt;", "[", `\[`)

// lineInWords is 44 lb (22 lb each batch) tomatoes.
func lineInWords(heads []string, l build.ScaledLine) string {
	s := l.Total
	var pots []string
	for i, p := range l.Pots {
		pots = append(pots, p+" "+heads[i])
	}
	if len(pots) > 0 {
		s += " (" + strings.Join(pots, ", ") + ")"
	}
	return strings.TrimSpace(s + " " + l.Item)
}

// writeLast writes what no batch changes.
func writeLast(w io.Writer, s build.Scaled, head, before string) error {
	if len(s.Canner) == 0 {
		return nil
	}
	_, err := fmt.Fprintf(w, "\n%s\n%s%s\n", head, before, strings.Join(s.Canner, "\n"+before))
	return err
}
