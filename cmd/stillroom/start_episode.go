package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"stillroom/content"
	"stillroom/content/intake"
)

// startEpisode writes show notes with the number that comes next.
func (c *startCommand) startEpisode(p *program, site string) error {
	s, _, err := content.Read(os.DirFS(site), nil)
	if err != nil {
		return fmt.Errorf("read %s: %w", site, err)
	}
	text := intake.BlankEpisode(strings.Join(c.Name, " "), nextNumber(s.Episodes))
	if err := begin(site, text); err != nil {
		return err
	}
	fmt.Fprintln(p.out, filepath.Join(site, filepath.FromSlash(text.Path)))
	p.say("It is a draft. To publish it, write published: with a day in place of status: draft.")
	return nil
}

// nextNumber is the number of a new episode; 0 if those that there are have
// none.
func nextNumber(all []*content.Episode) int {
	last := 0
	for _, e := range all {
		last = max(last, e.Number.V)
	}
	if last == 0 && len(all) > 0 {
		return 0
	}
	return last + 1
}
