package main

import (
	"bytes"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"sync"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/extension"
	"github.com/yuin/goldmark/parser"
)

// floorMain is the least that any program has to do that makes such a site:
// "floor SITE LIKE TO" reads the Markdown of a site, has goldmark make HTML of
// it, and writes as many files of as many bytes into a new folder as there are
// in another. It does so with two workers, and knows nothing of recipes.
func floorMain() {
	if err := floor(os.Args[1], os.Args[2], os.Args[3]); err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(failed)
	}
}

func floor(site, like, to string) error {
	var texts []string
	err := filepath.WalkDir(filepath.Join(site, "content"), func(name string, d fs.DirEntry, err error) error {
		if strings.HasSuffix(name, ".md") {
			texts = append(texts, name)
		}
		return err
	})
	if err != nil {
		return err
	}
	md := goldmark.New(
		goldmark.WithExtensions(extension.Table, extension.Strikethrough, extension.TaskList, extension.Footnote, extension.Typographer),
		goldmark.WithParserOptions(parser.WithAutoHeadingID()))
	err = inTwo(texts, func(name string) error {
		data, err := os.ReadFile(name)
		if err != nil {
			return err
		}
		if _, body, ok := bytes.Cut(data, []byte("\n---\n")); ok {
			data = body
		}
		return md.Convert(data, io.Discard)
	})
	if err != nil {
		return err
	}
	return writeLike(like, to)
}

// writeLike makes files as large as those of a folder.
func writeLike(like, to string) error {
	sizes, most := make(map[string]int64), int64(0)
	var files []string
	err := filepath.WalkDir(like, func(name string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		rel, err := filepath.Rel(like, name)
		if err != nil || d.IsDir() {
			return os.MkdirAll(filepath.Join(to, rel), 0o777)
		}
		info, err := d.Info()
		if err == nil {
			files, sizes[rel], most = append(files, rel), info.Size(), max(most, info.Size())
		}
		return err
	})
	if err != nil {
		return err
	}
	page := bytes.Repeat([]byte("<p>Once a fortnight."), int(most)/20+1)
	return inTwo(files, func(rel string) error {
		return os.WriteFile(filepath.Join(to, rel), page[:sizes[rel]], 0o666)
	})
}

// inTwo does something with each name, a half of them at a time.
func inTwo(names []string, do func(name string) error) error {
	var group sync.WaitGroup
	errs := make([]error, 2)
	for k, half := range [][]string{names[:len(names)/2], names[len(names)/2:]} {
		group.Go(func() {
			for _, name := range half {
				if errs[k] = do(name); errs[k] != nil {
					return
				}
			}
		})
	}
	group.Wait()
	if errs[0] != nil {
		return errs[0]
	}
	return errs[1]
}
