package validate

import (
	"embed"
	"slices"
	"strings"

	"github.com/rogpeppe/go-internal/txtar"
)

// The cases that each rule is tested with are also what the handbook shows.
//
//go:embed testdata/*.txtar
var caseFiles embed.FS

// An Example is a file as a cook may write it, and what a rule says of it.
type Example struct {
	Name string   // headspace-of-a-quarter.md
	Text string   // the whole file
	Says []string // a line for each finding; none if the rule lets it pass
}

// Examples gives one file that a rule refuses, and one like it that it lets
// pass. Both are cases of its test.
func (r *Rule) Examples() (refused, passed Example) {
	all := r.cases()
	for _, e := range all {
		if len(e.Says) > 0 && (refused.Name == "" || e.length() < refused.length()) {
			refused = e
		}
	}
	for _, e := range all {
		if len(e.Says) == 0 && (passed.Name == "" || likeness(e, refused) > likeness(passed, refused)) {
			passed = e
		}
	}
	return refused, passed
}

// cases gives the files of the rule's test.
func (r *Rule) cases() []Example {
	text, err := caseFiles.ReadFile("testdata/" + r.ID + ".txtar")
	if err != nil {
		return nil
	}
	ar := txtar.Parse(text)
	var said []string
	for _, f := range ar.Files {
		if f.Name == "want" {
			said = strings.Split(strings.TrimSuffix(string(f.Data), "\n"), "\n")
		}
	}
	var all []Example
	for _, f := range ar.Files {
		if f.Name == "want" {
			continue
		}
		e := Example{Name: f.Name, Text: string(f.Data)}
		for _, line := range said {
			if strings.HasPrefix(line, f.Name+":") {
				e.Says = append(e.Says, line)
			}
		}
		all = append(all, e)
	}
	return all
}

// length is how much there is to read in an example.
func (e Example) length() int { return len(e.Text) + len(strings.Join(e.Says, "\n")) }

// likeness counts the lines that two files share, and puts files of the same
// folder first.
func likeness(a, b Example) int {
	lines := strings.Split(b.Text, "\n")
	n := 0
	for line := range strings.SplitSeq(a.Text, "\n") {
		if slices.Contains(lines, line) {
			n++
		}
	}
	if folderOf(a.Name) == folderOf(b.Name) {
		n += 1000
	}
	return n
}

func folderOf(name string) string { return name[:strings.LastIndex(name, "/")+1] }
