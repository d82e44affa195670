package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
)

// siteOf finds the site that a file lies in: the folder that holds content/.
func siteOf(file string) (string, error) {
	if err := isFile(file); err != nil {
		return "", err
	}
	full, err := filepath.Abs(file)
	if err != nil {
		return "", err
	}
	for dir := filepath.Dir(full); ; dir = filepath.Dir(dir) {
		if filepath.Base(dir) == "content" {
			return filepath.Dir(dir), nil
		}
		if dir == filepath.Dir(dir) {
			return "", fmt.Errorf("%s lies in no site: name a file where it is published from, as in content/recipes", file)
		}
	}
}

// isFile says what stands in the place of the one file that a command reads.
func isFile(name string) error {
	info, err := os.Stat(name)
	switch {
	case errors.Is(err, fs.ErrNotExist) && isThere(name+".md"):
		return fmt.Errorf("there is no file %s; did you mean %[1]s.md?", name)
	case errors.Is(err, fs.ErrNotExist) && !isFolder(filepath.Dir(name)):
		return fmt.Errorf("there is no file %s, nor a folder %s", name, filepath.Dir(name))
	case errors.Is(err, fs.ErrNotExist):
		return fmt.Errorf("there is no file %s; write its path, as in content/recipes/NAME.md", name)
	case err != nil:
		return err
	case info.IsDir():
		return fmt.Errorf("%s is a folder; name one file in it, as in %s", name, filepath.Join(name, "NAME.md"))
	}
	return nil
}

func isThere(name string) bool {
	_, err := os.Stat(name)
	return err == nil
}

func isFolder(name string) bool {
	info, err := os.Stat(name)
	return err == nil && info.IsDir()
}
