package ship

import (
	"context"
	"crypto/ed25519"
	"crypto/rand"
	"encoding/pem"
	"errors"
	"net"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"sync/atomic"
	"syscall"
	"testing"
	"time"

	mathrand "math/rand/v2"

	"github.com/pkg/sftp"
	"golang.org/x/crypto/ssh"
	"golang.org/x/crypto/ssh/knownhosts"

	"stillroom/build"
)

// An sshServer lets one key in and serves files of this machine, in this
// process. OpenSSH itself is asked in cmd/stillroom.
type sshServer struct {
	address string
	host    ssh.Signer
	user    string // the file of the user's key
	folder  string // into which the site goes
}

// newKey makes a key, and a file that holds it.
func newKey(t testing.TB) (ssh.Signer, string) {
	_, key, err := ed25519.GenerateKey(rand.Reader)
	if err != nil {
		t.Fatal(err)
	}
	block, err := ssh.MarshalPrivateKey(key, "")
	if err != nil {
		t.Fatal(err)
	}
	signer, err := ssh.NewSignerFromKey(key)
	if err != nil {
		t.Fatal(err)
	}
	name := filepath.Join(t.TempDir(), "id_ed25519")
	if err := os.WriteFile(name, pem.EncodeToMemory(block), 0o600); err != nil {
		t.Fatal(err)
	}
	return signer, name
}

func startSSH(t testing.TB) *sshServer {
	host, _ := newKey(t)
	user, name := newKey(t)
	s := &sshServer{host: host, user: name, folder: filepath.Join(t.TempDir(), "www")}
	config := &ssh.ServerConfig{PublicKeyCallback: func(_ ssh.ConnMetadata, key ssh.PublicKey) (*ssh.Permissions, error) {
		if string(key.Marshal()) != string(user.PublicKey().Marshal()) {
			return nil, errors.New("not this one")
		}
		return nil, nil
	}}
	config.AddHostKey(s.host)
	l, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	var served sync.WaitGroup
	t.Cleanup(func() { l.Close(); served.Wait() })
	s.address = l.Addr().String()
	served.Go(func() {
		for {
			conn, err := l.Accept()
			if err != nil {
				return
			}
			served.Go(func() { serveSSH(conn, config) })
		}
	})
	return s
}

func serveSSH(conn net.Conn, config *ssh.ServerConfig) {
	defer conn.Close()
	_, chans, reqs, err := ssh.NewServerConn(conn, config)
	if err != nil {
		return
	}
	go ssh.DiscardRequests(reqs)
	for ch := range chans {
		channel, requests, err := ch.Accept()
		if err != nil {
			return
		}
		go func() {
			for r := range requests {
				r.Reply(r.Type == "subsystem", nil)
			}
		}()
		if files, err := sftp.NewServer(channel); err == nil {
			go files.Serve()
		}
	}
}

// run ships to the server over connections that a test may break. It waits for
// nothing.
func (s *sshServer) run(t testing.TB, d dial) *Run {
	host, port, _ := net.SplitHostPort(s.address)
	known := filepath.Join(t.TempDir(), "known_hosts")
	line := knownhosts.Line([]string{knownhosts.Normalize(s.address)}, s.host.PublicKey())
	if err := os.WriteFile(known, []byte(line), 0o600); err != nil {
		t.Fatal(err)
	}
	r := &Run{To: Address{kind: "sftp", user: "cook", host: host, port: port, path: s.folder}, Seat: "this"}
	r.times = times{beat: time.Hour, silence: time.Hour, stalled: 20 * time.Second, again: make([]time.Duration, 4)}
	r.open = func(context.Context) (place, error) {
		srv := &server{name: host, host: host, port: port, user: "cook", trusted: []string{known}, keys: []string{s.user}}
		return &sftpPlace{server: srv, base: s.folder, dial: d, times: r.times, made: make(map[string]bool)}, nil
	}
	return r
}

func (s *sshServer) files(t testing.TB) map[string]string {
	all := make(map[string]string)
	err := filepath.WalkDir(s.folder, func(name string, d os.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		data, err := os.ReadFile(name)
		rel, _ := filepath.Rel(s.folder, name)
		all[filepath.ToSlash(rel)] = string(data)
		return err
	})
	if err != nil && !errors.Is(err, os.ErrNotExist) {
		t.Fatal(err)
	}
	return all
}

// A line breaks all its connections when so many bytes have gone over it, this
// way and that; if it is then dead, no new one is to be had.
type line struct {
	left atomic.Int64
	dead bool
	cut  atomic.Bool
}

var errCut = &net.OpError{Op: "read", Net: "tcp", Err: syscall.ECONNRESET}

func (l *line) dial(ctx context.Context, network, address string) (net.Conn, error) {
	if l.dead && l.cut.Load() {
		return nil, errCut
	}
	c, err := usualDial(times{stalled: 20 * time.Second})(ctx, network, address)
	if err != nil {
		return nil, err
	}
	return &wire{c, l}, nil
}

type wire struct {
	net.Conn
	line *line
}

func (w *wire) Read(b []byte) (int, error)  { return w.count(w.Conn.Read, b) }
func (w *wire) Write(b []byte) (int, error) { return w.count(w.Conn.Write, b) }

func (w *wire) count(do func([]byte) (int, error), b []byte) (int, error) {
	n, err := do(b)
	if w.line.left.Add(int64(-n)) < 0 && !w.line.cut.Swap(true) || w.line.dead && w.line.cut.Load() {
		w.Conn.Close()
		return n, errCut
	}
	return n, err
}

func sound() *line {
	l := &line{}
	l.left.Store(1 << 60)
	return l
}

func TestShip(t *testing.T) {
	s := startSSH(t)
	for n := range 3 {
		p, err := s.run(t, sound().dial).Ship(t.Context(), edition(n))
		if err != nil {
			t.Fatal(err)
		}
		if faults := differs(s.files(t), edition(n)); faults != nil {
			t.Fatal(faults)
		}
		if n > 0 && (p.Same < 5 || len(p.Remove) < 3) {
			t.Errorf("edition %d: %d the same, %d removed", n, p.Same, len(p.Remove))
		}
	}
	p, err := s.run(t, sound().dial).Ship(t.Context(), edition(2))
	if err != nil || len(p.Send)+len(p.Remove) != 0 {
		t.Errorf("a site that is there: %d sent, %d removed, %v", len(p.Send), len(p.Remove), err)
	}
}

// A list that somebody has tampered with names what lies beside the site.
func TestNeighbours(t *testing.T) {
	s := startSSH(t)
	beside := []string{s.folder + "2/index.html", filepath.Join(filepath.Dir(s.folder), "mine.txt")}
	list := build.ListHead
	for _, name := range beside {
		if err := os.MkdirAll(filepath.Dir(name), 0o777); err != nil {
			t.Fatal(err)
		}
		write600(t, name, "mine")
		rel, err := filepath.Rel(s.folder, name)
		if err != nil {
			t.Fatal(err)
		}
		list += filepath.ToSlash(rel) + "\n"
	}
	if err := os.Mkdir(s.folder, 0o777); err != nil {
		t.Fatal(err)
	}
	write600(t, filepath.Join(s.folder, listName), list)
	if _, err := s.run(t, sound().dial).Ship(t.Context(), edition(0)); err != nil {
		t.Fatal(err)
	}
	for _, name := range beside {
		if text, err := os.ReadFile(name); string(text) != "mine" {
			t.Errorf("%s: %q, %v", name, text, err)
		}
	}
}

// The connection breaks at a hundred moments, for good or for once. After each
// the site is whole, a new connection ends the run if it can be had, and if not
// the next run does; what lies there that is not ours stays.
func TestConnectionBreaks(t *testing.T) {
	s := startSSH(t)
	if err := os.MkdirAll(filepath.Join(s.folder, "recipes", "r1"), 0o777); err != nil {
		t.Fatal(err)
	}
	own := []string{"mine.txt", "recipes/r1/mine.txt"}
	for _, name := range own {
		if err := os.WriteFile(filepath.Join(s.folder, name), []byte("mine"), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	// How much goes over the line in one run says where it can be cut.
	whole := sound()
	if _, err := s.run(t, whole.dial).Ship(t.Context(), edition(0)); err != nil {
		t.Fatal(err)
	}
	length := 1<<60 - whole.left.Load()
	dice := mathrand.New(mathrand.NewPCG(7, 4))
	failed, cuts := 0, 0
	for n := 1; n <= 100; n++ {
		l := &line{dead: n%2 == 0}
		l.left.Store(dice.Int64N(length / 3)) // an edition is a third new
		_, err := s.run(t, l.dial).Ship(t.Context(), edition(n))
		if faults := broken(s.files(t)); faults != nil {
			t.Fatalf("cut %d, dead %v: %v", n, l.dead, faults)
		}
		if l.cut.Load() {
			cuts++
		}
		if err == nil && l.cut.Load() && l.dead || err != nil && !l.dead {
			t.Logf("cut %d, dead %v, %d bytes left: %v", n, l.dead, l.left.Load(), err)
		}
		if err != nil {
			failed++
			if !strings.Contains(err.Error(), s.address) && !errors.Is(err, context.Canceled) {
				t.Errorf("the error does not name the host: %v", err)
			}
			if _, err := s.run(t, sound().dial).Ship(t.Context(), edition(n)); err != nil {
				t.Fatalf("cut %d, then a run that is not: %v", n, err)
			}
		}
		if faults := differs(s.files(t), edition(n), own...); faults != nil {
			t.Fatalf("cut %d: %v", n, faults)
		}
	}
	t.Logf("%d connections cut in runs of up to %d bytes; %d runs failed and were ended by the next", cuts, length, failed)
	if cuts < 60 || failed < 20 {
		t.Errorf("only %d cuts, of which %d told", cuts, failed)
	}
}
