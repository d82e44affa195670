package main

import (
	"context"
	"errors"
	"fmt"
	"os"
	"os/signal"
	"path/filepath"
	"syscall"

	"stillroom/build"
	"stillroom/build/ship"
)

// ship sends a site to a server or into a store. Whoever interrupts it leaves a
// working site there; whoever does so twice does not wait for it.
func (c *publishCommand) ship(p *program, to ship.Address, files []build.File, progress *progress) (said func(), err error) {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	defer stop()
	context.AfterFunc(ctx, stop)
	run := &ship.Run{To: to, TakeOver: c.TakeOver, Say: progress.say, Progress: func(what string) ship.Progress {
		progress.begin(what)
		return progress.step
	}}
	if c.DryRun {
		plan, err := run.Look(ctx, files)
		return func() { p.listPlan(plan) }, stopped(err)
	}
	seat, leave, err := ship.TakeSeat(seats(), to)
	if err != nil {
		return nil, err
	}
	defer leave()
	run.Seat = seat
	plan, err := run.Ship(ctx, files)
	return func() { p.sayShipped(to, files, plan) }, stopped(err)
}

// seats is the folder in which this machine notes who sends where.
func seats() string {
	dir, err := os.UserCacheDir()
	if err != nil {
		return os.DevNull // where no folder can be made
	}
	return filepath.Join(dir, "stillroom", "seats")
}

func stopped(err error) error {
	if errors.Is(err, context.Canceled) {
		return errors.New("stopped; what is there is a working site, and the next publish goes on")
	}
	return err
}

func (p *program) sayShipped(to ship.Address, files []build.File, plan *ship.Plan) {
	n, size := weigh(plan)
	p.say("Published %s to %s: %s sent (%s), %d removed, %d as they were.",
		count(pagesOf(files), "page"), to, count(n, "file"), size, len(plan.Remove), plan.Same)
	if len(plan.Foreign) > 0 {
		p.say("Left alone, since Stillroom did not put it there: %s.", someOf(plan.Foreign))
	}
}

// listPlan prints what would be done, in the order in which it would.
func (p *program) listPlan(plan *ship.Plan) {
	for _, f := range plan.Send {
		why := "changed"
		if f.New {
			why = "new"
		}
		fmt.Fprintf(p.out, "send    %-8s %8s  %s\n", why, inBytes(f.Size), f.Path)
	}
	for _, f := range plan.Remove {
		fmt.Fprintf(p.out, "remove                     %s\n", f)
	}
	for _, f := range plan.Foreign {
		fmt.Fprintf(p.out, "leave   not ours           %s\n", f)
	}
	n, size := weigh(plan)
	p.say("Nothing was changed. %s (%s) would be sent, %d removed; %d are there as they should be.", count(n, "file"), size, len(plan.Remove), plan.Same)
}

func weigh(plan *ship.Plan) (files int, size string) {
	var sum int64
	for _, f := range plan.Send {
		sum += f.Size
	}
	return len(plan.Send), inBytes(sum)
}

// inBytes writes a size as people read it.
func inBytes(n int64) string {
	switch {
	case n < 10_000:
		return fmt.Sprintf("%d B", n)
	case n < 10_000_000:
		return fmt.Sprintf("%d KB", (n+500)/1000)
	}
	return fmt.Sprintf("%d MB", (n+500_000)/1_000_000)
}

// lookInto lists what publishing into a folder would do.
func (p *program) lookInto(dir string, files []build.File) (said func(), err error) {
	changed, gone, err := build.Output{Dir: dir}.Look(files)
	return func() {
		for _, f := range changed {
			fmt.Fprintf(p.out, "write   %s\n", f)
		}
		for _, f := range gone {
			fmt.Fprintf(p.out, "remove  %s\n", f)
		}
		p.say("Nothing was changed. Of %s in %s %d would be written, %d removed.", count(len(files), "file"), dir, len(changed), len(gone))
	}, err
}
