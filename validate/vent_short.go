package validate

import (
	"fmt"
	"math/big"

	"stillroom/content"
)

// ventShort reports words for less than ten minutes of venting.
var ventShort = &Rule{
	ID:       "vent-short",
	Severity: Error,
	Summary:  "a pressure canner vented for less than 10 minutes",
	Doc: `Air in a pressure canner keeps it cooler than its gauge says. Steam blows from the
vent for 10 minutes before it is closed. The page tells readers so in any case, so a
step may leave it out, but not say less, nor go from the closed lid straight to the
weight.`,
	Source: Source{
		Title:   "USDA Complete Guide to Home Canning, pressure canning",
		Address: "http://www.recipesource.com/misc/canning/00/rec0010.html",
	},
	CheckText: checkVentShort,
	Practice: &Practice{
		Phrases: `bother~|need~|have|worth|wait~|necessary .. to|with|about|for? vent~|venting|exhaust~|exhausting; venting|exhausting it|only|just|wastes|takes; vent~|venting|exhaust~|exhausting .. is|are|isn't|aren't .. needed|necessary|required`,
		Left:    true,
		Where:   underPressure,
		Message: "this says that a pressure canner need not be vented",
		Advice:  "Say: vent for 10 minutes, then close the vent or set the weight.",
	},
}

func checkVentShort(t *Text) []Finding {
	if t.Recipe != nil && !t.hasWay(content.PressureCanner) {
		return nil
	}
	least := LimitRat("canner-vent")
	fs := append(closedAtOnce(t), neverVented(t)...)
	for _, s := range t.counting() {
		for _, f := range s.figures() {
			if f.measures != content.TimeDim || !s.isVenting(f) {
				continue
			}
			m := f.in(content.Minute)
			if m.Cmp(least) >= 0 || m.Cmp(big.NewRat(1, 2)) < 0 || s.isDifference(f) || s.stance(hit{from: f.from, to: f.to}) != told {
				continue
			}
			fs = append(fs, Finding{
				Pos:     s.pos(f.from),
				Message: fmt.Sprintf("%s of venting is too short", s.words(f.from, f.to)),
				Advice:  "Say 10 minutes, before the vent is closed or the weight set.",
			})
		}
	}
	return fs
}

// closedAtOnce reports a vent that is closed with the first steam.
func closedAtOnce(t *Text) []Finding {
	var fs []Finding
	for s := range t.sentences(placeStep, placeNotes, placeCaution) {
		i := s.ventClosed()
		if i < 0 || s.stance(hit{from: i, to: i + 1}) != told {
			continue
		}
		fs = append(fs, Finding{
			Pos:     s.pos(i),
			Message: "the vent is closed with the first steam",
			Advice:  "Say: let steam blow off for 10 minutes, then close it.",
		})
	}
	return fs
}

// neverVented reports steps that lock the lid and set the weight, where the
// whole text never speaks of letting steam out.
func neverVented(t *Text) []Finding {
	var fs []Finding
	for s := range t.sentences(placeStep, placeHead, placeNotes, placeCaution) {
		if s.lets("steam exhaust exhausting exhausted venting vented vents vent") {
			return nil
		}
		if i := s.weightAfterLid(); i >= 0 && s.place == placeStep && len(fs) == 0 && s.stance(hit{from: i, to: i + 1}) == told {
			fs = append(fs, Finding{
				Pos:     s.pos(i),
				Message: "the weight is set, and no word lets the air out first",
				Advice:  "Say: let steam blow off for 10 minutes, then set it.",
			})
		}
	}
	return fs
}

// lets reports whether the sentence has one of the words, and not as the name of
// a part: "the vent pipe".
func (s *sentence) lets(few string) bool {
	if !s.anyOf(few) {
		return false
	}
	for i := range s.len() {
		if s.isAny(i, few) && !s.isAny(i+1, "pipe port tube stem") {
			return true
		}
	}
	return false
}

// weightAfterLid gives the place of a weight that is set in the same sentence
// in which the lid of the canner is locked; -1 if there is none.
func (s *sentence) weightAfterLid() int {
	locked := false
	for i := range s.len() {
		locked = locked || s.isAny(i, "lid") && s.anyIn("lock fasten close clamp twist secure latch seal", i-3, i)
		if locked && s.isAny(i, "weight petcock regulator jiggler") && s.anyIn("put set place close drop add", i-4, i) {
			return i
		}
	}
	return -1
}

// ventClosed gives the place of the weight or the vent that a sentence closes
// at once; -1 if it does not.
func (s *sentence) ventClosed() int {
	if !s.anyOf("steam") || s.anyOf("minute minutes off zero") {
		return -1
	}
	atOnce := s.anyOf("immediately")
	for i := range s.len() {
		atOnce = atOnce || s.isAny(i, "once") && s.isAny(i-1, "at") || s.isAny(i, "away") && s.isAny(i-1, "straight right")
	}
	for i := range s.len() {
		if atOnce && s.isAny(i, "weight petcock regulator jiggler vent") && s.anyIn("put set place close drop", i-4, i) {
			return i
		}
	}
	return -1
}

// isVenting reports whether a time is that of the steam that blows off.
func (s *sentence) isVenting(f mention) bool {
	if s.jobBefore(f.from) == jobVent {
		return true
	}
	if s.anyIn("of", f.to, f.to+1) && s.anyIn("venting steam", f.to, f.to+3) {
		return true
	}
	return s.anyIn("steam", 0, f.from) && s.anyIn("escape blow blows flow out exhaust vent petcock weight", 0, s.len()) && !s.has(famProcess) && !s.anyOf("pressure zero")
}
