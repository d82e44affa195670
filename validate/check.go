package validate

import (
	"stillroom/content"
)

// A Report is all that a check found.
type Report struct {
	Findings []Finding // in order of file, line, column and rule; accepted ones included
	Counts   Counts
}

// Counts are the figures of the closing line. Accepted findings are not
// counted.
type Counts struct {
	Recipes  int `json:"recipes"`
	Episodes int `json:"episodes"`
	Pages    int `json:"pages"`
	Errors   int `json:"errors"`
	Warnings int `json:"warnings"`
	Advice   int `json:"advice"`
}

// A Checked is a site in which Check found no error. Only Check can make one.
type Checked struct {
	site *content.Site
	day  content.Date
}

// Site is what was checked; nobody may change it. Nil for the zero Checked.
func (c Checked) Site() *content.Site { return c.site }

// Day is the day for which the site was checked: what is published later is
// held back.
func (c Checked) Day() content.Date { return c.day }
