package ship

import (
	"context"
	"errors"
	"io"
	"io/fs"
	"path"
	"strings"
	"sync"
	"time"

	"github.com/pkg/sftp"
	"golang.org/x/crypto/ssh"
)

// sftpPlace is a folder of a server. A connection that breaks is made anew by
// whoever needs it next.
type sftpPlace struct {
	server *server
	base   string
	dial   dial
	times  times

	mu    sync.Mutex // guards what follows
	ssh   *ssh.Client
	files *sftp.Client
	made  map[string]bool // folders that are there
	known bool            // the server has answered before
	left  []string        // what tries that failed may have left there
}

func openSFTP(to Address, t times) (place, error) {
	s, err := findServer(to)
	if err != nil {
		return nil, err
	}
	base := to.path
	if own, ok := strings.CutPrefix(base, "/~"); ok && (own == "" || own[0] == '/') {
		base = path.Clean("./" + own)
	}
	return &sftpPlace{server: s, base: base, dial: usualDial(t), times: t, made: make(map[string]bool)}, nil
}

// client gives the connection, a new one if there is none.
func (p *sftpPlace) client(ctx context.Context) (*sftp.Client, error) {
	p.mu.Lock()
	defer p.mu.Unlock()
	if p.files != nil {
		return p.files, nil
	}
	conn, err := p.dial(ctx, "tcp", p.server.address())
	if err != nil {
		return nil, err
	}
	conn.SetDeadline(time.Now().Add(p.times.stalled))
	c, chans, reqs, err := ssh.NewClientConn(conn, p.server.address(), p.server.config())
	if err != nil {
		conn.Close()
		return nil, err
	}
	client := ssh.NewClient(c, chans, reqs)
	files, err := sftp.NewClient(client, sftp.UseConcurrentWrites(true))
	if err != nil {
		client.Close()
		return nil, noSubsystem{err}
	}
	p.ssh, p.files, p.known = client, files, true
	return files, nil
}

// noSubsystem is an error of a server that lets us in and knows no SFTP.
type noSubsystem struct{ error }

// with does something over the connection, and drops one that is broken.
func (p *sftpPlace) with(ctx context.Context, do func(*sftp.Client) error) error {
	if err := ctx.Err(); err != nil {
		return err
	}
	c, err := p.client(ctx)
	if err != nil {
		return err
	}
	err = do(c)
	if err != nil && p.passing(err) {
		p.drop(c)
	}
	return err
}

func (p *sftpPlace) drop(c *sftp.Client) {
	p.mu.Lock()
	defer p.mu.Unlock()
	if p.files == c {
		p.ssh.Close()
		p.files, p.ssh = nil, nil
	}
}

func (p *sftpPlace) close() {
	p.mu.Lock()
	defer p.mu.Unlock()
	if p.ssh != nil {
		p.ssh.Close()
	}
}

func (p *sftpPlace) at(name string) string { return path.Join(p.base, name) }

func (p *sftpPlace) label(string) string { return "" } // a file is nothing but its bytes

func (p *sftpPlace) read(ctx context.Context, name string) (data []byte, err error) {
	err = p.with(ctx, func(c *sftp.Client) error {
		f, err := c.Open(p.at(name))
		if err != nil {
			return err
		}
		defer f.Close()
		data, err = io.ReadAll(f)
		return err
	})
	return data, err
}

func (p *sftpPlace) remove(ctx context.Context, name string) error {
	return p.with(ctx, func(c *sftp.Client) error {
		if err := c.Remove(p.at(name)); err != nil && !errors.Is(err, fs.ErrNotExist) {
			return err
		}
		for dir := path.Dir(name); dir != "."; dir = path.Dir(dir) {
			if c.RemoveDirectory(p.at(dir)) != nil {
				break // not empty
			}
			p.mu.Lock()
			delete(p.made, p.at(dir))
			p.mu.Unlock()
		}
		return nil
	})
}
