package main

import (
	"fmt"
	"net"
	"sync/atomic"
	"testing"
)

// A cutLine passes bytes on to a server. It is cut once after so many of them, and somebody is told.
type cutLine struct {
	port   int
	passed atomic.Int64
	cut    atomic.Pointer[cutting]
}

type cutting struct {
	at   int64
	done func()
}

func newLine(t *testing.T, to int) *cutLine {
	l, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	line := &cutLine{port: l.Addr().(*net.TCPAddr).Port}
	t.Cleanup(func() { l.Close() })
	go func() {
		for {
			c, err := l.Accept()
			if err != nil {
				return
			}
			s, err := net.Dial("tcp", fmt.Sprintf("127.0.0.1:%d", to))
			if err != nil {
				c.Close()
				continue
			}
			go line.pass(c, s)
			go line.pass(s, c)
		}
	}()
	return line
}

func (l *cutLine) mend() { l.cut.Store(nil) }

func (l *cutLine) cutAfter(n int64, done func()) {
	l.cut.Store(&cutting{l.passed.Load() + n, done})
}

func (l *cutLine) pass(from, to net.Conn) {
	defer from.Close()
	defer to.Close()
	piece := make([]byte, 4<<10)
	for {
		n, err := from.Read(piece)
		passed := l.passed.Add(int64(n))
		if c := l.cut.Load(); c != nil && passed > c.at && l.cut.CompareAndSwap(c, nil) {
			c.done()
			return
		}
		if err != nil {
			return
		}
		if _, err := to.Write(piece[:n]); err != nil {
			return
		}
	}
}
