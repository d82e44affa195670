package main

import (
	"context"
	"io/fs"
	"os"
	"os/signal"
	"syscall"

	"stillroom/build/editor"
	"stillroom/build/preview"
	"stillroom/content"
)

const editorHelp = `Answer a text editor while you write: what is found stands in the text as you
type, keys and words are offered, whatever the cursor is on is explained with the
tested values and their source, and the values can be written in.

    stillroom editor [SITE]

It speaks the Language Server Protocol on standard input and output, and is
started by the text editor, not by hand. SITE is the folder that holds content/;
the folder that the text editor has open if you leave it out. The README shows
how three editors are told of it. It writes nothing: what is to be changed in a
file, your text editor changes.

For example, what a text editor runs:

    stillroom editor ~/larder
`

type editorCommand struct {
	Site string `arg:"" optional:""`
}

func (c *editorCommand) run(p *program) int {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	defer stop()
	s := editor.Server{Dir: c.Site, Open: openSite, Day: func() content.Date { return day{}.orToday() }, Schema: vocabulary}
	if err := s.Serve(ctx, p.in, p.out); err != nil {
		p.say("stillroom: %v", err)
		return refused // as the protocol has it
	}
	return succeeded
}

// openSite gives the files of a site's folder.
func openSite(dir string) (fs.FS, error) {
	if err := isSite(dir); err != nil {
		return nil, err
	}
	return preview.Folder(dir), nil
}
