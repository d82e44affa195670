package ship

import (
	"context"
	"io"
	"sync"
	"sync/atomic"
	"time"
)

// A stubborn place tries again what a passing fault has spoilt: a connection
// that broke, a server that is busy. It gives up after a few tries.
type stubborn struct {
	place
	waits []time.Duration
	say   func(format string, args ...any)
	said  *quiet
}

// try does something until it succeeds, fails for good, or has failed too
// often.
func (s stubborn) try(ctx context.Context, do func() error) error {
	for n := 0; ; n++ {
		err := do()
		if err == nil {
			return nil
		}
		if cause := context.Cause(ctx); cause != nil {
			return cause
		}
		if n == len(s.waits) || !s.passing(err) {
			return s.explain(err)
		}
		if s.said.enough() {
			s.say("No luck (%v); trying again.", s.explain(err))
		}
		if err := pause(ctx, s.waits[n]); err != nil {
			return err
		}
	}
}

// quiet keeps eight workers from saying the same at once.
type quiet struct {
	mu   sync.Mutex
	last time.Time
}

func (q *quiet) enough() bool {
	q.mu.Lock()
	defer q.mu.Unlock()
	if time.Since(q.last) < 5*time.Second {
		return false
	}
	q.last = time.Now()
	return true
}

func (s stubborn) list(ctx context.Context, within func(string) bool) (all map[string]found, err error) {
	err = s.try(ctx, func() error {
		all, err = s.place.list(ctx, within)
		return err
	})
	return all, err
}

func (s stubborn) read(ctx context.Context, path string) (data []byte, err error) {
	err = s.try(ctx, func() error {
		data, err = s.place.read(ctx, path)
		return err
	})
	return data, err
}

func (s stubborn) remove(ctx context.Context, path string) error {
	return s.try(ctx, func() error { return s.place.remove(ctx, path) })
}

// claim looks again after a fault: what it claimed may be there, and only the
// answer lost.
func (s stubborn) claim(ctx context.Context, path string, data, seen []byte) (ok bool, err error) {
	err = s.try(ctx, func() error {
		ok, err = s.place.claim(ctx, path, data, seen)
		return err
	})
	if err == nil && !ok {
		if now, err := s.read(ctx, path); err == nil && string(now) == string(data) {
			return true, nil
		}
	}
	return ok, err
}

// send puts a parcel there, from its first byte at each try. It calls count with
// how many bytes have gone, and with less than zero for those of a try that
// failed.
func (s stubborn) send(ctx context.Context, c parcel, count func(int64)) (stamp string, err error) {
	err = s.try(ctx, func() error {
		r, err := c.Open()
		if err != nil {
			return err
		}
		defer r.Close()
		body := &counted{Reader: r, count: count}
		if stamp, err = s.put(ctx, c.Path, body, c.size); err != nil {
			count(-body.sent.Load())
		}
		return err
	})
	return stamp, err
}

// counted tells how much of a body was read. It cannot be read again: a library
// that tries again by itself would spoil the count.
type counted struct {
	io.Reader
	count func(int64)
	sent  atomic.Int64 // read by requests that were given up, too
}

func (c *counted) Read(b []byte) (int, error) {
	n, err := c.Reader.Read(b)
	c.sent.Add(int64(n))
	c.count(int64(n))
	return n, err
}
