package ship

import (
	"bytes"
	"context"
	"fmt"
	"maps"
	"sync"
	"sync/atomic"
)

// A voyage does what a plan says.
type voyage struct {
	*Run
	at   stubborn
	plan *Plan

	told  Progress     // in kilobytes
	total int64        // in bytes
	sent  atomic.Int64 // in bytes

	mu      sync.Mutex       // guards what follows
	list    map[string]entry // what is there and ours
	unnoted int64            // how much was sent since the list was last written

	writing sync.Mutex // held while the list is written
}

// After so much the list is written again, so that a run that breaks off has
// little to send twice. A small file counts for its round trips.
const (
	noteAfter = 8 << 20
	leastSize = 32 << 10
)

// run sends and removes. Before anything is sent, the list names all that will
// be there, so that a run that breaks off leaves no file that nobody knows.
func (v *voyage) run(ctx context.Context) (err error) {
	if len(v.plan.Send)+len(v.plan.Remove) == 0 {
		return nil
	}
	for _, c := range v.plan.Send {
		v.list[c.Path] = entry{}
	}
	if err := v.note(ctx); err != nil {
		return err
	}
	defer func() {
		if err != nil && v.unnoted > 0 {
			last, cancel := context.WithTimeout(context.WithoutCancel(ctx), lastWord)
			defer cancel()
			v.putList(last)
		}
	}()
	if err := v.sendAll(ctx); err != nil {
		return err
	}
	if err := v.removeAll(ctx); err != nil {
		return err
	}
	if err := v.note(ctx); err != nil {
		return err
	}
	v.at.tidy(ctx)
	return nil
}

func (v *voyage) sendAll(ctx context.Context) error {
	v.told, v.total = v.progress("kilobytes sent:"), v.plan.size()
	all := v.plan.Send
	for len(all) > 0 {
		n := 1
		for n < len(all) && all[n].turn == all[0].turn {
			n++
		}
		if err := each(ctx, all[:n], v.sendOne); err != nil {
			return err
		}
		all = all[n:]
	}
	return nil
}

func (v *voyage) sendOne(ctx context.Context, c Parcel) error {
	stamp, err := v.at.send(ctx, c.parcel, v.count)
	if err != nil {
		return fmt.Errorf("%s: %w", c.Path, err)
	}
	v.mu.Lock()
	v.list[c.Path] = entry{c.sum, c.size, stamp}
	v.unnoted += max(c.size, leastSize)
	due := v.unnoted >= noteAfter
	if due {
		v.unnoted = 0
	}
	v.mu.Unlock()
	if due {
		return v.note(ctx)
	}
	return nil
}

// count counts what goes over the line; what was sent in vain is taken back.
func (v *voyage) count(n int64) {
	v.told(inKilobytes(v.sent.Add(n)), inKilobytes(v.total))
}

func inKilobytes(n int64) int { return int((n + 999) / 1000) }

func (v *voyage) removeAll(ctx context.Context) error {
	told := v.progress("removing")
	var done atomic.Int64
	all := v.plan.Remove
	for len(all) > 0 { // pages before what they point at
		n := 1
		for n < len(all) && turnOf(all[n], false) == turnOf(all[0], false) {
			n++
		}
		err := each(ctx, all[:n], func(ctx context.Context, p string) error {
			if err := v.at.remove(ctx, p); err != nil {
				return fmt.Errorf("%s: %w", p, err)
			}
			v.mu.Lock()
			delete(v.list, p)
			v.mu.Unlock()
			told(int(done.Add(1)), len(v.plan.Remove))
			return nil
		})
		if err != nil {
			return err
		}
		all = all[n:]
	}
	return nil
}

// note writes the list.
func (v *voyage) note(ctx context.Context) error {
	return v.at.try(ctx, func() error { return v.putList(ctx) })
}

func (v *voyage) putList(ctx context.Context) error {
	v.writing.Lock()
	defer v.writing.Unlock()
	v.mu.Lock()
	list := maps.Clone(v.list)
	v.mu.Unlock()
	text := writeList(list)
	_, err := v.at.put(ctx, listName, bytes.NewReader(text), int64(len(text)))
	return err
}
