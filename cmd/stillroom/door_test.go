package main

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"net"
	"slices"
	"strings"
	"testing"
	"testing/fstest"
)

// A number is not an address, nor is a word; each message says what one is.
func TestParseAddress(t *testing.T) {
	for address, want := range map[string]string{
		"127.0.0.1:4747": "", "localhost:80": "", ":4747": "", "[::1]:4747": "",
		"4747": "is not a host and a port", "127.0.0.1": "is not a host", "127.0.0.1:http": "is not a host", "127.0.0.1:70000": "is not a host", "::1:4747": "is not a host",
	} {
		_, _, err := parseAddress(address)
		if (want == "") != (err == nil) || err != nil && !strings.Contains(err.Error(), want) {
			t.Errorf("%q: error %v, want %q", address, err, want)
		}
	}
}

// A door is open to other machines if it is at an address of theirs, and that
// alone.
func TestDoor(t *testing.T) {
	tests := []struct {
		host, ip string
		open     bool
		first    string
	}{
		{"127.0.0.1", "127.0.0.1", false, "http://127.0.0.1:4747/"},
		{"localhost", "127.0.0.1", false, "http://localhost:4747/"},
		{"::1", "::1", false, "http://[::1]:4747/"},
		{"", "::", true, "http://127.0.0.1:4747/"},
		{"0.0.0.0", "0.0.0.0", true, "http://127.0.0.1:4747/"},
		{"192.168.0.7", "192.168.0.7", true, "http://192.168.0.7:4747/"},
		{"larder.local", "192.168.0.7", true, "http://larder.local:4747/"},
	}
	for _, test := range tests {
		d := newDoor(doorAt(test.ip), test.host)
		if d.hosts.Open != test.open || d.addresses[0] != test.first {
			t.Errorf("%s: open %v, at %v", test.host, d.hosts.Open, d.addresses)
		}
		if net.ParseIP(test.host) == nil && test.host != "" && !slices.Contains(d.hosts.Names, test.host) {
			t.Errorf("%s is not among the names %v", test.host, d.hosts.Names)
		}
	}
}

// A doorAt is a listener of which only the address matters.
type doorAt string

func (a doorAt) Accept() (net.Conn, error) { return nil, io.EOF }
func (a doorAt) Close() error              { return nil }
func (a doorAt) Addr() net.Addr            { return &net.TCPAddr{IP: net.ParseIP(string(a)), Port: 4747} }

// The tables are as proc_net(5) has them; the ports are in hexadecimal.
func TestHolder(t *testing.T) {
	const head = "  sl  local_address rem_address   st tx_queue rx_queue tr tm->when retrnsmt   uid  timeout inode\n"
	proc := fstest.MapFS{
		"net/tcp": {Data: []byte(head +
			"   0: 0100007F:128B 0100007F:C350 01 00000000:00000000 00:00000000 00000000  1000        0 11 1 0 20 4 30 10 -1\n" +
			"   1: 0100007F:128B 00000000:0000 0A 00000000:00000000 00:00000000 00000000  1000        0 4242 1 0 100 0 0 10 0\n" +
			"   2: 0100007F:0050 00000000:0000 0A 00000000:00000000 00:00000000 00000000 987654        0 5000 1 0 100 0 0 10 0\n")},
		"net/tcp6":   {Data: []byte(head + "   0: 00000000000000000000000001000000:128D 00000000000000000000000000000000:0000 0A 00000000:00000000 00:00000000 00000000 1000 0 4343 1 0 100 0 0 10 0\n")},
		"77/fd/3":    {Data: []byte("socket:[4242]"), Mode: fs.ModeSymlink},
		"77/cmdline": {Data: []byte("/usr/bin/stillroom\x00preview\x00my larder\x00")},
		"78/fd/9":    {Data: []byte("socket:[4343]"), Mode: fs.ModeSymlink},
		"78/cmdline": {Data: []byte("x" + strings.Repeat("\x00argument", 20))},
	}
	for port, want := range map[int]string{
		4747: "stillroom preview my larder (process 77)",
		4749: "x argument argument argument argument argument argument argu… (process 78)",
		80:   "a program of another user",
		4748: "another program",
	} {
		if got := holder(proc, port); got != want {
			t.Errorf("port %d is taken by %q, want %q", port, got, want)
		}
	}
	if got := holder(fstest.MapFS{}, 4747); got != "another program" {
		t.Errorf("where the system tells nothing it is %q", got)
	}
}

type fullCache struct{}

func (fullCache) Get(string) ([]byte, bool) { return nil, false }
func (fullCache) Put(string, []byte) error  { return errors.New("no space left on device") }

// A full disk is told of once.
func TestSpokenCache(t *testing.T) {
	var said bytes.Buffer
	p := &program{err: &said}
	c := p.spoken(fullCache{})
	for range 3 {
		if c.Put("key", nil) == nil {
			t.Error("the error is lost")
		}
	}
	if got := said.String(); strings.Count(got, "\n") != 1 || !strings.Contains(got, "no space left on device") {
		t.Errorf("said:\n%s", got)
	}
	if p.spoken(nil) != nil {
		t.Error("no cache has become one")
	}
}

// The address that is offered in place of a taken one has the host that was
// typed.
func TestDoorOffersTheHost(t *testing.T) {
	l, err := net.Listen("tcp", "0.0.0.0:0")
	if err != nil {
		t.Skip("this machine has no such address:", err)
	}
	defer l.Close()
	c := previewCommand{Address: fmt.Sprintf("0.0.0.0:%d", l.Addr().(*net.TCPAddr).Port)}
	if _, err := c.open(&program{}); err == nil || !strings.Contains(err.Error(), "is free: --address 0.0.0.0:") {
		t.Errorf("it says %v", err)
	}
}
