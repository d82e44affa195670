package main

import (
	"fmt"
	"io"
	"strings"
	"sync"
	"time"
)

// A progress tells how far a long task has come. A short one goes by without a
// word.
type progress struct {
	w     io.Writer
	live  bool // one line, written over and over
	start time.Time

	mu          sync.Mutex // guards what follows
	what        string
	done, total int
	shown       int // the length of the line that stands on the terminal
	stop        chan struct{}
}

// How long a task goes by without a word, and how often it is heard of then.
const (
	patience  = time.Second
	liveEvery = 100 * time.Millisecond
	lineEvery = 3 * time.Second
)

func (p *program) startProgress() *progress {
	pr := &progress{w: p.err, live: isTerminal(p.err), start: time.Now(), stop: make(chan struct{})}
	every := lineEvery
	if pr.live {
		every = liveEvery
	}
	go pr.tellEvery(every)
	return pr
}

// begin names the next part of the task.
func (p *progress) begin(what string) {
	p.mu.Lock()
	defer p.mu.Unlock()
	p.what, p.done, p.total = what, 0, 0
}

// step says how much of the part is done. It may be called from several
// goroutines.
func (p *progress) step(done, total int) {
	p.mu.Lock()
	defer p.mu.Unlock()
	p.done, p.total = done, total
}

// stepOf is step for one part of a task that is told apart from what follows.
func (p *progress) stepOf(what, after string) func(done, total int) {
	return func(done, total int) {
		p.begin(what)
		if done == total {
			p.begin(after)
			return
		}
		p.step(done, total)
	}
}

// say says a whole sentence while the task goes on.
func (p *progress) say(sentence string) {
	p.mu.Lock()
	defer p.mu.Unlock()
	p.clear()
	fmt.Fprintln(p.w, sentence)
}

// clear takes the line away that stands on the terminal.
func (p *progress) clear() {
	if p.shown > 0 {
		fmt.Fprintf(p.w, "\r%s\r", strings.Repeat(" ", p.shown))
	}
	p.shown = 0
}

// end falls silent, and leaves no half line behind.
func (p *progress) end() {
	close(p.stop)
	p.mu.Lock()
	defer p.mu.Unlock()
	p.clear()
	p.w = io.Discard
}

func (p *progress) tellEvery(d time.Duration) {
	tick := time.NewTicker(d)
	defer tick.Stop()
	for {
		select {
		case <-p.stop:
			return
		case now := <-tick.C:
			if now.Sub(p.start) >= patience {
				p.tell()
			}
		}
	}
}

func (p *progress) tell() {
	p.mu.Lock()
	defer p.mu.Unlock()
	line := p.what
	if p.total > 0 {
		line = fmt.Sprintf("%s %d of %d", p.what, p.done, p.total)
	}
	if !p.live {
		fmt.Fprintln(p.w, line)
		return
	}
	fmt.Fprintf(p.w, "\r%s%s", line, strings.Repeat(" ", max(0, p.shown-len(line))))
	p.shown = len(line)
}
