package main

import (
	"bytes"
	"testing"
)

// tell is what the clock calls; the test calls it instead.
func TestProgress(t *testing.T) {
	tests := []struct {
		name string
		live bool
		want string
	}{
		{"into a file", false, "reading\nreading 9 of 10\nchecking\n"},
		{"on a terminal", true, "\rreading\rreading 9 of 10\rchecking       \r        \r"},
	}
	for _, test := range tests {
		var b bytes.Buffer
		p := &progress{w: &b, live: test.live, stop: make(chan struct{})}
		p.begin("reading")
		p.tell()
		p.step(9, 10)
		p.tell()
		p.begin("checking")
		p.tell()
		p.end()
		p.tell() // too late
		if got := b.String(); got != test.want {
			t.Errorf("%s: %q, want %q", test.name, got, test.want)
		}
	}
}
