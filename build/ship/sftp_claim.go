package ship

import (
	"bytes"
	"context"
	"errors"
	"io/fs"

	"github.com/pkg/sftp"
)

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
