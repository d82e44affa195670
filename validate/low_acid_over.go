package validate

import "stillroom/content"

// lowAcidOver reports more of a low-acid food than the published recipe has
// for as much acid and as many tomatoes.
var lowAcidOver = &Rule{
	ID:       "low-acid-over",
	Severity: Error,
	Summary:  "more onions, peppers or other low-acid food than was tested for the acid",
	Doc: `Nine in ten salsas on blogs have less acid than their vegetables need. A tested
recipe is a proportion: vegetables to acid, and vegetables to tomatoes. Each
low-acid food may be less than that, never more; the kinds of pepper count
together. More acid and more tomatoes allow more vegetables, in step.

Where an amount cannot be compared with the published one (onions by number, where
that has them by weight), this asks for it as advice.`,
	Source:       blogStudy,
	CheckKeeping: checkLowAcidOver,
}

func checkLowAcidOver(_ *content.Recipe, m *Match) []Finding {
	if m.Process != nil && len(m.Tested) == 0 && m.need().Origin == AcidFromRecipe {
		return []Finding{{
			Pos:      m.Keeping.Process.Pos,
			Severity: Advice,
			Message:  "the published recipe of " + m.Process.ID + " is not in the tables, so proportions cannot be compared",
			Advice:   "Compare them with the publication yourself.",
			Source:   m.Process.Source(),
		}}
	}
	return m.besideTested((*comparison).lowAcidOver)
}

func (c *comparison) lowAcidOver() []Finding {
	batch, by := c.batch()
	if batch == nil && len(c.untold) == 0 {
		return nil // no acid at all, which other rules report
	}
	var fs []Finding
	for _, s := range c.tested.shares {
		have := c.sharing(s)
		if len(have) == 0 {
			continue
		}
		x := timesShared(have, s.tested)
		switch {
		case x == nil || batch == nil:
			fs = append(fs, c.untoldAmount(have[0], s.tested))
		case x.Cmp(batch) > 0:
			fs = append(fs, Finding{
				Pos:     have[len(have)-1].Pos,
				Message: andList(names(have)) + ": " + shareOver(x, batch) + " of what was tested with this " + plenty[by],
				Advice:  "The tested recipe has " + lineOf(s.tested) + " to " + lineOf(c.measuredBy(by)) + ". Use less, never less acid.",
				Source:  c.tested.source(),
			})
		}
	}
	if len(fs) == 0 && len(ofRole(c.items, RoleLowAcid)) > 0 {
		fs = c.untoldBatch()
	}
	return fs
}

// untoldBatch asks for the amounts of acid and tomatoes that cannot be
// compared.
func (c *comparison) untoldBatch() []Finding {
	var fs []Finding
	for _, by := range c.untold {
		tested := c.measuredBy(by)
		for _, in := range c.items {
			if in.role() == tested[0].role() {
				fs = append(fs, c.untoldAmount(in, tested))
				break
			}
		}
	}
	return fs
}

// measuredBy gives the tested portions by which a batch is measured.
func (c *comparison) measuredBy(by string) []Item {
	if by == "acid" {
		return c.tested.of(RoleAcid)
	}
	return c.tested.of(RoleTomato)
}

func names(items []Item) []string {
	words := make([]string, len(items))
	for i, in := range items {
		words[i] = in.Item
	}
	return words
}
