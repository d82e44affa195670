// Package watch tells which files of a folder may have changed.
package watch

import (
	"cmp"
	"context"
	"errors"
	"fmt"
	"os"
	"slices"
	"syscall"
	"time"

	"github.com/fsnotify/fsnotify"
)

// A Batch is what may have changed within a short while.
type Batch struct {
	Files []string // and folders, with /, relative to the one that is watched; in order
	All   bool     // what has changed is not known: look at every file
	Why   string   // why it is not known, for the author; empty if nothing is amiss
}

// A Folder is watched with all folders below it.
type Folder struct {
	Dir     string
	Ignores func(folder string) bool // whether nothing in or below a folder matters, by its path from Dir

	still time.Duration // in place of quiet, for tests on a busy machine
}

// How long a folder has to be quiet before a batch is told, and how long a
// batch waits for that at most: a file that is written again and again must
// still be seen.
const (
	quiet = 5 * time.Millisecond
	most  = 100 * time.Millisecond
)

// heartbeat is how often it is made sure that the folder is still the same one.
const heartbeat = 500 * time.Millisecond

// Watch tells of changes until the context is done. The error says why the
// system cannot watch; Poll still can.
func (f Folder) Watch(ctx context.Context) (<-chan Batch, error) {
	w := &watcher{tree: tree{Folder: f}, batches: make(chan Batch)}
	if err := w.begin(); err != nil {
		return nil, err
	}
	go w.run(ctx)
	return w.batches, nil
}

// Poll asks for a look at every file, over and over.
func Poll(ctx context.Context, every time.Duration) <-chan Batch {
	batches := make(chan Batch)
	go func() {
		for {
			select {
			case <-ctx.Done():
				return
			case <-time.After(every):
			}
			select {
			case <-ctx.Done():
				return
			case batches <- Batch{All: true}:
			}
		}
	}()
	return batches
}

// A watcher gathers what the system tells, in one goroutine that never waits
// for anybody: what is not fetched in time is lost.
type watcher struct {
	tree
	batches chan Batch
	changed map[string]bool
	next    Batch     // its All and Why
	since   time.Time // the first of changed was told; zero if nothing was
	timer   *time.Timer
}

// begin watches every folder that there is.
func (w *watcher) begin() error {
	w.changed = make(map[string]bool)
	if err := w.plant(); err != nil {
		return explained(err)
	}
	return nil
}

// explained says what may be done about a limit of the system.
func explained(err error) error {
	switch {
	case errors.Is(err, syscall.ENOSPC):
		return fmt.Errorf("the system watches no more folders; raise fs.inotify.max_user_watches: %w", err)
	case errors.Is(err, syscall.EMFILE):
		return fmt.Errorf("the system has no more watchers or open files; raise fs.inotify.max_user_instances or ulimit -n: %w", err)
	}
	return err
}

func (w *watcher) run(ctx context.Context) {
	defer func() { w.system.Close() }()
	w.timer = time.NewTimer(time.Hour)
	beat := time.NewTicker(heartbeat)
	defer beat.Stop()
	var out chan Batch // nil until a batch is ready
	var ready Batch
	for {
		select {
		case <-ctx.Done():
			return
		case e := <-w.system.Events:
			if w.record(e) {
				out = w.rest()
			}
		case err := <-w.system.Errors:
			w.lose(err)
			out = w.rest()
		case <-beat.C:
			if w.replaced() {
				out = w.rest()
			}
		case <-w.timer.C:
			if w.moved {
				w.lookAround()
			}
			ready, out = w.batch(), w.batches
		case out <- ready:
			w.changed, w.next, w.since, out = make(map[string]bool), Batch{}, time.Time{}, nil
		}
	}
}

// rest begins the quiet while anew, unless the batch has waited for long enough.
// Until it is over no batch is ready.
func (w *watcher) rest() chan Batch {
	now := time.Now()
	if w.since.IsZero() {
		w.since = now
	}
	w.timer.Reset(max(0, min(cmp.Or(w.still, quiet), w.since.Add(most).Sub(now))))
	return nil
}

func (w *watcher) batch() Batch {
	b := w.next
	for file := range w.changed {
		b.Files = append(b.Files, file)
	}
	slices.Sort(b.Files)
	return b
}

// record takes note of what the system tells, and reports whether it matters.
func (w *watcher) record(e fsnotify.Event) bool {
	name, ok := w.relative(e.Name)
	if !ok || name == "." || isPassing(name) {
		return false
	}
	switch {
	case w.known[name] && (e.Has(fsnotify.Remove) || e.Has(fsnotify.Rename)):
		w.cut(name)
	case e.Has(fsnotify.Create):
		w.add(w.grow(name))
	}
	if w.dismisses(name) {
		return false
	}
	w.changed[name] = true
	return true
}

// add takes note of files that were found. They may have been there before.
func (w *watcher) add(files []string, err error) {
	for _, f := range files {
		w.changed[f] = true
	}
	if err != nil {
		w.lose(err)
	}
}

// lookAround finds the folders again that the system has lost sight of because
// they were moved.
func (w *watcher) lookAround() {
	w.moved = false
	w.add(w.grow("."))
}

// lose takes note that changes were lost.
func (w *watcher) lose(err error) {
	w.next.All = true
	if errors.Is(err, fsnotify.ErrEventOverflow) {
		w.next.Why = "So much changed at once that the system lost count; every file was looked at again."
	} else {
		w.next.Why = explained(err).Error()
	}
	w.moved = true
}

// replaced looks whether the folder is still the one that is watched, watches
// the one that has taken its place, and reports whether everything has to be
// looked at.
func (w *watcher) replaced() bool {
	info, err := os.Stat(w.Dir)
	switch {
	case err != nil && w.root == nil:
		return false
	case err != nil:
		w.root = nil
	case w.root != nil && os.SameFile(info, w.root):
		return false
	default:
		if err := w.plant(); err != nil {
			w.lose(err)
			return true
		}
	}
	w.next.All = true
	return true
}
