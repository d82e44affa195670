package ship

import (
	"context"
	"fmt"
	"net/http"
	"strings"
	"sync"
	"sync/atomic"
	"testing"
	"time"

	"stillroom/build"
)

// refuse answers as a store does that cannot or will not.
func refuse(w http.ResponseWriter, status int, code string) {
	w.WriteHeader(status)
	fmt.Fprintf(w, "<Error><Code>%s</Code><Message>no</Message></Error>", code)
}

// A store that is busy for a while is asked again; one that goes on refusing is
// told by what it means, and what lies there is a working site.
func TestStoreFaults(t *testing.T) {
	const once, always = 1, 1 << 30
	for _, tt := range []struct {
		name   string
		method string // which requests are spoilt
		path   string // those whose path holds this
		times  int32  // how many of them
		fault  http.HandlerFunc
		want   string // what the error says; empty if the run gets through
	}{
		{"an error inside", "PUT", "/recipes/", 9, says(500, "InternalError"), ""},
		{"too fast", "PUT", "/assets/", 9, says(503, "SlowDown"), ""},
		{"too fast at removing", "DELETE", "/assets/", 3, says(503, "SlowDown"), ""},
		{"too fast at listing", "GET", "list-type", once, says(503, "SlowDown"), ""},
		{"a gateway between", "PUT", "/index.html", 2, says(502, ""), ""},
		{"slow", "PUT", "/recipes/", always, func(http.ResponseWriter, *http.Request) { time.Sleep(5 * time.Millisecond) }, ""},
		{"an error that stays", "PUT", "/recipes/r1/", always, says(500, "InternalError"), "recipes/r1/index.html: HOST answers 500 InternalError"},
		{"no room", "PUT", "/assets/", always, says(507, "NoRoom"), "HOST has no room left"},
		{"keys that may only read", "PUT", "", always, says(403, "AccessDenied"), "they need to list it, and to get, put and delete in it"},
		{"keys that may not list", "GET", "list-type", always, says(403, "AccessDenied"), "they need to list it"},
		{"keys that have run out", "GET", "", always, says(400, "ExpiredToken"), "does not accept the keys (ExpiredToken)"},
		{"silence", "PUT", "/recipes/r1/", always, func(http.ResponseWriter, *http.Request) { time.Sleep(400 * time.Millisecond) }, "HOST did not answer in time"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			var on atomic.Bool
			var left atomic.Int32
			left.Store(tt.times)
			host, files := startStoreBehind(t, func(store http.Handler) http.Handler {
				return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
					hit := on.Load() && r.Method == tt.method && strings.Contains(r.URL.RequestURI(), tt.path)
					if hit && left.Add(-1) >= 0 {
						mark := &marked{ResponseWriter: w}
						if tt.fault(mark, r); mark.answered {
							return
						}
					}
					store.ServeHTTP(w, r)
				})
			})
			ship := func(n int) error {
				r := storeRun(t, host, sound())
				r.times.stalled = 200 * time.Millisecond
				r.times.again = make([]time.Duration, 9)
				_, err := r.Ship(t.Context(), edition(n))
				return err
			}
			if err := ship(0); err != nil {
				t.Fatal(err)
			}
			on.Store(true)
			err := ship(1)
			on.Store(false)
			want := strings.ReplaceAll(tt.want, "HOST", host)
			if (err == nil) != (want == "") || err != nil && !strings.Contains(err.Error(), want) {
				t.Errorf("%v, want an error with %q", err, want)
			}
			if faults := broken(files()); faults != nil {
				t.Error(faults)
			}
			if err := ship(1); err != nil {
				t.Fatalf("when it is over: %v", err)
			}
			if faults := differs(files(), edition(1)); faults != nil {
				t.Error(faults)
			}
			if tt.times != always && left.Load() > 0 {
				t.Errorf("%d requests were to be spoilt, and were not made", left.Load())
			}
		})
	}
}

// says is a fault that answers.
func says(status int, code string) http.HandlerFunc {
	return func(w http.ResponseWriter, _ *http.Request) { refuse(w, status, code) }
}

// marked notes whether a request was answered.
type marked struct {
	http.ResponseWriter
	answered bool
}

func (m *marked) WriteHeader(status int) {
	m.answered = true
	m.ResponseWriter.WriteHeader(status)
}

// A store lists what was not asked for, and a list names what is not below the
// prefix. Nothing but what lies there is asked to go.
func TestStoreHostile(t *testing.T) {
	outside := []string{"../www2/index.html", "www2/index.html", "../../etc/passwd", "/etc/passwd", "a/../../b.html", "b" + moving + "/../../c" + moving}
	var mu sync.Mutex
	var touched []string
	var listing atomic.Bool
	host, files := startStoreBehind(t, func(store http.Handler) http.Handler {
		return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
			if r.Method == "PUT" || r.Method == "DELETE" {
				mu.Lock()
				touched = append(touched, r.URL.Path)
				mu.Unlock()
			}
			if !listing.Load() || r.Method != "GET" || !strings.Contains(r.URL.RawQuery, "list-type") {
				store.ServeHTTP(w, r)
				return
			}
			fmt.Fprint(w, "<ListBucketResult>")
			for _, name := range outside {
				fmt.Fprintf(w, "<Contents><Key>www/%s</Key><Size>1</Size><ETag>x</ETag></Contents>", name)
				fmt.Fprintf(w, "<Contents><Key>%s</Key><Size>1</Size><ETag>x</ETag></Contents>", name)
			}
			fmt.Fprint(w, "</ListBucketResult>")
		})
	})
	list := []byte(build.ListHead + strings.Join(outside, "\n") + "\nab\t1\tx\t../www2/tabbed.html\n")
	if _, err := storeAt(t, host, sound()).put(t.Context(), listName, strings.NewReader(string(list)), int64(len(list))); err != nil {
		t.Fatal(err)
	}
	listing.Store(true)
	if _, err := storeRun(t, host, sound()).Ship(t.Context(), edition(0)); err != nil {
		t.Fatal(err)
	}
	for _, at := range touched {
		// The name www2/index.html lies below the prefix, where the list may mean it.
		if !strings.HasPrefix(at, "/larder/www/") || strings.Contains(at, "..") || strings.Contains(at, "//") {
			t.Errorf("%s was put or removed", at)
		}
	}
	listing.Store(false)
	if faults := differs(files(), edition(0)); faults != nil {
		t.Error(faults)
	}
}

// A site may have a bucket for itself. What others keep in it stays.
func TestStoreWholeBucket(t *testing.T) {
	host, _ := startStore(t)
	p := storeAt(t, host, sound())
	p.prefix = ""
	if _, err := p.put(t.Context(), "photos/mine.txt", strings.NewReader("mine"), 4); err != nil {
		t.Fatal(err)
	}
	r := storeRun(t, host, sound())
	r.open = func(context.Context) (place, error) { return p, nil }
	for n := range 2 {
		plan, err := r.Ship(t.Context(), edition(n))
		if err != nil || strings.Join(plan.Foreign, " ") != "photos/" {
			t.Fatalf("edition %d: %v, leaving %q", n, err, plan.Foreign)
		}
	}
	if text, err := p.read(t.Context(), "photos/mine.txt"); string(text) != "mine" {
		t.Errorf("%q, %v", text, err)
	}
}
