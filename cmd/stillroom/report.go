package main

import (
	"bufio"
	"encoding/json"
	"fmt"
	"io"
	"strings"

	"stillroom/validate"
)

// writeText writes findings for people: each on a line of its own, with what to
// do and the source below, and a last line with the counts.
func writeText(w io.Writer, rep validate.Report, c colours) error {
	b := bufio.NewWriter(w)
	for _, f := range rep.Findings {
		writeFinding(b, f, c)
	}
	fmt.Fprintln(b, countsLine(rep.Counts))
	return b.Flush()
}

func writeFinding(w io.Writer, f validate.Finding, c colours) {
	fmt.Fprintf(w, "%s: %s: %s %s\n", visible(f.Pos.String()), c.severity(f.Severity), c.strong(visible(f.Message)), c.faint("["+f.Rule+"]"))
	for _, n := range f.Notes {
		fmt.Fprintf(w, "    %s: %s\n", visible(n.Pos.String()), visible(n.Message))
	}
	if f.Accepted != "" {
		fmt.Fprintf(w, "    Accepted: %s\n", visible(f.Accepted))
	}
	if f.Advice != "" {
		fmt.Fprintf(w, "    %s\n", visible(f.Advice))
	}
	if s := sourceText(f.Source); s != "" {
		fmt.Fprintf(w, "    %s\n", c.faint("Source: "+s))
	}
}

// sourceText names a source in a line.
func sourceText(s validate.Source) string {
	if s.Title == "" || s.Address == "" {
		return s.Title + s.Address
	}
	return s.Title + ", " + s.Address
}

func countsLine(c validate.Counts) string {
	return fmt.Sprintf("%s, %s, %s: %s, %s, %d advice",
		count(c.Recipes, "recipe"), count(c.Episodes, "episode"), count(c.Pages, "page"),
		count(c.Errors, "error"), count(c.Warnings, "warning"), c.Advice)
}

func count(n int, word string) string {
	if n == 1 {
		return "1 " + word
	}
	return fmt.Sprintf("%d %ss", n, word)
}

// A jsonReport is the report for other programs. Its shape is promised; changes
// are in it only if they are asked for.
type jsonReport struct {
	Findings []jsonFinding   `json:"findings"`
	Counts   validate.Counts `json:"counts"`
	Changes  []jsonChange    `json:"changes,omitempty"`
}

type jsonFinding struct {
	File     string `json:"file"`
	Line     int    `json:"line"`
	Column   int    `json:"column"`
	Rule     string `json:"rule"`
	Severity string `json:"severity"`
	Message  string `json:"message"`
	Advice   string `json:"advice"`
	Source   string `json:"source"`
}

// writeJSON writes findings for programs. What the author has accepted is no
// longer open, and is left out as it is from the counts.
func writeJSON(w io.Writer, rep validate.Report, changes []jsonChange) error {
	out := jsonReport{Findings: []jsonFinding{}, Counts: rep.Counts, Changes: changes}
	for _, f := range rep.Findings {
		if f.Accepted != "" {
			continue
		}
		out.Findings = append(out.Findings, jsonFinding{
			File: f.Pos.File, Line: f.Pos.Line, Column: f.Pos.Col,
			Rule: f.Rule, Severity: f.Severity.String(),
			Message: f.Message, Advice: strings.TrimSpace(f.Advice), Source: sourceText(f.Source),
		})
	}
	e := json.NewEncoder(w)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	return e.Encode(out)
}
