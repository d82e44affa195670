package build

import (
	"stillroom/content"
	"stillroom/validate"
)

// An Agreement says which published process a recipe's figures agree with, and
// whether a copy of the publication was seen. It never says more.
type Agreement struct {
	Food        string // what the process was tested with; empty for one set in writing
	Publication string
	Table       string
	Seen        string // how the figures were seen
}

// agreement gives nil for a way that cites no process.
func agreement(k *content.Keeping) *Agreement {
	if t := k.TestedBy; t != nil {
		return &Agreement{
			Publication: t.Authority.V,
			Table:       t.Reference.V,
			Seen:        "The author holds this process in writing, dated " + day(t.Date.V).Text + ".",
		}
	}
	p, _ := validate.FindProcess(k.Process.V, k.Way.V, k.Pack.V)
	if p == nil {
		return nil
	}
	return &Agreement{
		Food:        p.Food,
		Publication: p.Publication,
		Table:       p.Table,
		Seen:        seen(p),
	}
}

// seen is worded so that a figure from memory is never taken for one that was
// read.
func seen(p *validate.Process) string {
	switch unseen, all := p.FromMemory(); unseen {
	case 0:
		return "Its figures were read in a published copy."
	case all:
		return "Its figures are from memory: compare them with the publication before you rely on them."
	}
	return "Some of its figures were read in a published copy and some are from memory: compare them with the publication."
}
