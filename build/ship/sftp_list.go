package ship

import (
	"context"
	"errors"
	"io/fs"
	"path"
	"strconv"
	"sync"

	"github.com/pkg/sftp"
)

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
