package validate

import "stillroom/content"

// A job is what a time in a text is spent on.
type job int

// The jobs.
const (
	jobUnknown   job = iota
	jobProcess       // the process of filled jars
	jobVent          // the steam that leaves a pressure canner before it is closed
	jobSterilise     // empty jars in boiling water
	jobOther         // anything else: to simmer, rest, soak
)

// otherJobs are the verbs of work that is no process, in families.
const otherJobs = `rest~ simmer~ cook~ stand~ cool~ wait~ soak~ sit~ steep~ blanch~ dip~ stir~ heat~ roast~ bake~ dry~ dries
	freeze~ chill~ refrigerate~ drain~ drip~ ferment~ preheat~ marinate~ infuse~ shake~ whisk~ blister~ scald~ warm~ thaw~
	condition~ macerate~ press~ knead~ brine~ salt~ wilt~ saute~ fry~ brown~ caramelise~ caramelize~ parboil~ poach~ stew~
	test~ testing taste~ eat~ serve~ reheat~ melt~ dissolve~ skim~ watch~ off uncover~ undisturbed untouched lift~ move~
	peel~ pit pitting slip~ keep~ leave~ let lets hold~ store~ hands_on preparing prepare~ work~ swell~ settle~ pulse~ blend~
	lost stopped stops rocking smells whole entire tastes picking age~ mellow~`

// jobFamilies are the families that tell a job.
const jobFamilies families = 1<<famSterilise | 1<<famProcess | 1<<famOtherJob

// behindFamilies and behindWords are all that jobBehind looks for.
const behindFamilies = jobFamilies | 1<<famCanner | 1<<famOrder

var behindWords = fewOf("and then pressure water bath to")

var notDuring = fewOf("within every last first before each")

// jobOf tells what a time is spent on, by the words around it: those just
// behind it, else the nearest verb before it, else the sentence before.
func (s *sentence) jobOf(f mention) job {
	if s.isOne(f.from-1, &notDuring) {
		return jobOther
	}
	j := s.jobBehind(f)
	switch {
	case j != jobUnknown:
		return j
	case s.isAny(f.from-1, "after"):
		return jobOther
	}
	if j := s.jobBefore(f.from); j != jobUnknown {
		return j
	}
	if !s.namesJarOrHeight(f) {
		return jobUnknown
	}
	b := s.before()
	for n := 0; b != nil && n < 3; n++ {
		if j := b.jobBefore(b.len()); j != jobUnknown {
			return j
		}
		b = b.before()
	}
	return jobProcess
}

// jobBehind looks at the words behind a time: "a 10-minute process", "5
// minutes of simmering", "10 minutes in the canner".
func (s *sentence) jobBehind(f mention) job {
	const far = 5
	for k := f.to; k < min(f.to+far, s.len()) && !parts(s.at(k-1).after) && s.at(k-1).after != ','; k++ {
		if s.lex.words[s.at(k).id].families&behindFamilies == 0 && !s.isOne(k, &behindWords) {
			continue
		}
		switch {
		case s.isAny(k, "and then") && s.jobBefore(f.from) == jobProcess && !s.anyOf("timer clock"):
			return jobProcess
		case s.isAny(k, "pressure") && s.isAny(k-1, "at under full"):
			return jobProcess
		case s.isAny(k, "water") && s.isAny(k-1, "boiling") && s.isAny(k-2, "in the") && s.jarsAreMeant(f.from):
			return jobProcess
		case s.is(k, famProcess), s.isAny(k, "bath") && (s.isAny(k-1, "water") || k == f.to):
			if s.jobBefore(f.from) == jobOther && k-f.to > 2 {
				return jobUnknown
			}
			return jobProcess
		case s.is(k, famCanner) && s.jobBefore(f.from) == jobUnknown:
			return jobProcess
		case s.is(k, famSterilise):
			return jobSterilise
		case k-f.to <= 2 && s.is(k, famOtherJob), s.isAny(k, "to") && (s.isAny(k+1, "cool set seal come") || s.is(k+1, famSterilise)):
			return jobOther
		case s.is(k, famOrder):
			return jobUnknown
		}
	}
	return jobUnknown
}

// jobWords are the words that jobBefore looks for beside its families.
var jobWords = fewOf(`vent venting vented vents exhaust exhausting boil boils boiling boiled in into pressure
	clock timer timing count counted counting timed time hold holding keep keeping maintain maintaining`)

var (
	ventWords   = fewOf("vent venting vented vents exhaust exhausting")
	boilWords   = fewOf("boil boils boiling boiled")
	timingWords = fewOf("clock timer timing count counted counting timed")
	holdWords   = fewOf("hold holding keep keeping maintain maintaining")
)

// jobBefore finds the nearest word before a place that tells the job.
func (s *sentence) jobBefore(i int) job {
	for k := i - 1; k >= 0; k-- {
		if k < i-1 && (s.at(k).after == ';' || s.at(k).after == '?') {
			break
		}
		if s.lex.words[s.at(k).id].families&jobFamilies == 0 && !s.isOne(k, &jobWords) {
			continue
		}
		switch {
		case s.isOne(k, &ventWords):
			return jobVent
		case s.isOne(k, &boilWords) && !s.isAny(k+1, "water"):
			if j := s.boils(k, i); j != jobUnknown {
				return j
			}
		case s.is(k, famSterilise):
			return jobSterilise
		case s.is(k, famProcess):
			if s.isFoodProcessor(k) || s.isAny(k+1, "takes took") && s.isAny(k-1, "whole entire the this") {
				return jobOther
			}
			return jobProcess
		case s.isAny(k, "in into") && s.isAny(k-1, "go goes went") && s.find(famJar, 0, k) >= 0 && s.isAny(k+1, "for"):
			return jobProcess // "quarts go in for 45 minutes"
		case s.isAny(k, "pressure") && s.isAny(k-1, "at under full"):
			return jobProcess
		case s.isOne(k, &timingWords), s.isAny(k, "time") && s.is(k+1, famIt):
			return jobProcess
		case s.isOne(k, &holdWords) && s.anyIn("pressure", k, min(k+3, i)):
			return jobProcess // "hold the pressure for 20 minutes"
		case s.is(k, famOtherJob):
			if s.isAny(k, "keep leave let hold keeping leaving") && s.inBoilingWater(k, i) {
				return jobProcess
			}
			return jobOther
		}
	}
	return jobUnknown
}

// boils tells what is boiled: filled jars are processed, empty ones sterilised,
// anything else is cooked. "A full rolling boil" says nothing.
func (s *sentence) boils(k, end int) job {
	if s.isAny(k-1, "a the rolling full hard") || s.isAny(k-2, "to at from") && s.isAny(k-1, "a the") || s.isAny(k, "boiling") && !s.is(k+1, famDetermine) {
		return jobUnknown
	}
	if s.isAny(k+1, "them") && s.find(famCanner, 0, k) >= 0 && s.find(famJar, 0, k) >= 0 {
		return jobProcess // "put the jars in the canner and boil them"
	}
	for i := k + 1; i < min(k+5, end); i++ {
		if s.is(i, famJar) && !s.isAny(i, "pint quart") {
			if s.forEmptyJars() || s.heading != nil && s.heading.says(famSterilise) {
				return jobSterilise
			}
			return jobProcess
		}
	}
	return jobOther
}

// says reports whether a word of a family stands anywhere in the passage.
func (p *passage) says(f family) bool {
	for i := range p.sentences {
		if p.sentences[i].has(f) {
			return true
		}
	}
	return false
}

// jarsAreMeant reports whether jars are named before a place, or "them" behind
// a sentence about jars or lids.
func (s *sentence) jarsAreMeant(to int) bool {
	if s.find(famJar, 0, to) >= 0 {
		return !s.forEmptyJars()
	}
	b := s.before()
	return s.find(famIt, 0, to) >= 0 && b != nil && (b.has(famJar) || b.has(famLid)) && !b.forEmptyJars()
}

func (s *sentence) isFoodProcessor(k int) bool {
	return s.isAny(k-1, "food") || s.anyOf("blender smooth puree pulse chopped processor")
}

// inBoilingWater reports whether jars are kept in boiling water or the canner
// between two places, with the heat on.
func (s *sentence) inBoilingWater(from, to int) bool {
	if s.anyOf("off hot warm until needed ready simmering") || s.forEmptyJars() {
		return false
	}
	return s.find(famJar, from, to) >= 0 && (s.anyIn("boiling bath", from, s.len()) || s.find(famCanner, from, s.len()) >= 0)
}

// namesJarOrHeight reports whether a time stands beside a size of jar or an
// altitude, as the times of a process do.
func (s *sentence) namesJarOrHeight(f mention) bool {
	for i := range s.len() {
		if s.jarAt(i) != "" {
			return true
		}
	}
	for _, g := range s.figures() {
		if g.measures == content.AltitudeDim {
			return true
		}
	}
	return false
}
