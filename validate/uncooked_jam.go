package validate

import (
	"strings"

	"stillroom/content"
)

// uncookedJam reports uncooked jam that is canned, or kept too long cold.
var uncookedJam = &Rule{
	ID:       "uncooked-jam",
	Severity: Error,
	Summary:  "uncooked jam that is canned, or kept for over 4 weeks in the refrigerator",
	Doc: `Uncooked jam is raw fruit with sugar: warm, it ferments. It lives in the freezer, up to
a year, and in the refrigerator for 3 weeks by newer sheets, 4 by older ones: over 3 is
advice, over 4 a warning. No canning process was tested with it.`,
	Source: Source{
		Title:   "Freezer jams, Michigan State University Extension",
		Address: "http://www.solareagle.com/PREP/PFS/01600553.HTM",
	},
	CheckKeeping: checkUncookedJam,
}

// uncookedWords tell of a jam that was never boiled.
var uncookedWords = []string{"uncooked", "freezer jam", "freezer jelly", "no-cook", "no cook", "raw jam"}

func checkUncookedJam(r *content.Recipe, m *Match) []Finding {
	if !isSpread(r.Kind.V) || !isUncooked(r) {
		return nil
	}
	k := m.Keeping
	four, three, frozen := LimitOf("freezer-jam-fridge-4wk"), LimitOf("freezer-jam-fridge-3wk"), LimitOf("freezer-jam-freezer")
	switch way := k.Way.V; {
	case way.Canned():
		return []Finding{{
			Pos:     k.Way.Pos,
			Message: "an uncooked jam is not canned",
			Advice:  "Freeze it, or cook it by a recipe for cooked jam.",
			Notes:   []Note{{Pos: r.Name.Pos, Message: "called uncooked here"}},
		}}
	case way == content.Refrigerator && keepsOver(k, four):
		return []Finding{tooLong(k, four, Warning)}
	case way == content.Refrigerator && keepsOver(k, three):
		return []Finding{tooLong(k, three, Advice)}
	case way == content.Freezer && keepsOver(k, frozen):
		return []Finding{tooLong(k, frozen, Advice)}
	}
	return nil
}

func isUncooked(r *content.Recipe) bool {
	if saysAny(strings.ToLower(r.Name.V), uncookedWords) {
		return true
	}
	for _, t := range r.Tags {
		if saysAny(strings.ToLower(t.V), uncookedWords) {
			return true
		}
	}
	return false
}
