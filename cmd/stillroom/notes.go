package main

import (
	"fmt"
	"slices"
	"strings"

	"stillroom/build"
	"stillroom/content"
)

const notesHelp = `Print the show notes of an episode, to paste where the programme is listed.

    stillroom notes FILE [--format text|html]

    --format text    as plain text, with the address behind each link
    --format html    as HTML of paragraphs, lists and links alone

For example; with "| wl-copy" after it, straight onto the clipboard of a Linux
desktop:

    stillroom notes content/episodes/five-per-cent.md --format html

Without --format both are printed, first the text. Each has at most 4,000 bytes,
since directories and players cut what is longer. Where there is no room for all,
parts are left out whole, and it is said which: first the links, then what comes
next, then sections of the notes from the last, then the chapters and the recipes.
A section goes from one heading to the next, and is never cut, for a figure may
depend on the sentence after it: part long notes by headings.

An episode with errors gets no notes.
`

type notesCommand struct {
	File   string `arg:"" name:"FILE"`
	Format string `enum:"text,html," default:""`
}

// mostBytes is how long a description may be in bytes of UTF-8: PSP-1, The
// Podcast RSS Standard (2023-08-07).
const mostBytes = 4000

func (c *notesCommand) run(p *program) int {
	site, ep, status := p.episode(c.File)
	if ep == nil {
		return status
	}
	passages := build.Passages(site, ep, day{}.orToday())
	if site.Settings.Address.V == "" {
		p.say("There are no links to recipes, for want of an address in content/site.yaml.")
	}
	if c.Format != "html" {
		status = p.printNotes("plain text", passages, func(n build.Passage) string { return n.Text })
	}
	if c.Format == "" {
		fmt.Fprintln(p.out)
	}
	if c.Format != "text" && status == succeeded {
		status = p.printNotes("HTML", passages, func(n build.Passage) string { return n.HTML })
	}
	return status
}

// printNotes prints passages in a form, and says what had no place.
func (p *program) printNotes(form string, passages []build.Passage, of func(build.Passage) string) int {
	text, left := build.Fit(passages, mostBytes, of)
	if _, err := fmt.Fprint(p.out, text); err != nil {
		return p.fail(fmt.Errorf("write the notes: %w", err))
	}
	p.say("%s: %s.", strings.ToUpper(form[:1])+form[1:], count(len(text), "byte"))
	if len(left) > 0 {
		p.say("Left out of the %s, for want of room: %s.", form, strings.Join(left, "; "))
	}
	return succeeded
}

// episode reads and judges the episode of a file. It is nil if there is none,
// or if it has errors: then the user has been told, and status is how that
// ends.
func (p *program) episode(name string) (site *content.Site, ep *content.Episode, status int) {
	j, file, status := p.judgeFile(name)
	if status != succeeded {
		return nil, nil, status
	}
	at := slices.IndexFunc(j.site.Episodes, func(e *content.Episode) bool { return e.File == file })
	if at < 0 {
		return nil, nil, p.fail(fmt.Errorf("%s is no episode: those lie in content/episodes", name))
	}
	return j.site, j.site.Episodes[at], succeeded
}
