package ship

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"math/rand/v2"
	"net"
	"os"
	"path"
	"strconv"
	"strings"
	"sync"
	"syscall"
	"time"

	"github.com/pkg/sftp"
	"golang.org/x/crypto/ssh"
)

// moving ends the name of a file that is on its way to its place.
const moving = ".stillroom-moving"

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

func (p *sftpPlace) list(ctx context.Context, within func(string) bool) (map[string]found, error) {
	all := make(map[string]found)
	var mu sync.Mutex
	for level := []string{"."}; len(level) > 0; {
		var below []string
		err := each(ctx, level, func(ctx context.Context, dir string) error {
			infos, err := p.readDir(ctx, dir)
			mu.Lock()
			defer mu.Unlock()
			for _, info := range infos {
				name := path.Join(dir, info.Name())
				if info.IsDir() && within(name) {
					below = append(below, name)
					continue
				}
				all[name] = foundAs(info)
			}
			return err
		})
		if err != nil {
			return nil, err
		}
		level = below
	}
	return all, nil
}

// readDir lists a folder; one that is not there is empty.
func (p *sftpPlace) readDir(ctx context.Context, dir string) (infos []fs.FileInfo, err error) {
	err = p.with(ctx, func(c *sftp.Client) error {
		infos, err = c.ReadDirContext(ctx, p.at(dir))
		return err
	})
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	if err == nil {
		p.mu.Lock()
		p.made[p.at(dir)] = true
		p.mu.Unlock()
	}
	return infos, err
}

func foundAs(info fs.FileInfo) found {
	f := found{size: info.Size(), stamp: strconv.FormatInt(info.ModTime().Unix(), 10)}
	switch {
	case info.IsDir():
		f.kind = folder
	case !info.Mode().IsRegular():
		f.kind = link
	}
	return f
}

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

// put writes the file beside its place and renames it. The server is told the
// time of the file, so that it is known without asking. No two tries share a
// name: of a connection that broke the server may still have orders to obey.
func (p *sftpPlace) put(ctx context.Context, name string, body io.Reader, size int64) (stamp string, err error) {
	now := time.Now().Truncate(time.Second)
	err = p.with(ctx, func(c *sftp.Client) error {
		if err := p.makeFolder(c, path.Dir(p.at(name))); err != nil {
			return err
		}
		beside := p.beside(name)
		err := write(ctx, c, beside, body, size)
		if err == nil {
			err = c.Chtimes(beside, now, now)
		}
		if err == nil {
			err = rename(c, beside, p.at(name))
		}
		if err != nil {
			p.mu.Lock()
			p.left = append(p.left, beside)
			p.mu.Unlock()
		}
		return err
	})
	return strconv.FormatInt(now.Unix(), 10), err
}

func (p *sftpPlace) beside(name string) string {
	return fmt.Sprintf("%s.%08x%s", p.at(name), rand.Uint32(), moving)
}

// tidy removes what was left of tries that failed.
func (p *sftpPlace) tidy(ctx context.Context) error {
	return p.with(ctx, func(c *sftp.Client) error {
		p.mu.Lock()
		defer p.mu.Unlock()
		for _, name := range p.left {
			c.Remove(name) // if it stays, the next run finds it
		}
		p.left = nil
		return nil
	})
}

// makeFolder makes a folder and those above it, unless they are known to be
// there.
func (p *sftpPlace) makeFolder(c *sftp.Client, dir string) error {
	p.mu.Lock()
	there := p.made[dir]
	p.mu.Unlock()
	if there {
		return nil
	}
	if err := c.MkdirAll(dir); err != nil {
		return err
	}
	p.mu.Lock()
	p.made[dir] = true
	p.mu.Unlock()
	return nil
}

func write(ctx context.Context, c *sftp.Client, name string, body io.Reader, size int64) error {
	f, err := c.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_TRUNC)
	if err != nil {
		return err
	}
	// In pieces that are large enough to fill a line, and small enough for eight at once.
	piece := make([]byte, min(max(size, 1), 512<<10))
	n, err := io.CopyBuffer(struct{ io.Writer }{f}, stoppable{ctx, body}, piece)
	if err := errors.Join(err, f.Close()); err != nil {
		return err
	}
	if n != size {
		return fmt.Errorf("%d bytes were sent of %d: did the file change meanwhile?", n, size)
	}
	return nil
}

// stoppable ends a long sending when the run is to stop.
type stoppable struct {
	ctx context.Context
	io.Reader
}

func (s stoppable) Read(b []byte) (int, error) {
	if err := s.ctx.Err(); err != nil {
		return 0, err
	}
	return s.Reader.Read(b)
}

// rename puts a file in the place of another. Servers that cannot do so in one
// step lack the file for a moment. https://github.com/openssh/openssh-portable/blob/master/PROTOCOL#L479
func rename(c *sftp.Client, from, to string) error {
	if _, ok := c.HasExtension("posix-rename@openssh.com"); ok {
		return c.PosixRename(from, to)
	}
	if err := c.Remove(to); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	return c.Rename(from, to)
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

// claim makes a file that must not be there yet, or puts another in its place.
// SFTP cannot compare and put in one step: two runs that both find a third to
// be dead may both go on, and one of them hears of it at its next beat.
func (p *sftpPlace) claim(ctx context.Context, name string, data, seen []byte) (ok bool, err error) {
	if seen != nil {
		return p.replace(ctx, name, data, seen)
	}
	err = p.with(ctx, func(c *sftp.Client) error {
		if err := p.makeFolder(c, p.base); err != nil {
			return err
		}
		beside := p.beside(name)
		if err := write(ctx, c, beside, bytes.NewReader(data), int64(len(data))); err != nil {
			return err
		}
		defer c.Remove(beside)
		err := c.Link(beside, p.at(name)) // whole from its first moment, and none if the name is taken
		if ok = err == nil; ok {
			return nil
		}
		if _, there := c.Lstat(p.at(name)); there == nil {
			return nil
		}
		return err
	})
	return ok, err
}

func (p *sftpPlace) replace(ctx context.Context, name string, data, seen []byte) (bool, error) {
	now, err := p.read(ctx, name)
	if errors.Is(err, fs.ErrNotExist) || err == nil && string(now) != string(seen) {
		return false, nil
	}
	if err != nil {
		return false, err
	}
	_, err = p.put(ctx, name, bytes.NewReader(data), int64(len(data)))
	return err == nil, err
}

// passing reports whether a new connection may help. One that could never be
// made will not be: then the address is wrong.
func (p *sftpPlace) passing(err error) bool {
	var status *sftp.StatusError
	if errors.As(err, &status) {
		return status.FxCode() == sftp.ErrSSHFxConnectionLost || status.FxCode() == sftp.ErrSSHFxNoConnection
	}
	for _, e := range []error{sftp.ErrSSHFxConnectionLost, io.EOF, io.ErrUnexpectedEOF, net.ErrClosed, syscall.ECONNRESET, syscall.EPIPE} {
		if errors.Is(err, e) {
			return true
		}
	}
	p.mu.Lock()
	defer p.mu.Unlock()
	var network net.Error
	return p.known && errors.As(err, &network)
}
