// Stillroom makes a website of a folder of recipes and show notes, and refuses
// to publish a canning recipe that no tested process stands behind.
package main

import (
	"fmt"
	"io"
	"os"
	"runtime/debug"
	"slices"
)

func main() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }

// What a run can come to.
const (
	succeeded = 0
	refused   = 1 // the site has errors, or warnings where those are not let pass
	failed    = 2 // the command could not do its work
)

// seldom is by how many per cent memory grows between two collections of
// garbage: a site is read once and kept, and collecting often costs a third of
// the time.
const seldom = 400

// run does what the arguments ask for, and gives the exit status. Results go to
// stdout, messages to stderr.
func run(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	debug.SetGCPercent(seldom)
	p := &program{in: stdin, out: stdout, err: stderr}
	if page, ok := helpFor(args); ok {
		fmt.Fprint(p.out, page)
		return succeeded
	}
	if slices.Equal(args, []string{"--version"}) {
		fmt.Fprintln(p.out, "stillroom", versionName())
		return succeeded
	}
	if len(args) == 0 {
		fmt.Fprint(p.err, usage)
		return failed
	}
	c, err := parse(args)
	if err != nil {
		return p.fail(fmt.Errorf("%w; see %s --help", err, named(args)))
	}
	return c.run(p)
}

// A program is what a command may talk to.
type program struct {
	in       io.Reader
	out, err io.Writer
}

// say tells the user something that is not a result.
func (p *program) say(format string, args ...any) {
	fmt.Fprintln(p.err, visible(fmt.Sprintf(format, args...)))
}

// fail tells the user why a command could not do its work.
func (p *program) fail(err error) int {
	p.say("stillroom: %v", err)
	return failed
}
