package main

import (
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"runtime/debug"
	"time"

	"stillroom/content"
	"stillroom/validate"
)

// A judged site has been read and checked.
type judged struct {
	site    *content.Site
	report  validate.Report
	checked validate.Checked // only if there was no error
	ok      bool             // there was none
	only    []string         // the files and folders that are looked at; all if empty
}

// judge reads the site in a folder and checks it as of a day, or of today.
func (p *program) judge(dir string, on day, progress *progress) (judged, error) {
	site, faults, err := p.read(dir, progress)
	if err != nil {
		return judged{}, err
	}
	collectMore()
	progress.begin("checking")
	j := judged{site: site}
	j.report, j.checked, j.ok = validate.Check(site, faults, on.orToday())
	return j, nil
}

// collectMore has garbage collected more often beside a site that holds much
// memory, so that the rest takes half a gigabyte more, or one and a half times as
// much again. Each collection goes over all that is held: so a recipe of a large
// site takes no more of them than one of a smaller site.
func collectMore() {
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	const room, least = 512 << 20, 150
	held := m.NextGC / (1 + seldom/100)         // at the last collection
	held += (max(m.HeapAlloc, held) - held) / 2 // of what was read since, half is kept
	debug.SetGCPercent(int(min(max(100*room/max(held, 1), least), seldom)))
}

// read reads the site in a folder, and judges nothing but the writing.
func (p *program) read(dir string, progress *progress) (*content.Site, []content.Fault, error) {
	if err := isSite(dir); err != nil {
		return nil, nil, err
	}
	progress.begin("reading")
	site, faults, err := content.Read(os.DirFS(dir), progress.step)
	if err != nil {
		return nil, nil, fmt.Errorf("read %s: %w", dir, err)
	}
	return site, faults, nil
}

// orToday is the day itself if one was given, and else what the calendar on
// the wall says.
func (d day) orToday() content.Date {
	if !d.IsZero() {
		return d.Date
	}
	now := time.Now()
	return content.Date{Year: now.Year(), Month: now.Month(), Day: now.Day()}
}

func isSite(dir string) error {
	info, err := os.Stat(filepath.Join(dir, "content"))
	if err == nil && info.IsDir() {
		return nil
	}
	if _, err := os.Stat(dir); err != nil {
		return fmt.Errorf("there is no folder %s", dir)
	}
	return fmt.Errorf("%s is not a site, since it has no folder named content; to make one, stillroom start DIR", show(dir))
}

// show names a folder in a message.
func show(dir string) string {
	if dir == "." {
		return "this folder"
	}
	return dir
}
