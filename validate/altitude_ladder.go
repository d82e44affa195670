package validate

import "stillroom/content"

// altitudeLadder reports a rule of thumb for the times of processes.
var altitudeLadder = &Rule{
	ID:       "altitude-ladder",
	Severity: Warning,
	Summary:  "a minute more for each 1,000 ft, where the table has bands",
	Doc: `Each food has its own bands; a fixed number of minutes for each 1,000 ft is short of
some of them. Use the table. For the empty jars that are sterilised, and for food that
is boiled before it is tasted, a minute for each 1,000 ft is what is published.`,
	Source: Source{
		Title: "Use the table, not the retired rule of thumb: WSU fact sheet on acid foods", Address: "http://www.foodsafety.wsu.edu/consumers/factsheet3.htm",
	},
	CheckText: checkAltitudeLadder,
}

func checkAltitudeLadder(t *Text) []Finding {
	if !t.canned() {
		return nil
	}
	var fs []Finding
	for _, s := range t.counting() {
		for _, f := range s.figures() {
			if f.measures != content.TimeDim || !s.isLadder(f) || !s.ladderOfProcess(f) || s.stance(hit{from: f.from, to: f.to}) != told {
				continue
			}
			fs = append(fs, Finding{
				Pos:     s.pos(f.from),
				Message: "a rule of thumb by the 1,000 ft, where the process has bands of its own",
				Advice:  "Leave it to the table.",
			})
			break
		}
	}
	return fs
}

var eachWords = fewOf("each every per")

// isLadder reports whether a time goes with each so many feet.
func (s *sentence) isLadder(f mention) bool {
	for k := f.to; k < min(s.len(), f.to+8); k++ {
		if s.isOne(k, &eachWords) {
			return s.feetFollow(k, k+6)
		}
	}
	return s.anyIn("each every per", f.from-8, f.from) && s.feetFollow(f.from-8, f.from)
}

func (s *sentence) feetFollow(from, to int) bool {
	for k := max(from, 0); k < min(to, s.len()); k++ {
		if s.isAny(k, "thousand hundred") && s.isAny(k+1, "feet ft metres meters") {
			return true // "for every thousand feet"
		}
	}
	for _, g := range s.figures() {
		if from <= g.from && g.from < to && g.measures == content.AltitudeDim && g.low.num >= 90*g.low.den {
			return true
		}
	}
	return false
}

// ladderOfProcess leaves out jars that are sterilised and food that is boiled
// before it is eaten or blanched.
func (s *sentence) ladderOfProcess(f mention) bool {
	if s.forEmptyJars() || s.near("taste tastes tries tried eat eating serve serving blanch blanching anybody before") || s.heading != nil && s.heading.says(famSterilise) {
		return false
	}
	return s.jobBefore(f.from) != jobSterilise
}
