package validate

import (
	"fmt"
	"slices"

	"stillroom/content"
)

// fillWay writes what the cited process says into one way of keeping.
func (w *filler) fillWay(t content.Place, k *content.Keeping) {
	m := match(k, w.items)
	if m.Process == nil {
		w.refuse(w.whyNone(m)...)
		return
	}
	where := string(k.Way.V)
	jars := w.jars(m)
	if len(jars) == 0 {
		return
	}
	if !k.Pack.Set() && m.Process.Pack != "" {
		w.set(t, where, "pack", string(m.Process.Pack), "")
	}
	w.headspace(t, m, jars)
	w.acid(t, m, jars)
	if len(k.Processing) == 0 {
		w.allJars(t, m, jars)
		return
	}
	entries := t.Entries("processing")
	for _, j := range m.Jars {
		if e := placeAt(entries, j.Entry.Pos); e != nil {
			w.fillJar(*e, m, j)
		}
	}
}

// whyNone says why no process can be filled in from: none is cited, or none is
// published by that name, for that method, or for that pack.
func (w *filler) whyNone(m *Match) []Finding {
	for _, rule := range []*Rule{processMissing, processUnknown, processMethod, packUntested} {
		if fs := rule.stamp(rule.CheckKeeping(w.recipe, m)); len(fs) > 0 {
			return fs
		}
	}
	return nil
}

// jars gives the tested jars that the way needs figures for: of its own sizes,
// or all of them if it names none. It refuses a size that has no figures.
func (w *filler) jars(m *Match) []*JarProcess {
	var jars []*JarProcess
	if len(m.Keeping.Processing) == 0 {
		for i := range m.Process.Jars {
			if j := &m.Process.Jars[i]; !w.tooLongInSteam(m, j) {
				jars = append(jars, j)
			}
		}
		if len(jars) == 0 {
			w.refuse(steamTooLong.stamp([]Finding{{
				Pos:     m.Keeping.Way.Pos,
				Message: fmt.Sprintf("every jar of %s takes more than %d min somewhere, the longest that is accepted in steam", m.Process.ID, LimitInt("steam-canner-max-time")),
				Advice:  "Use boiling water.",
			}})...)
		}
		return jars
	}
	missing := jarMissing.stamp(checkJarMissing(w.recipe, m))
	w.refuse(missing...)
	w.refuse(jarTooLarge.stamp(checkJarTooLarge(w.recipe, m))...)
	for _, j := range m.Jars {
		if j.Tested == nil {
			continue
		}
		if w.tooLongInSteam(m, j.Tested) {
			w.refuse(steamTooLong.stamp([]Finding{{
				Pos:     j.Entry.Jar.Pos,
				Message: fmt.Sprintf("%s take more than %d min somewhere, the longest that is accepted in steam", j.jars(), LimitInt("steam-canner-max-time")),
				Advice:  "Use boiling water for this jar, or leave the size out.",
			}})...)
		}
		jars = append(jars, j.Tested)
	}
	return jars
}

// tooLongInSteam reports whether a jar takes more than is accepted in steam at
// some altitude.
func (w *filler) tooLongInSteam(m *Match, j *JarProcess) bool {
	if m.Keeping.Way.V != content.AtmosphericSteam {
		return false
	}
	most := LimitInt("steam-canner-max-time")
	return slices.ContainsFunc(m.times(j), func(f bandFigure) bool { return f.n > most })
}

func (w *filler) headspace(t content.Place, m *Match, jars []*JarProcess) {
	h := m.Keeping.Headspace
	tested := jars[0].Headspace
	for _, j := range jars[1:] {
		if j.Headspace.Cmp(tested) == 0 {
			continue
		}
		w.refuse(headspace.stamp([]Finding{{
			Pos: m.place("headspace"),
			Message: fmt.Sprintf("%s leaves %s of headspace in %s jars and %s in %s jars, and a way of keeping has one",
				m.Process.ID, inches(tested), jars[0].Jar, inches(j.Headspace), j.Jar),
			Advice: "Write processing: with the jar that you use; for both write the way of keeping twice, each with its jar.",
			Source: m.Process.Source(),
		}})...)
		return
	}
	if h.Set() && sameHeadspace(h.V, tested) {
		return
	}
	w.set(t, string(m.Keeping.Way.V), "headspace", inches(tested), h.V.Text)
}

// allJars writes an entry for each tested jar.
func (w *filler) allJars(t content.Place, m *Match, jars []*JarProcess) {
	var list content.Writing
	for _, j := range jars {
		entry, ok := w.entry(m, j)
		if !ok {
			return
		}
		list.List = append(list.List, entry)
		w.tell(string(m.Keeping.Way.V), "processing: "+j.Jar+" jars", "")
	}
	t.Set("processing", list)
}

// entry makes the whole entry of a jar.
func (w *filler) entry(m *Match, j *JarProcess) (content.Writing, bool) {
	entry := content.Writing{Pairs: []content.Pair{{Key: "jar", Writing: content.Writing{Text: j.Jar}}}}
	add := func(key string, value content.Writing) {
		entry.Pairs = append(entry.Pairs, content.Pair{Key: key, Writing: value})
	}
	if m.Keeping.Way.V != content.PressureCanner {
		add("altitude", writtenTable(m.times(j)))
		return entry, true
	}
	all := j.options()
	if len(all) > 1 {
		w.refuse(severalOptions(m, m.place("processing"), all))
		return entry, false
	}
	add("time", content.Writing{Text: minutesText(all[0].minutes)})
	for _, gauge := range gauges {
		if s := all[0].schedule(gauge); s != nil {
			add(gauge, writtenTable(pressures(s)))
		}
	}
	return entry, true
}
