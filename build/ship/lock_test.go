package ship

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

// A run finds the lock of another: alive, dead, or its own from before it died.
func TestLock(t *testing.T) {
	s := startSSH(t)
	other := func() *Run {
		r := s.run(t, sound().dial)
		r.times.beat, r.times.silence, r.Seat = 30*time.Millisecond, 300*time.Millisecond, "another"
		return r
	}
	first := other()
	at, err := first.begin(t.Context())
	if err != nil {
		t.Fatal(err)
	}
	defer at.close()
	l, err := first.take(t.Context(), at)
	if err != nil {
		t.Fatal(err)
	}
	go l.keep(t.Context(), func(err error) { t.Error(err) })

	second := other()
	second.Seat = "a third"
	var taken errTaken
	if _, err := second.Ship(t.Context(), edition(0)); !errors.As(err, &taken) {
		t.Errorf("while another run is alive: %v", err)
	}
	if len(s.files(t)) != 1 {
		t.Errorf("a run that may not has written: %v", s.files(t))
	}
	close(l.stop) // it dies
	<-l.ended
	said := ""
	second.Say = func(sentence string) { said += sentence }
	if _, err := second.Ship(t.Context(), edition(0)); err != nil || !strings.Contains(said, "Another run is at work there") {
		t.Errorf("after it died: %v, having said %q", err, said)
	}
	if _, left := s.files(t)[lockName]; left {
		t.Error("the lock is still there")
	}

	third := s.run(t, sound().dial) // which would wait for an hour
	if _, err := third.take(t.Context(), at); err != nil {
		t.Fatal(err)
	}
	if _, err := s.run(t, sound().dial).Ship(t.Context(), edition(1)); err != nil {
		t.Errorf("after a run from the same seat died: %v", err)
	}
}

// Who is taken over stops.
func TestLockLost(t *testing.T) {
	s := startSSH(t)
	r := s.run(t, sound().dial)
	r.times.beat = 10 * time.Millisecond
	at, err := r.begin(t.Context())
	if err != nil {
		t.Fatal(err)
	}
	defer at.close()
	l, err := r.take(t.Context(), at)
	if err != nil {
		t.Fatal(err)
	}
	lost := make(chan error, 1)
	go l.keep(t.Context(), func(err error) { lost <- err })
	if err := os.Remove(filepath.Join(s.folder, lockName)); err != nil {
		t.Fatal(err)
	}
	select {
	case err := <-lost:
		if !strings.Contains(err.Error(), "taken over") {
			t.Error(err)
		}
	case <-time.After(10 * time.Second):
		t.Error("nothing was noticed")
	}
}

func TestSeat(t *testing.T) {
	dir := t.TempDir()
	to := Address{kind: "s3", host: "larder"}
	name, leave, err := TakeSeat(dir, to)
	if err != nil || name == "" {
		t.Fatal(name, err)
	}
	if _, _, err := TakeSeat(dir, to); !errors.Is(err, errBusy) {
		t.Errorf("the seat is taken twice: %v", err)
	}
	if _, leave, err := TakeSeat(dir, Address{kind: "s3", host: "cellar"}); err != nil {
		t.Errorf("a seat for another place: %v", err)
	} else {
		leave()
	}
	leave()
	again, leave, err := TakeSeat(dir, to)
	if err != nil || again != name {
		t.Errorf("the seat is %q, then %q: %v", name, again, err)
	}
	leave()
}
