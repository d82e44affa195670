package validate

import (
	"embed"
	"fmt"
	"math/big"
	"strconv"
	"strings"
	"sync"
)

// Edition is the day on which the tables were last compared, as a whole, with
// the published copies that their rows name.
const Edition = "2026-11-25"

// The tables are plain text, one row a line, the cells parted by tabs, the
// first line naming them. They are the only place where a figure stands.
//
// A row says where its figure was published, and how it was seen: a number is
// a line of evidence.tsv, the address of a published copy; "m" is a figure
// from memory; "practice" is common practice without a source.
//
// To refresh them, take the new edition of a publication, go through the rows
// that name it, correct each against the page, and give the row the number of
// the address that was read (add it to the end of evidence.tsv). Figures that
// are no longer published go; a notice that overrules a row is a row of
// notices.tsv and wins. What changed in the guidance, each notice among it, is a
// row of changes.tsv with the new edition, so that recipes that were checked
// before are told. Then set Edition, correct the counts in tables_test.go, run
// TestProcessEditions with -update, which gives the edition to the processes
// whose figures are others now, run the tests of this package, and read the
// diff row by row: no figure may be interpolated, rounded or shortened.
//
//go:embed tables/*.tsv
var tableFiles embed.FS

// A row is a line of a table, by the names of its columns.
type row struct {
	columns map[string]int
	cells   []string
	place   string // schedules.tsv:12
}

// readTable gives the rows of a table.
func readTable(name string) []row {
	text, err := tableFiles.ReadFile("tables/" + name)
	if err != nil {
		panic(err)
	}
	head, body, _ := strings.Cut(strings.TrimSuffix(string(text), "\n"), "\n")
	columns := map[string]int{}
	for i, c := range strings.Split(head, "\t") {
		columns[c] = i
	}
	var rows []row
	line := 1
	for s := range strings.SplitSeq(body, "\n") {
		line++
		r := row{columns, strings.Split(s, "\t"), name + ":" + strconv.Itoa(line)}
		if len(r.cells) != len(columns) {
			panic(fmt.Sprintf("%s has %d cells, not %d", r.place, len(r.cells), len(columns)))
		}
		rows = append(rows, r)
	}
	return rows
}

// text gives a cell; empty if nothing stands in it.
func (r row) text(column string) string {
	i, ok := r.columns[column]
	if !ok {
		panic(r.place + " has no column " + column)
	}
	return r.cells[i]
}

// list gives the parts of a cell that holds several, parted by "; ".
func (r row) list(column string) []string {
	s := r.text(column)
	if s == "" {
		return nil
	}
	return strings.Split(s, "; ")
}

// rat gives an exact number, or nil for an empty cell.
func (r row) rat(column string) *big.Rat {
	s := r.text(column)
	if s == "" {
		return nil
	}
	return r.number(s)
}

func (r row) number(s string) *big.Rat {
	n, ok := new(big.Rat).SetString(s)
	if !ok {
		panic(fmt.Sprintf("%s: %q is no number", r.place, s))
	}
	return n
}

// whole gives a whole number; 0 for an empty text.
func (r row) whole(s string) int {
	if s == "" {
		return 0
	}
	n, err := strconv.Atoi(s)
	if err != nil {
		panic(fmt.Sprintf("%s: %v", r.place, err))
	}
	return n
}

// word gives the value that a cell names in a closed list of words.
func word[T any](r row, column string, known map[string]T) T {
	v, ok := known[r.text(column)]
	if !ok {
		panic(fmt.Sprintf("%s: unknown %s %q", r.place, column, r.text(column)))
	}
	return v
}

// The two kinds of evidence that are not an address.
const (
	memory   = "memory"                     // not seen in a published copy
	practice = "common practice, no source" // of the kitchen, not of a publication
)

// source makes a source of the publication that a column names, and of the
// first evidence of the row.
func (r row) source(column string) Source {
	first, _, _ := strings.Cut(r.text("evidence"), " ")
	return sourceOf(r.text(column), evidence(first))
}

// evidence gives what a code of an evidence cell stands for.
func evidence(code string) string {
	switch code {
	case "m":
		return memory
	case "practice":
		return practice
	}
	a, ok := addresses()[code]
	if !ok {
		panic("no evidence " + code)
	}
	return a
}

var addresses = sync.OnceValue(func() map[string]string {
	m := map[string]string{}
	for _, r := range readTable("evidence.tsv") {
		m[r.text("number")] = r.text("address")
	}
	return m
})

// sourceOf makes a source of a publication and its evidence.
func sourceOf(title, evidence string) Source {
	switch evidence {
	case memory, practice:
		return Source{Title: title + " (" + evidence + ")"}
	}
	return Source{Title: title, Address: evidence, Read: Edition}
}
