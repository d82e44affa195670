package main

import (
	"fmt"
	"regexp"
	"strings"
	"time"
)

const manualHelp = `Print all that the commands say of themselves as a page for man.

    stillroom manual

It is written in mdoc, which man reads on Linux, macOS and the BSDs. For example:

    stillroom manual

Keep what it prints as stillroom.1, in the folder man1 below one of those that
manpath names, such as ~/.local/share/man; then man stillroom shows it.
`

type manualCommand struct{}

func (*manualCommand) run(p *program) int {
	if _, err := fmt.Fprint(p.out, manual()); err != nil {
		return p.fail(fmt.Errorf("write the manual: %w", err))
	}
	return succeeded
}

// manual is the pages of help in mdoc(7).
func manual() string {
	var b strings.Builder
	fmt.Fprintf(&b, ".Dd %s\n.Dt STILLROOM 1\n.Os\n.Sh NAME\n.Nm stillroom\n.Nd make a website of recipes for keeping food\n", manualDay())
	b.WriteString(".Sh SYNOPSIS\n.Nm\n.Ar COMMAND\n.Op Ar SITE\n.Sh DESCRIPTION\n")
	setPage(&b, usage)
	b.WriteString(".Sh COMMANDS\n")
	for _, o := range outlines() {
		fmt.Fprintf(&b, ".Ss %s\n", o.Name)
		setPage(&b, pages[o.Name])
	}
	return b.String()
}

// manualDay is the day of the release as mdoc has it; empty if there was none.
func manualDay() string {
	day, err := time.Parse(time.DateOnly, released)
	if err != nil {
		return ""
	}
	return day.Format("January 2, 2006")
}

// An entry of a list in a page is indented by four, and what it means stands apart.
var entry = regexp.MustCompile(`^    (--\S+(?: \S+)?|\S+(?: \S+)*) {2,}(\S.*)$`)

// setPage sets a page of help: its paragraphs, its lists, and what is typed or printed.
func setPage(b *strings.Builder, page string) {
	for i, block := range strings.Split(strings.TrimRight(page, "\n"), "\n\n") {
		lines := strings.Split(block, "\n")
		switch {
		case !strings.HasPrefix(block, "    "):
			if i > 0 {
				b.WriteString(".Pp\n")
			}
			setText(b, lines)
		case isList(lines[0]):
			setList(b, lines)
		default:
			b.WriteString(".Bd -literal -offset indent\n")
			for _, line := range lines {
				b.WriteString(roff(strings.TrimPrefix(line, "    ")) + "\n")
			}
			b.WriteString(".Ed\n")
		}
	}
}

// isList tells a list from what is typed, by its first line: words that are
// printed side by side stand two apart, but for flags.
func isList(line string) bool {
	return entry.MatchString(line) && (strings.HasPrefix(line, "    --") || strings.Contains(strings.TrimSpace(line), "   "))
}

func setList(b *strings.Builder, lines []string) {
	b.WriteString(".Bl -tag -width 18n -compact\n")
	for _, line := range lines {
		if e := entry.FindStringSubmatch(line); e != nil {
			fmt.Fprintf(b, ".It Ic %s\n", roff(e[1]))
			line = e[2]
		}
		setText(b, []string{strings.TrimSpace(line)})
	}
	b.WriteString(".El\n")
}

// setText begins a line with each sentence, by which man knows how far to space them.
func setText(b *strings.Builder, lines []string) {
	text := sentenceEnd.ReplaceAllString(strings.Join(lines, "\n"), "$1\n")
	for line := range strings.SplitSeq(text, "\n") {
		b.WriteString(roff(line) + "\n")
	}
}

var sentenceEnd = regexp.MustCompile(`([a-z)][.?!]) +`)

// roff writes a line so that all of it is text, and hyphens can be copied.
func roff(line string) string {
	line = strings.NewReplacer(`\`, `\e`, "-", `\-`).Replace(line)
	if strings.HasPrefix(line, ".") || strings.HasPrefix(line, "'") {
		return `\&` + line
	}
	return line
}
