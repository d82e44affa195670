package ship

import (
	"context"
	"errors"
	"io"
	"math/rand/v2"
	"net/http"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"sync/atomic"
	"testing"
	"time"

	"stillroom/build"
)

const recording = 100 << 20

// recorded is a site with a recording, which is read from nowhere and never
// held.
func recorded() []build.File {
	return []build.File{
		build.NewFile("index.html", []byte("<html></html>")),
		{Path: "show-notes/damsons/damsons.mp3", Open: func() (io.ReadSeekCloser, error) {
			return noise{io.LimitReader(rand.NewChaCha8([32]byte{7}), recording)}, nil
		}},
	}
}

// noise is read once, from its beginning to its end.
type noise struct{ io.Reader }

func (noise) Seek(int64, int) (int64, error) { return 0, errors.ErrUnsupported }
func (noise) Close() error                   { return nil }

// A recording of 100 MB goes through a few megabytes of memory, is told of while
// it goes, and is sent again from its beginning when the line is cut in the
// middle of it.
func TestLargeRecording(t *testing.T) {
	cut := func() *line {
		l := &line{}
		l.left.Store(recording / 2)
		return l
	}
	t.Run("sftp", func(t *testing.T) {
		s := startSSH(t)
		sendRecording(t, s.run(t, cut().dial))
		if info, err := os.Stat(filepath.Join(s.folder, recorded()[1].Path)); err != nil || info.Size() != recording {
			t.Errorf("%v, %v", info, err)
		}
	})
	t.Run("s3", func(t *testing.T) {
		var arrived atomic.Int64
		host, _ := startStoreBehind(t, func(store http.Handler) http.Handler {
			return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
				if r.Method != "PUT" || !strings.HasSuffix(r.URL.Path, ".mp3") {
					store.ServeHTTP(w, r)
					return
				}
				if n, err := io.Copy(io.Discard, r.Body); err == nil { // the one in memory would hold it
					arrived.Store(n)
				}
			})
		})
		sendRecording(t, storeRun(t, host, cut()))
		if arrived.Load() < recording {
			t.Errorf("%d bytes arrived", arrived.Load())
		}
	})
}

func sendRecording(t *testing.T, r *Run) {
	const kilobytes = (recording + 13 + 999) / 1000
	var steps, back, last atomic.Int64
	r.Progress = func(what string) Progress {
		return func(done, total int) {
			if total != kilobytes {
				t.Errorf("%s %d of %d", what, done, total)
			}
			steps.Add(1)
			if last.Swap(int64(done)) > int64(done) {
				back.Add(1)
			}
		}
	}
	most := mostHeld(t, func() {
		if _, err := r.Ship(t.Context(), recorded()); err != nil {
			t.Fatal(err)
		}
	})
	t.Logf("%d MB held, %d steps told, %d of them back", most>>20, steps.Load(), back.Load())
	if most > 32<<20 {
		t.Errorf("%d MB were held", most>>20)
	}
	if steps.Load() < 100 || back.Load() != 1 || last.Load() != kilobytes {
		t.Errorf("%d steps, %d back, the last %d, want one back to the beginning", steps.Load(), back.Load(), last.Load())
	}
}

// mostHeld gives the most memory that was held while something was done.
func mostHeld(t *testing.T, do func()) (most uint64) {
	runtime.GC()
	var before, now runtime.MemStats
	runtime.ReadMemStats(&before)
	ctx, stop := context.WithCancel(t.Context())
	watched := make(chan struct{})
	go func() {
		defer close(watched)
		for ctx.Err() == nil {
			runtime.ReadMemStats(&now)
			most = max(most, now.HeapAlloc)
			time.Sleep(10 * time.Millisecond)
		}
	}()
	do()
	stop()
	<-watched
	return most - min(most, before.HeapAlloc)
}
