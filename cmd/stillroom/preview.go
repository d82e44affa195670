package main

import (
	"context"
	"net/http"
	"os"
	"os/signal"
	"syscall"
	"time"

	"stillroom/build/preview"
	"stillroom/build/preview/watch"
	"stillroom/content"
)

const previewHelp = `Look at a site while you write it: drafts and what is scheduled are shown, and
marked; what the rules find stands where it is meant; each page changes as soon
as you save.

    stillroom preview [SITE] [--address 127.0.0.1:4747] [--poll]

    --address HOST:PORT   where to answer browsers. Without it only this machine
                          can look, and if the port is taken the next one is
                          used. 0.0.0.0:4747 lets a telephone look too, and
                          everybody else in your network
    --poll                look for changes every second, on a disk that does not
                          tell of them: some network drives, some containers

For example:

    stillroom preview ~/larder

It prints the address to open. Interrupt it (Ctrl-C) to end it. It writes nothing
into the site: to have readers see what you see, publish.
`

type previewCommand struct {
	Site    string `arg:"" optional:"" default:"."`
	Address string
	Poll    bool
}

func (c *previewCommand) run(p *program) int {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	defer stop()
	context.AfterFunc(ctx, stop) // whoever interrupts twice does not want to wait
	if err := c.show(ctx, p); err != nil {
		return p.fail(err)
	}
	return succeeded
}

// show answers browsers until the context is done.
func (c *previewCommand) show(ctx context.Context, p *program) error {
	if err := isSite(c.Site); err != nil {
		return err
	}
	door, err := c.open(p)
	if err != nil {
		return err
	}
	defer door.Close()
	changes := c.watch(ctx, p)
	shown := preview.New(preview.Folder(c.Site), func() content.Date { return day{}.orToday() }, p.spoken(openCache()))
	shown.Built = p.sayBuilt
	progress := p.startProgress()
	progress.begin("reading")
	err = shown.Open(progress.step)
	progress.end()
	if err != nil {
		return err
	}
	p.sayShown(c.Site, door, shown.Now())
	go shown.Follow(ctx, changes)
	return serve(ctx, door, shown)
}

// watch tells which files change, or has all of them looked at where the system
// does not tell.
func (c *previewCommand) watch(ctx context.Context, p *program) <-chan watch.Batch {
	if !c.Poll {
		changes, err := watch.Folder{Dir: c.Site, Ignores: preview.Ignores}.Watch(ctx)
		if err == nil {
			return changes
		}
		p.say("The system does not tell of changes (%v), so the files are looked at every second.", err)
	}
	return watch.Poll(ctx, time.Second)
}

// goodbye is how long browsers have to fetch what they have asked for.
const goodbye = time.Second

func serve(ctx context.Context, d *door, shown *preview.Preview) error {
	s := &http.Server{Handler: shown.Handler(d.hosts), ReadHeaderTimeout: 10 * time.Second}
	ended := make(chan error, 1)
	go func() { ended <- s.Serve(d) }()
	select {
	case err := <-ended:
		return err
	case <-ctx.Done():
	}
	shown.Close()
	last, cancel := context.WithTimeout(context.Background(), goodbye)
	defer cancel()
	if s.Shutdown(last) != nil {
		s.Close()
	}
	return nil
}
