package ship

import (
	"context"
	"net/http/httptest"
	"strings"
	"testing"
	"time"

	mathrand "math/rand/v2"
	"net/http"

	"github.com/johannesboyne/gofakes3"
	"github.com/johannesboyne/gofakes3/backend/s3mem"
	"github.com/minio/minio-go/v7"
	"github.com/minio/minio-go/v7/pkg/credentials"
)

// A store in memory. It asks for no secret and forgets headers: for those see
// cmd/stillroom, where a real one is asked.
func startStore(t *testing.T) (host string, files func() map[string]string) {
	return startStoreBehind(t, func(store http.Handler) http.Handler { return store })
}

// startStoreBehind is a store behind a host that may spoil what it is asked.
func startStoreBehind(t *testing.T, front func(http.Handler) http.Handler) (host string, files func() map[string]string) {
	backend := s3mem.New()
	if err := backend.CreateBucket("larder"); err != nil {
		t.Fatal(err)
	}
	srv := httptest.NewServer(front(gofakes3.New(backend).Server()))
	t.Cleanup(srv.Close)
	host = strings.TrimPrefix(srv.URL, "http://")
	p := storeAt(t, host, sound())
	return host, func() map[string]string {
		all := make(map[string]string)
		for o := range p.store.ListObjects(t.Context(), "larder", minio.ListObjectsOptions{Recursive: true}) {
			name := strings.TrimPrefix(o.Key, "www/")
			data, err := p.read(t.Context(), name)
			if name == o.Key || err != nil {
				data, err = []byte("not under the prefix"), nil
			}
			all[name] = string(data)
		}
		return all
	}
}

func storeAt(t *testing.T, host string, l *line) *s3Place {
	return storeFor(t, storeRun(t, host, l), host, l)
}

func storeFor(t *testing.T, r *Run, host string, l *line) *s3Place {
	at := login{host: host, region: "us-east-1", keys: credentials.NewStaticV4("jam", "secret", "")}
	p, err := newS3(r.To, at, l.dial, r.times)
	if err != nil {
		t.Fatal(err)
	}
	p.known.Store(true)
	return p
}

func storeRun(t *testing.T, host string, l *line) *Run {
	r := &Run{To: Address{kind: "s3", host: "larder", path: "www"}, Seat: "this"}
	r.times = times{beat: time.Hour, silence: time.Hour, stalled: 20 * time.Second, again: make([]time.Duration, 4)}
	r.open = func(context.Context) (place, error) { return storeFor(t, r, host, l), nil }
	return r
}

// As with a server: the connection breaks at many moments, and what is there is
// whole after each. Nothing outside the prefix is touched.
func TestStoreConnectionBreaks(t *testing.T) {
	host, files := startStore(t)
	p := storeAt(t, host, sound())
	for _, key := range []string{"mine.txt", "wwwhat.txt", "www/mine.txt"} {
		if _, err := p.store.PutObject(t.Context(), "larder", key, strings.NewReader("mine"), 4, minio.PutObjectOptions{}); err != nil {
			t.Fatal(err)
		}
	}
	whole := sound()
	if _, err := storeRun(t, host, whole).Ship(t.Context(), edition(0)); err != nil {
		t.Fatal(err)
	}
	length := 1<<60 - whole.left.Load()
	dice := mathrand.New(mathrand.NewPCG(7, 4))
	cuts, failed := 0, 0
	for n := 1; n <= 16; n++ {
		l := &line{dead: n%2 == 0}
		l.left.Store(dice.Int64N(length / 3))
		_, err := storeRun(t, host, l).Ship(t.Context(), edition(n))
		there := files()
		delete(there, "wwwhat.txt")
		if faults := broken(there); faults != nil {
			t.Fatalf("cut %d: %v", n, faults)
		}
		if l.cut.Load() {
			cuts++
		}
		if err != nil {
			failed++
			if _, err := storeRun(t, host, sound()).Ship(t.Context(), edition(n)); err != nil {
				t.Fatalf("cut %d, then a run that is not: %v", n, err)
			}
		}
		if faults := differs(files(), edition(n), "mine.txt", "wwwhat.txt"); faults != nil {
			t.Fatalf("cut %d: %v", n, faults)
		}
	}
	t.Logf("%d connections cut; %d runs failed and were ended by the next", cuts, failed)
	if cuts < 10 || failed < 5 {
		t.Errorf("only %d cuts, of which %d told", cuts, failed)
	}
}
