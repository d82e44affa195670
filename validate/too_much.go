package validate

// tooMuch reports ingredients of a role of which there is more than in the
// published recipe, for as much acid or as many tomatoes as there are.
func (m *Match) tooMuch(role Role, advice string) []Finding {
	return m.besideTested(func(c *comparison) []Finding {
		have, tested := ofRole(c.items, role), c.tested.of(role)
		batch, by := c.batch()
		if len(have) == 0 || len(tested) == 0 || batch == nil {
			return nil
		}
		x := timesTested(have, tested, highEnd)
		if x == nil {
			return []Finding{c.untoldAmount(have[0], tested)}
		}
		if x.Cmp(batch) <= 0 {
			return nil
		}
		return []Finding{{
			Pos:     have[0].Pos,
			Message: have[0].Item + ": " + shareOver(x, batch) + " of what was tested with this " + plenty[by],
			Advice:  "The tested recipe has " + lineOf(tested) + ". " + advice,
			Source:  c.tested.source(),
		}}
	})
}

// untoldAmount asks for an amount that can be compared.
func (c *comparison) untoldAmount(in Item, tested []Item) Finding {
	return Finding{
		Pos:      in.Pos,
		Severity: Advice,
		Message:  in.Item + ": the amount cannot be compared with the tested recipe",
		Advice:   "The tested recipe has " + lineOf(tested) + ". Give the amount in the same measure as well.",
		Source:   c.tested.source(),
	}
}
