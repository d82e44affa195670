package content

import (
	"bytes"
	"fmt"
	"io"
	"io/fs"
	"slices"
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
	listen(fsys, s.Media)
	kept, keptFaults, err := w.guids()
	if err != nil {
		return nil, nil, err
	}
	s.GUIDs = kept
	jobs := w.settings(&s.Settings)
	jobs = append(jobs, jobsFor(recipes, s.Recipes, ReadRecipe)...)
	jobs = append(jobs, jobsFor(episodes, s.Episodes, ReadEpisode)...)
	jobs = append(jobs, jobsFor(pages, s.Pages, ReadPage)...)
	jobs = append(jobs, transcripts(s.Media)...)
	faults, err := do(fsys, jobs, progress)
	if err != nil {
		return nil, nil, err
	}
	faults = append(append(faults, w.faults...), keptFaults...)
	slices.SortStableFunc(faults, compareFaults)
	return s, faults, nil
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
	if !w.has(settingsFile) {
		var faults []Fault
		*into, faults = NoSettings()
		w.faults = append(w.faults, faults...)
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
	data, err := readText(fsys, j.file)
	if err != nil {
		return nil, fmt.Errorf("read %s: %w", j.file, err)
	}
	return j.read(data), nil
}

// readText reads a file of text, and one that is too long only as far as it
// takes to tell.
func readText(fsys fs.FS, file string) ([]byte, error) {
	f, err := fsys.Open(file)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	info, err := f.Stat()
	if err != nil {
		return nil, err
	}
	b := bytes.NewBuffer(make([]byte, 0, min(info.Size(), maxFile)+bytes.MinRead))
	_, err = b.ReadFrom(io.LimitReader(f, maxFile+1))
	return b.Bytes(), err
}
