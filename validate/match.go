package validate

import "stillroom/content"

// A Match is a way of keeping beside what is published for it. Everything
// but Keeping may be missing.
type Match struct {
	Keeping *content.Keeping
	Process *Process     // the process that is cited, for the way's method and pack; nil if there is none
	Why     Missing      // why Process is nil
	Items   []Item       // the recipe's ingredients, in their order
	Jars    []JarMatch   // one for each entry of Keeping.Processing
	Tested  []comparison // with the published recipes of Process; empty if none is known

	jarred []Item // what inJar gives
	dosed  *Item  // what added gives; nil if nothing goes into each jar
}

// A JarMatch is an entry of processing beside the tested jar that it is judged by.
type JarMatch struct {
	Entry  *content.Processing
	Tested *JarProcess // of the same size or the next size up; nil if there is none
	Exact  bool        // the size itself was tested

	made []bandTable // what tables gives, once it is known
}

// match looks up what a way of keeping cites.
func match(k *content.Keeping, items []Item) *Match {
	m := &Match{Keeping: k, Items: items, jarred: jarred(items), dosed: dosed(k)}
	if k.Way.V.Canned() && k.Process.Set() {
		m.Process, m.Why = FindProcess(k.Process.V, k.Way.V, k.Pack.V)
	}
	for i := range k.Processing {
		j := JarMatch{Entry: &k.Processing[i]}
		if m.Process != nil && !j.Entry.Jar.V.IsZero() {
			j.Tested, j.Exact = m.Process.Jar(j.Entry.Jar.V)
		}
		j.made = j.tables()
		m.Jars = append(m.Jars, j)
	}
	m.Tested = m.compare()
	return m
}

// place is where a finding about a key belongs that may not have been
// written: at the key, or at the entry that lacks it.
func (m *Match) place(key string) content.Pos {
	if p, ok := m.Keeping.Keys[key]; ok {
		return p
	}
	return m.Keeping.Pos
}
