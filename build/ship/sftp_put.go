package ship

import (
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"math/rand/v2"
	"os"
	"path"
	"strconv"
	"time"

	"github.com/pkg/sftp"
)

// moving ends the name of a file that is on its way to its place.
const moving = ".stillroom-moving"

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
