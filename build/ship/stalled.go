package ship

import (
	"context"
	"net"
	"time"
)

// A watched connection fails when nothing moves on it for too long. While a run
// lasts its lock beats, so there is always something to hear.
type watched struct {
	net.Conn
	most time.Duration
}

func (w watched) Read(b []byte) (int, error) {
	w.SetReadDeadline(time.Now().Add(w.most))
	return w.Conn.Read(b)
}

func (w watched) Write(b []byte) (int, error) {
	w.SetWriteDeadline(time.Now().Add(w.most))
	return w.Conn.Write(b)
}

// dial connects to where a server listens.
type dial func(ctx context.Context, network, address string) (net.Conn, error)

func usualDial(t times) dial {
	d := net.Dialer{Timeout: min(t.stalled, 20*time.Second)}
	return func(ctx context.Context, network, address string) (net.Conn, error) {
		c, err := d.DialContext(ctx, network, address)
		if err != nil {
			return nil, err
		}
		return watched{c, t.stalled}, nil
	}
}
