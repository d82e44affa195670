package content

import (
	"errors"
	"fmt"
	"io/fs"
	"path"
	"slices"
	"strings"
	"sync"
)

// Read reads the site in the folder fsys, which holds content/. It gives as
// much of it as could be read, and every fault in order of file, line and
// column. Only what is wrong with the folder itself is an error: no content in
// it, a file that cannot be opened.
//
// progress, which may be nil, is told after every file how many are done. It
// is called by one goroutine at a time.
func Read(fsys fs.FS, progress func(done, total int)) (*Site, []Fault, error) {
	if _, err := fs.Stat(fsys, "content"); err != nil {
		return nil, nil, fmt.Errorf("find the folder content: %w", err)
	}
	w := walk{fsys: fsys}
	recipes, episodes, pages := w.texts("content/recipes"), w.texts("content/episodes"), w.texts("content/pages")
	s := &Site{
		FS:       fsys,
		Recipes:  make([]*Recipe, len(recipes)),
		Episodes: make([]*Episode, len(episodes)),
		Pages:    make([]*Page, len(pages)),
		Pictures: w.files("content/pictures", "content/pictures/", isPicture),
		Media:    w.files("content/episodes", "", isMedia),
	}
	if w.err != nil {
		return nil, nil, w.err
	}
	jobs := w.settings(&s.Settings)
	jobs = append(jobs, jobsFor(recipes, s.Recipes, ReadRecipe)...)
	jobs = append(jobs, jobsFor(episodes, s.Episodes, ReadEpisode)...)
	jobs = append(jobs, jobsFor(pages, s.Pages, ReadPage)...)
	faults, err := do(fsys, jobs, progress)
	if err != nil {
		return nil, nil, err
	}
	faults = append(faults, w.faults...)
	slices.SortStableFunc(faults, compareFaults)
	return s, faults, nil
}

// A walk lists files, until the first error.
type walk struct {
	fsys   fs.FS
	faults []Fault
	err    error
}

// each gives every file in and below a folder, which may be missing.
func (w *walk) each(folder string, found func(file string) error) {
	if _, err := fs.Stat(w.fsys, folder); w.err != nil || errors.Is(err, fs.ErrNotExist) {
		return
	}
	w.err = fs.WalkDir(w.fsys, folder, func(file string, e fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return fmt.Errorf("read %s: %w", file, err)
		case isForeign(e.Name()) && e.IsDir():
			return fs.SkipDir
		case isForeign(e.Name()) || e.IsDir():
			return nil
		}
		return found(file)
	})
}

// texts lists the Markdown files of a folder, in order of their paths.
func (w *walk) texts(folder string) (list []string) {
	w.each(folder, func(file string) error {
		switch ext := path.Ext(file); {
		case ext == ".md":
			list = append(list, file)
		case strings.EqualFold(ext, ".md"), strings.EqualFold(ext, ".markdown"):
			w.faults = append(w.faults, Fault{
				Pos: Pos{File: file}, Kind: BadFileName, Message: "only files whose names end in .md are read",
				Advice: "name it " + strings.TrimSuffix(path.Base(file), ext) + ".md",
			})
		}
		return nil
	})
	slices.Sort(list)
	return list
}

// files lists the files of a folder that are used as they are, by their paths
// without prefix.
func (w *walk) files(folder, prefix string, wanted func(name string) bool) map[string]File {
	list := make(map[string]File)
	w.each(folder, func(file string) error {
		if !wanted(file) {
			return nil
		}
		info, err := fs.Stat(w.fsys, file) // not that of the entry, which may be a link
		if err != nil {
			return fmt.Errorf("read %s: %w", file, err)
		}
		list[strings.TrimPrefix(file, prefix)] = File{Path: file, Size: info.Size()}
		return nil
	})
	return list
}

// isForeign reports whether a file is not the cook's: hidden, or something
// that an editor or the Go tools keep beside the text.
func isForeign(name string) bool {
	return strings.HasPrefix(name, ".") || strings.HasSuffix(name, "~") || strings.HasPrefix(name, "#") && strings.HasSuffix(name, "#") ||
		slices.Contains([]string{".swp", ".swo", ".tmp", ".go"}, path.Ext(name))
}

func isPicture(string) bool { return true }

// isMedia reports whether a file beside the show notes is a recording or a
// transcript.
func isMedia(name string) bool {
	return slices.Contains([]string{".mp3", ".m4a", ".ogg", ".vtt", ".srt"}, strings.ToLower(path.Ext(name)))
}

// A job is a file to be read.
type job struct {
	file string
	read func(data []byte) []Fault
}

// jobsFor makes a job of every file, whose outcome goes to the same place of
// another slice.
func jobsFor[T any](files []string, into []*T, read func(string, []byte) (*T, []Fault)) []job {
	jobs := make([]job, len(files))
	for i, file := range files {
		jobs[i] = job{file, func(data []byte) (faults []Fault) {
			into[i], faults = read(file, data)
			return faults
		}}
	}
	return jobs
}

const settingsFile = "content/site.yaml"

// settings makes the job of reading site.yaml, or reports that there is none.
func (w *walk) settings(into *Settings) []job {
	if _, err := fs.Stat(w.fsys, settingsFile); errors.Is(err, fs.ErrNotExist) {
		*into, _ = ReadSettings(settingsFile, nil)
		w.faults = append(w.faults, Fault{Pos: Pos{File: settingsFile}, Kind: MissingKey,
			Message: "there is no such file, and the site has no name", Advice: "write name: and what the site is called into it"})
		return nil
	}
	return []job{{settingsFile, func(data []byte) (faults []Fault) {
		*into, faults = ReadSettings(settingsFile, data)
		return faults
	}}}
}

// workers is how many files are read at a time. More than two gain nothing
// until a disk is slow.
const workers = 2

// do reads the files of all jobs, and gives their faults in order of the jobs.
// Of several errors it gives that of the first job.
func do(fsys fs.FS, jobs []job, progress func(done, total int)) ([]Fault, error) {
	faults, errs := make([][]Fault, len(jobs)), make([]error, len(jobs))
	next, done := make(chan int), make(chan int)
	var group sync.WaitGroup
	for range workers {
		group.Go(func() {
			for i := range next {
				faults[i], errs[i] = jobs[i].do(fsys)
				done <- i
			}
		})
	}
	go func() {
		for i := range jobs {
			next <- i
		}
		close(next)
		group.Wait()
		close(done)
	}()
	for n := 1; ; n++ {
		if _, more := <-done; !more {
			break
		}
		if progress != nil {
			progress(n, len(jobs))
		}
	}
	for _, err := range errs {
		if err != nil {
			return nil, err
		}
	}
	return slices.Concat(faults...), nil
}

func (j job) do(fsys fs.FS) ([]Fault, error) {
	data, err := fs.ReadFile(fsys, j.file)
	if err != nil {
		return nil, fmt.Errorf("read %s: %w", j.file, err)
	}
	return j.read(data), nil
}
