package validate

import (
	"fmt"

	"stillroom/content"
)

// reprocessLate reports an unsealed jar that is to be processed again after
// more than a day.
var reprocessLate = &Rule{
	ID:       "reprocess-late",
	Severity: Error,
	Summary:  "an unsealed jar processed again after more than 24 hours",
	Doc: `A jar that did not seal may be processed again within 24 hours: emptied, heated,
packed with a new lid, for the full time. Later, what got in has had time to grow.
Otherwise it goes in the refrigerator at once, or is frozen.`,
	Source: Source{
		Title:   "USDA Complete Guide to Home Canning, AIB 539 (2015): within 24 hours (memory)",
		Address: "",
	},
	CheckText: checkReprocessLate,
}

func checkReprocessLate(t *Text) []Finding {
	if !t.canned() {
		return nil
	}
	most := LimitRat("reprocess-window")
	var fs []Finding
	for _, s := range t.counting() {
		if !s.speaksOfReprocessing() {
			continue
		}
		for _, f := range s.figures() {
			late := mention{low: f.high, high: f.high, unit: f.unit}.in(content.Hour)
			if f.measures != content.TimeDim || late.Cmp(most) <= 0 || !s.anyIn("within in up after for next to have got", f.from-3, f.from) && !s.isAny(f.to, "later after afterwards old") || s.stance(hit{from: f.from, to: f.to}) != told && !s.deniesOnlySeal(f.from) {
				continue
			}
			fs = append(fs, Finding{
				Pos:     s.pos(f.from),
				Message: fmt.Sprintf("%s is too late to process a jar again", s.words(f.from, f.to)),
				Advice:  "Say within 24 hours, with a new lid and for the full time.",
			})
			break
		}
	}
	return fs
}

// deniesOnlySeal reports whether all that is denied before a place is that a jar
// sealed: "jars that did not seal can ...".
func (s *sentence) deniesOnlySeal(before int) bool {
	denials := 0
	for _, c := range s.cues {
		if k := cue(c.owner); k != cueDeny && k != cueAway {
			continue
		}
		if !s.is(c.to, famSeal) {
			return false
		}
		denials++
	}
	return denials > 0
}

var (
	reprocessing = fewOf("reprocess reprocessed reprocessing")
	onceMore     = fewOf("again redo redone recan")
)

// speaksOfReprocessing reports whether a sentence is about a second process.
func (s *sentence) speaksOfReprocessing() bool {
	if s.holds(&reprocessing) || s.has(famProcess) && s.anyOf("re") {
		return true
	}
	return s.holds(&onceMore) && (s.has(famProcess) || s.has(famCanner) || s.anyOf("boiled boil redo redone recan")) && s.near("unsealed seal sealed fail failed fails")
}
