package editor

import (
	"io"
	"sync"
	"time"
)

// An outbox takes whatever is to be said at once, and hands it out as fast as
// the text editor reads: one that is busy writing to the server, or hangs, holds
// up nothing.
type outbox struct {
	out  io.Writer
	fail func() // told when nothing more can be handed out

	mu      sync.Mutex
	moved   *sync.Cond // when something has come in or gone out, and at the end
	waiting []byte
	going   int // bytes that the text editor has not taken yet
	closed  bool
	empty   chan struct{} // closed when the outbox is, and nothing is left in it
}

func newOutbox(out io.Writer, fail func()) *outbox {
	o := &outbox{out: out, fail: fail, empty: make(chan struct{})}
	o.moved = sync.NewCond(&o.mu)
	go o.handOut()
	return o
}

// Write takes what is to be said, and never waits.
func (o *outbox) Write(b []byte) (int, error) {
	o.mu.Lock()
	defer o.mu.Unlock()
	if o.closed {
		return 0, io.ErrClosedPipe
	}
	o.waiting = append(o.waiting, b...)
	o.moved.Broadcast()
	return len(b), nil
}

func (o *outbox) handOut() {
	defer close(o.empty)
	for {
		b := o.next()
		if b == nil {
			return
		}
		if _, err := o.out.Write(b); err != nil {
			o.close()
			o.fail()
			return
		}
	}
}

// next gives what has come in since, and waits for it; nil at the end.
func (o *outbox) next() []byte {
	o.mu.Lock()
	defer o.mu.Unlock()
	o.going = 0
	o.moved.Broadcast()
	for len(o.waiting) == 0 && !o.closed {
		o.moved.Wait()
	}
	b := o.waiting
	o.waiting, o.going = nil, len(b)
	return b
}

// await waits until no more than so many bytes are left, or nothing more is
// handed out.
func (o *outbox) await(left int) {
	o.mu.Lock()
	defer o.mu.Unlock()
	for len(o.waiting)+o.going > left && !o.closed {
		o.moved.Wait()
	}
}

func (o *outbox) close() {
	o.mu.Lock()
	defer o.mu.Unlock()
	o.closed = true
	o.moved.Broadcast()
}

// end has the last words handed out, if the text editor takes them in time.
func (o *outbox) end(most time.Duration) {
	o.close()
	select {
	case <-o.empty:
	case <-time.After(most):
	}
}
