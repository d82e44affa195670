package validate

import (
	"fmt"
	"math/big"

	"stillroom/content"
)

// waterDepth reports words for less than an inch of water over the jars.
var waterDepth = &Rule{
	ID:       "water-depth",
	Severity: Warning,
	Summary:  "less than an inch of water over the jars",
	Doc: `The lids stay under at least 1 inch (2.5 cm) of boiling water from beginning to
end; under less, the top of the jar heats more slowly than it did when the time was
measured. The page tells readers so in any case, so a step may leave it out, but not
say less. A steam canner has no water over its jars.`,
	Source: Source{
		Title:   "USU Extension questions column, citing NCHFP",
		Address: "http://www.thespectrum.com/story/life/family/2014/08/26/safety-first-canning-garden-produce/14634595/?from=global&sessionKey=&autologin=",
	},
	CheckText: checkWaterDepth,
	Practice: &Practice{
		Phrases: `water .. comes|come|reach~|up|rises|rise|is .. to .. shoulder~|shoulders|neck~|necks|halfway|half_way|middle|waist~; water .. halfway|half_way|part_way|partway .. up|jar~|jars
			water .. to|until|reaches|is .. just? below|under|short_of .. lids|rims|tops|bands|rings; @jar .. half|partly|not_quite submerged|covered|under; need|needn't|need_not|no_need|have|don't .. cover|submerge .. @jar|lids
			lay~|lie~|put~|set~|stand~|place~ .. @jar|@it .. on|onto .. side|sides; water .. halfway|half_way|part_way up is|will|does .. plenty|enough|fine|do; halfway|half_way .. up|is plenty|enough|is_plenty|is_enough|will_do|does; water .. need~ only|just .. come|reach|rise ... up|jars|way
			@jar .. to|up_to their|its shoulders|necks|shoulder|neck .. in .. water`,
		Where:   inBoilingWater,
		Message: "the jars are not covered with water",
		Advice:  "Say at least 1 inch (2.5 cm) over the lids, from beginning to end.",
	},
}

// inBoilingWater holds in recipes for boiling water alone: neither in steam nor
// under pressure are jars covered.
func inBoilingWater(t *Text, s *sentence, _ hit) bool {
	if t.Recipe == nil {
		return !s.near("pressure steam weight gauge") && !s.forCold() && !s.forEmptyJars()
	}
	return t.hasWay(content.BoilingWater) && !t.hasWay(content.AtmosphericSteam, content.PressureCanner) && !s.forCold() && !s.forEmptyJars()
}

func checkWaterDepth(t *Text) []Finding {
	if !t.canned() {
		return nil
	}
	var fs []Finding
	for _, s := range t.counting() {
		if !s.anyOf("water") || !s.has(famJar) && !s.has(famLid) && !s.anyOf("them") {
			continue
		}
		for _, f := range s.figures() {
			if !s.overJars(f) || !tooShallow(f) || s.stance(hit{from: f.from, to: f.to}) != told {
				continue
			}
			fs = append(fs, Finding{
				Pos:     s.pos(f.from),
				Message: fmt.Sprintf("%s of water over the jars is too little", s.words(f.from, f.to)),
				Advice:  "Say at least 1 inch (2.5 cm), from beginning to end.",
			})
		}
	}
	return fs
}

// overJars reports whether a length is how deep water stands over jars.
func (s *sentence) overJars(f mention) bool {
	if f.measures != content.LengthDim || s.forEmptyJars() {
		return false
	}
	after := s.anyIn("over above", f.to, f.to+5)
	covers := s.anyIn("cover covers covered covering submerged", 0, f.from) && s.anyIn("by with", f.from-3, f.from)
	return (after || covers) && !s.anyIn("headspace rim leaving", f.from-4, f.to+3)
}

// tooShallow reports whether a depth is under an inch; 2.5 cm passes for one.
func tooShallow(f mention) bool {
	if f.unit == content.Inch {
		return f.low.compare(nearlyAnInch) < 0
	}
	return compare(f.in(content.Inch), nearlyAnInch) < 0
}

var nearlyAnInch = big.NewRat(98, 100)
