package ship

import (
	"bytes"
	"context"
	"crypto/rand"
	"encoding/json"
	"errors"
	"fmt"
	"io/fs"
	"time"
)

// lockName is the file that says that somebody is at work there.
const lockName = ".stillroom-lock"

// A hold is what the lock says.
type hold struct {
	By    string    `json:"by"`    // the name of the machine
	Seat  string    `json:"seat"`  // the seat from which it is done, see there
	Run   string    `json:"run"`   // by chance: no two runs have the same
	Since time.Time `json:"since"` // by the clock of that machine; only shown
	Beat  int       `json:"beat"`  // counts up while the run is alive
}

// A lock keeps other runs away while it is held. It says again and again that
// its run is alive; one that has fallen silent is taken over. No clock has to
// be right for that: who waits looks whether the beat changes.
type lock struct {
	hold
	place
	times times
	stop  chan struct{}
	ended chan struct{}
}

// times say how long things take.
type times struct {
	beat    time.Duration   // how often a run says that it is alive
	silence time.Duration   // after which it is taken for dead
	again   []time.Duration // how long to wait before each further try
	stalled time.Duration   // after which a connection on which nothing moves is given up
}

var usualTimes = times{
	beat: 15 * time.Second, silence: time.Minute, stalled: time.Minute,
	again: []time.Duration{time.Second, 3 * time.Second, 9 * time.Second, 20 * time.Second},
}

// errTaken says that another run is at work.
type errTaken struct{ hold }

func (e errTaken) Error() string {
	return fmt.Sprintf("another run is at work there, begun on %s at %s; try again when it is done", e.By, e.Since.Local().Format("15:04"))
}

// take takes the lock, or fails if another run has it and is alive.
func (r *Run) take(ctx context.Context, at place) (*lock, error) {
	l := &lock{place: at, times: r.times, stop: make(chan struct{}), ended: make(chan struct{})}
	l.hold = hold{By: r.machine, Seat: r.Seat, Run: rand.Text(), Since: time.Now().UTC().Truncate(time.Second)}
	seen, err := l.look(ctx)
	if err != nil {
		return nil, err
	}
	if other := readHold(seen); seen != nil && (r.Seat == "" || other.Seat != r.Seat) {
		r.say("Another run is at work there, begun on %s. If nothing is heard of it for %s, this one goes on.", other.By, r.times.silence)
		if err := l.await(ctx, seen); err != nil {
			return nil, err
		}
	}
	ok, err := at.claim(ctx, lockName, l.text(), seen)
	if err != nil || ok {
		return l, err
	}
	if seen, err = l.look(ctx); err != nil {
		return nil, err
	}
	return nil, errTaken{readHold(seen)}
}

func (l *lock) look(ctx context.Context) ([]byte, error) {
	seen, err := l.read(ctx, lockName)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	return seen, err
}

// await returns when nothing was heard of the other run for long enough.
func (l *lock) await(ctx context.Context, seen []byte) error {
	for end := time.Now().Add(l.times.silence); time.Now().Before(end); {
		if err := pause(ctx, l.times.beat/3); err != nil {
			return err
		}
		now, err := l.look(ctx)
		if err != nil {
			return err
		}
		if now != nil && !bytes.Equal(now, seen) {
			return errTaken{readHold(now)}
		}
		if now == nil {
			return errors.New("another run was at work there until this moment; try again")
		}
	}
	return nil
}

// keep beats until the lock is let go. It calls lost if another run has taken
// it over, as one does that could not hear of this one.
func (l *lock) keep(ctx context.Context, lost func(error)) {
	defer close(l.ended)
	for {
		select {
		case <-l.stop:
			return
		case <-ctx.Done():
			return
		case <-time.After(l.times.beat):
		}
		if !l.held(ctx) {
			lost(errors.New("another run has taken over, since nothing was heard of this one; look whether it is done, then publish again"))
			return
		}
	}
}

// held beats once, and reports whether the lock is still ours. While there is
// no answer it is: whoever sends files hears of that as well.
func (l *lock) held(ctx context.Context) bool {
	now, err := l.look(ctx)
	if err != nil {
		return true
	}
	if readHold(now).Run != l.Run {
		return false
	}
	l.Beat++
	l.claim(ctx, lockName, l.text(), now)
	return true
}

// release lets the lock go, if it is ours.
func (l *lock) release(ctx context.Context) {
	close(l.stop)
	<-l.ended
	if now, err := l.look(ctx); err == nil && readHold(now).Run == l.Run {
		l.remove(ctx, lockName)
	}
}

func (l *lock) text() []byte {
	text, err := json.Marshal(l.hold)
	if err != nil {
		panic(err)
	}
	return text
}

func readHold(text []byte) (h hold) {
	if json.Unmarshal(text, &h) != nil || h.By == "" {
		h.By = "another machine"
	}
	return h
}

// pause waits, unless the run is to stop.
func pause(ctx context.Context, d time.Duration) error {
	select {
	case <-ctx.Done():
		return context.Cause(ctx)
	case <-time.After(d):
		return nil
	}
}
