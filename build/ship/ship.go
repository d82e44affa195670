package ship

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"os"
	"path"
	"sync"
	"time"

	"stillroom/build"
)

// A Run puts a site in its place.
type Run struct {
	To       Address
	TakeOver bool   // replace files of other making that are in the way
	Seat     string // from TakeSeat; may be empty

	Say      func(sentence string)      // told of what takes a while; may be nil
	Progress func(what string) Progress // told of each part of the work; may be nil

	times   times
	open    func(context.Context) (place, error)
	machine string
}

// A Progress is told how much of a part of the work is done. It is called from
// several goroutines.
type Progress func(done, total int)

// workers is how many files travel at once.
const workers = 8

// begin opens the place.
func (r *Run) begin(ctx context.Context) (stubborn, error) {
	if r.times.again == nil {
		r.times = usualTimes
	}
	if r.machine, _ = os.Hostname(); r.machine == "" {
		r.machine = "a machine without a name"
	}
	if r.open == nil {
		r.open = r.openAddress
	}
	s := stubborn{waits: r.times.again, say: r.say, said: &quiet{last: time.Now().Add(-time.Hour)}}
	p, err := r.open(ctx)
	s.place = p
	return s, err
}

func (r *Run) openAddress(context.Context) (place, error) {
	if r.To.kind == "s3" {
		return openS3(r.To, r.times)
	}
	return openSFTP(r.To, r.times)
}

func (r *Run) say(format string, args ...any) {
	if r.Say != nil {
		r.Say(fmt.Sprintf(format, args...))
	}
}

func (r *Run) progress(what string) Progress {
	if r.Progress == nil {
		return func(int, int) {}
	}
	return r.Progress(what)
}

// Look says what Ship would do, and changes nothing.
func (r *Run) Look(ctx context.Context, site []build.File) (*Plan, error) {
	at, err := r.begin(ctx)
	if err != nil {
		return nil, r.at(err)
	}
	defer at.close()
	p, err := r.plan(ctx, at, site)
	return p, r.at(err)
}

// Ship sends what has changed and removes what is no more. It gives what it had
// to do also if that could not be done: Plan.Send and Plan.Remove then tell how
// much there was. After any error what is there is a working site, and the next
// run goes on.
func (r *Run) Ship(ctx context.Context, site []build.File) (*Plan, error) {
	at, err := r.begin(ctx)
	if err != nil {
		return nil, r.at(err)
	}
	defer at.close()
	l, err := r.take(ctx, at)
	if err != nil {
		return nil, r.at(err)
	}
	work, stop := context.WithCancelCause(ctx)
	defer stop(nil)
	go l.keep(work, stop)
	defer func() { // also when the run is stopped
		stop(nil)
		last, cancel := context.WithTimeout(context.WithoutCancel(ctx), lastWord)
		defer cancel()
		l.release(last)
	}()
	p, err := r.plan(work, at, site)
	if err != nil {
		return nil, r.at(err)
	}
	return p, r.at((&voyage{Run: r, at: at, plan: p, list: maps.Clone(p.known)}).run(work))
}

// lastWord is how long a run that is stopped may take to leave things in order.
const lastWord = 5 * time.Second

// at names the place in an error.
func (r *Run) at(err error) error {
	if err == nil || errors.Is(err, context.Canceled) {
		return err
	}
	return fmt.Errorf("%s: %w", r.To, err)
}

// plan compares the site with what is there.
func (r *Run) plan(ctx context.Context, at stubborn, site []build.File) (*Plan, error) {
	for _, f := range site {
		if !fs.ValidPath(f.Path) || f.Path == listName || f.Path == lockName {
			return nil, fmt.Errorf("%s cannot be the path of a published file", f.Path)
		}
	}
	r.progress("measuring")
	parcels, err := measure(site, at.label)
	if err != nil {
		return nil, err
	}
	r.progress("comparing")
	text, err := at.read(ctx, listName)
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return nil, err
	}
	list := readList(text)
	there, err := at.list(ctx, ourFolders(parcels, list))
	if err != nil {
		return nil, err
	}
	return plan(parcels, list, there, r.TakeOver)
}

// ourFolders are those in which files of ours are or will be.
func ourFolders(site []parcel, list map[string]entry) func(string) bool {
	ours := make(map[string]bool)
	add := func(p string) {
		for dir := path.Dir(p); !ours[dir]; dir = path.Dir(dir) {
			ours[dir] = true
		}
	}
	for _, c := range site {
		add(c.Path)
	}
	for p := range list {
		add(p)
	}
	return func(dir string) bool { return ours[dir] }
}

// each does something for each of many, several at once. It stops at the first
// error.
func each[T any](ctx context.Context, all []T, do func(context.Context, T) error) error {
	ctx, stop := context.WithCancelCause(ctx)
	defer stop(nil)
	next := make(chan T)
	var wg sync.WaitGroup
	for range min(workers, len(all)) {
		wg.Go(func() {
			for one := range next {
				if err := do(ctx, one); err != nil {
					stop(err)
				}
			}
		})
	}
	for _, one := range all {
		select {
		case next <- one:
			continue
		case <-ctx.Done():
		}
		break
	}
	close(next)
	wg.Wait()
	return context.Cause(ctx)
}
