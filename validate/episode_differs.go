package validate

import (
	"fmt"
	"strings"

	"stillroom/content"
)

// episodeDiffers reports a figure that an episode says, and that none of its
// recipes has.
var episodeDiffers = &Rule{
	ID:       "episode-differs",
	Severity: Error,
	Summary:  "an episode that says another time, headspace, acid or jar than its recipes",
	Doc: `What is said aloud is remembered, and a recording cannot be called back. Every time of
a process, headspace, pressure, dose of acid and size of jar in the show notes, the
summary, the chapters and the transcript must be one of the recipes that the episode
names: of the recipe that the chapter, the link or the sentence is about, else of any
of them.

Correct the notes where they are wrong. Where the recording is, say so in the notes
and correct the transcript in square brackets.`,
	Source:    Source{Title: "Spoken figures match the record: after the WSU audio series, which prints transcript and dated sources (inference)"},
	CheckText: checkEpisodeDiffers,
}

func checkEpisodeDiffers(t *Text) []Finding {
	if t.Episode == nil || t.Site == nil {
		return nil
	}
	all := t.episodeRecipes()
	if len(all) == 0 {
		return nil
	}
	var fs []Finding
	for _, p := range t.passages {
		near := t.about(p, all)
		for i := range p.sentences {
			s := &p.sentences[i]
			spoken := spokenOf(s, near)
			for _, check := range spokenChecks {
				fs = append(fs, check(t, s, spoken)...)
			}
		}
	}
	return fs
}

// spokenChecks each look at one sort of figure.
var spokenChecks = []func(*Text, *sentence, []spoken) []Finding{spokenTimes, spokenHeadspaces, spokenDoses, spokenPressures}

// spokenTimes compares the times of processes.
func spokenTimes(t *Text, s *sentence, recipes []spoken) (fs []Finding) {
	for _, said := range t.timesOfProcess() {
		if said.passage != s.passage || said.first != s.first {
			continue
		}
		var miss timeMiss
		wrong := 0
		for _, r := range recipes {
			table := tableOf(r.Matches)
			if len(table) == 0 {
				wrong++ // it is not of this recipe
				continue
			}
			m, missed := table.misses(said)
			if !missed {
				return fs
			}
			miss.right, miss.short = append(miss.right, m.right...), miss.short || m.short
			wrong++
		}
		if wrong == len(recipes) && len(miss.right) > 0 {
			f := miss.finding(said)
			f.Message = fmt.Sprintf("%s, where the recipe's table has %s", said.words(said.from, said.to), miss.wanted())
			fs = append(fs, f)
		}
	}
	return fs
}

// spokenHeadspaces compares headspaces.
func spokenHeadspaces(_ *Text, s *sentence, recipes []spoken) (fs []Finding) {
	for _, f := range s.headspaces() {
		var right []content.Field[content.Length]
		for _, r := range recipes {
			right = append(right, r.headspacesFor(s)...)
		}
		if len(right) == 0 || agrees(f, right) || s.stance(hit{from: f.from, to: f.to}) != told {
			continue
		}
		fs = append(fs, Finding{
			Pos:     s.pos(f.from),
			Message: fmt.Sprintf("%s of headspace, where the recipe has %s", s.words(f.from, f.to), lengths(right)),
			Advice:  "Correct it, or say in the notes what is right.",
			Notes:   []Note{{Pos: right[0].Pos, Message: "the recipe's headspace"}},
		})
	}
	return fs
}

// spokenDoses compares the acid that goes into each jar.
func spokenDoses(_ *Text, s *sentence, recipes []spoken) (fs []Finding) {
	for _, r := range recipes {
		for _, m := range r.Matches {
			added, ok := m.added()
			if !ok {
				continue
			}
			want, ok := LemonJuice(added.Class.Kind, added.Amount.Low, added.Amount.Unit)
			if !ok {
				continue
			}
			want = perVolume(want, m.Keeping.Acid.V.Per)
			for _, d := range s.dosesPerJar(m.Keeping.Acid.V.Per) {
				if d.perPint != nil && d.perPint.Cmp(want) != 0 && s.stance(hit{from: d.from, to: d.to}) == told {
					f := d.finding(s, m, want)
					f.Message = strings.Replace(f.Message, " here, where the front matter has", ", where the recipe has", 1)
					fs = append(fs, f)
				}
			}
		}
	}
	return fs
}

// spokenPressures compares pressures.
func spokenPressures(_ *Text, s *sentence, recipes []spoken) (fs []Finding) {
	for _, f := range s.pressures() {
		known, right := false, false
		for _, r := range recipes {
			if r.hasWay(content.PressureCanner) {
				known = true
				right = right || hasPressure(r.pressuresFor(s, f), f)
			}
		}
		if !known || right || s.stance(hit{from: f.from, to: f.to}) != told {
			continue
		}
		fs = append(fs, Finding{
			Pos:     s.pos(f.from),
			Message: fmt.Sprintf("%s, which none of the recipe's tables has there", s.words(f.from, f.to)),
			Advice:  "Correct it, or say in the notes what is right.",
		})
	}
	return fs
}
