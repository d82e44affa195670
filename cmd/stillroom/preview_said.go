package main

import (
	"fmt"
	"strings"
	"sync"
	"time"

	"stillroom/build"
	"stillroom/build/preview"
	"stillroom/validate"
)

// sayShown says where to look. The first address is the result.
func (p *program) sayShown(site string, d *door, found preview.Found) {
	p.sayTroubles(found.Troubles)
	p.say("%s", countsLine(found.Report.Counts))
	p.say("Showing %s. Open the address in a browser; Ctrl-C ends the preview.", show(site))
	fmt.Fprintln(p.out, d.addresses[0])
	if !d.hosts.Open {
		return
	}
	for _, a := range d.addresses[1:] {
		p.say("On another machine: %s", a)
	}
	p.say("Whoever is in your network can look at all of the site, drafts and findings as well, until you end the preview. Nobody can change anything.")
}

// sayBuilt says what has changed and what is wrong with it, in a few lines: all
// that was found is shown in the browser.
func (p *program) sayBuilt(found preview.Found) {
	if len(found.Changed) > 0 {
		p.say("%s %s", time.Now().Format(time.TimeOnly), someOf(found.Changed))
	}
	p.sayTroubles(found.Troubles)
	rep := withoutAdvice(found.Report)
	rep.Findings = nil
	if len(found.Changed) <= fewFiles {
		for _, file := range found.Changed {
			rep.Findings = append(rep.Findings, withoutAdvice(validate.Report{Findings: found.In(file)}).Findings...)
		}
	}
	writeText(p.err, rep, colourFor(p.err))
}

// fewFiles is how many files are told of by name.
const fewFiles = 5

func someOf(files []string) string {
	if len(files) <= fewFiles {
		return strings.Join(files, ", ")
	}
	return fmt.Sprintf("%s and %d more", strings.Join(files[:fewFiles], ", "), len(files)-fewFiles)
}

func (p *program) sayTroubles(all []preview.Trouble) {
	for _, t := range all {
		p.say("%s", strings.TrimSpace(t.File+" "+t.Text))
	}
}

// A spokenCache says once that nothing can be kept, as on a disk that is full,
// and goes on without.
type spokenCache struct {
	build.Cache
	say  func(error)
	once *sync.Once
}

func (p *program) spoken(c build.Cache) build.Cache {
	if c == nil {
		return nil
	}
	return spokenCache{c, func(err error) {
		p.say("Prints of pictures cannot be kept, and are made again the next time: %v", err)
	}, new(sync.Once)}
}

// Put keeps data, or says why it cannot.
func (c spokenCache) Put(key string, data []byte) error {
	err := c.Cache.Put(key, data)
	if err != nil {
		c.once.Do(func() { c.say(err) })
	}
	return err
}
