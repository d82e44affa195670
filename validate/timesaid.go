package validate

import "stillroom/content"

// A timeSaid is a time of a process that a text gives, with the jars and the
// altitude that it gives it for.
type timeSaid struct {
	*sentence
	mention
	jars   []string // sizes; empty if none is said
	height *height  // nil if none is said
}

// timesOfProcess gives the times of processes that a text says are right. A
// difference, as in "5 minutes more", is none.
func (t *Text) timesOfProcess() []timeSaid {
	if t.timed {
		return t.times
	}
	t.timed = true
	for _, s := range t.counting() {
		t.times = append(t.times, s.timesOfProcess(t.times)...)
	}
	return t.times
}

func (s *sentence) timesOfProcess(earlier []timeSaid) []timeSaid {
	var all []timeSaid
	figs := s.figures()
	goesOn := s.follows(earlier)
	for i, f := range figs {
		switch {
		case s.isDifference(f):
			continue
		case f.measures == content.TimeDim && f.unit != content.Second && minutesOf(f) <= 24*60:
			if s.jobOf(f) != jobProcess {
				continue
			}
		case f.unit == "" && (len(all) > 0 || goesOn) && s.standsForTime(figs, i):
			f.unit = content.Minute
			f.high = f.low
		default:
			continue
		}
		if s.stance(hit{from: f.from, to: f.to}) != told {
			continue
		}
		all = append(all, timeSaid{sentence: s, mention: f})
	}
	s.pairHeights(all)
	s.pairJars(all)
	return all
}

// minutesOf gives the whole minutes of a time.
func minutesOf(f mention) int64 {
	n := inMinutes(f.low, f.unit)
	return n.num / n.den
}

// inMinutes gives so many of a unit of time in minutes; of a unit that is longer
// than a day, as if it were a week and they were one.
func inMinutes(n ratio, unit content.Unit) ratio {
	switch unit {
	case content.Minute:
		return n
	case content.Second:
		return ratio{n.num, n.den * 60}
	case content.Hour:
		return ratio{n.num * 60, n.den}
	case content.Day:
		return ratio{n.num * 24 * 60, n.den}
	}
	return ratio{7 * 24 * 60, 1}
}

// follows reports whether the sentence before gave a time of a process.
func (s *sentence) follows(earlier []timeSaid) bool {
	if len(earlier) == 0 {
		return false
	}
	b, last := s.before(), earlier[len(earlier)-1].sentence
	return b != nil && last.passage == s.passage && last.first == b.first
}

var (
	extraWords  = fewOf("extra additional more")
	addingWords = fewOf("add adding added extra additional plus another adds")
	difference  = fewOf("more longer less shorter extra additional earlier later fewer ahead")
)

// isDifference reports whether a time is added or taken off.
func (s *sentence) isDifference(f mention) bool {
	return s.moreOrLess(f) || s.holdsIn(&extraWords, f.from, f.to) || s.holdsIn(&addingWords, f.from-3, f.from)
}

// moreOrLess reports whether "more" or its like follows a figure.
func (s *sentence) moreOrLess(f mention) bool {
	for k := f.to; k < min(f.to+3, s.len()); k++ {
		if s.isOne(k, &difference) {
			return true
		}
		if s.at(k).after != 0 {
			break
		}
	}
	return false
}

// standsForTime reports whether a bare number is a time that leaves out its
// minutes: "25 up to 3,000", "Above that, 35.", "it is 50".
func (s *sentence) standsForTime(figs []mention, i int) bool {
	f := figs[i]
	if f.low.den != 1 || f.low.num < 5 || f.low.num > 240 || f.low != f.high {
		return false
	}
	if s.isAny(f.to, "up above from at for below and in") && !s.isAny(f.to, "in") || f.to == s.len() && (f.from == 0 || s.at(f.from-1).after == ',' || s.isAny(f.from-1, "is to use for and")) {
		return len(s.heights()) > 0 || len(s.jarsIn(0, s.len())) > 0
	}
	return s.isAny(f.to, "in") && s.isAny(f.to+1, "my") || s.at(f.to-1).after == ',' && len(s.heights()) > 0
}

// pairHeights gives each time the altitude that stands with it: the one that
// follows it before the next time, or where altitudes come first, the one before.
func (s *sentence) pairHeights(times []timeSaid) {
	if len(times) == 0 {
		return
	}
	hs := s.heights()
	first := len(hs) > 0 && hs[0].at < times[0].from
	for i := range times {
		from, to := times[i].to, s.len()
		if i+1 < len(times) {
			to = times[i+1].from
		}
		if first {
			from, to = 0, times[i].from
			if i > 0 {
				from = times[i-1].to
			}
		}
		times[i].height = between(hs, from, to)
	}
}

// between gives the first altitude that is named in a stretch; nil if there is
// none.
func between(hs []height, from, to int) *height {
	for i := range hs {
		if from <= hs[i].at && hs[i].at < to {
			return &hs[i]
		}
	}
	return nil
}

// pairJars gives each time the sizes of jar that it is for: the nearest before
// it where a jar is named before the first time, "pints take 20 minutes";
// otherwise the nearest behind it, "20 minutes for pints, 25 for quarts".
func (s *sentence) pairJars(times []timeSaid) {
	if len(times) == 0 {
		return
	}
	first := len(s.jarsIn(0, times[0].from)) > 0
	for i := range times {
		to := s.len()
		if i+1 < len(times) {
			to = times[i+1].from
		}
		if !first {
			times[i].jars = s.firstJars(times[i].to, to)
		}
		if times[i].jars == nil {
			times[i].jars = s.lastJars(times[i].from)
		}
	}
}
