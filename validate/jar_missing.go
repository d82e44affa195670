package validate

import (
	"fmt"
	"slices"

	"stillroom/content"
)

// jarMissing reports a canned way of keeping without its sizes of jar.
var jarMissing = &Rule{
	ID:       "jar-missing",
	Severity: Error,
	Summary:  "a canned recipe without its sizes of jar, or with one size twice",
	Doc: `No size, no time: heat takes longer to the middle of a bigger jar. Write
"processing:" with an entry for each size of jar that you offer, and in each
"jar:" with its name or volume.`,
	Source: Source{
		Title:   "Preserve that garden bounty safely, University of Maine Cooperative Extension, Central Maine, 2020",
		Address: "https://www.centralmaine.com/2020/09/16/preserve-that-garden-bounty-safely/",
	},
	CheckKeeping: checkJarMissing,
}

func checkJarMissing(_ *content.Recipe, m *Match) []Finding {
	if !m.Keeping.Way.V.Canned() {
		return nil
	}
	if len(m.Jars) == 0 {
		return []Finding{{
			Pos:     m.place("processing"),
			Message: "no processing is written",
			Advice:  "Write processing: with an entry for each size of jar.",
		}}
	}
	var fs []Finding
	for i, j := range m.Jars {
		if !j.Entry.Jar.Set() {
			fs = append(fs, Finding{Pos: j.Entry.Pos, Message: "no size of jar", Advice: "Write jar: with the size that the process names."})
			continue
		}
		if first := m.sameJar(i); first >= 0 {
			fs = append(fs, Finding{
				Pos:     j.Entry.Jar.Pos,
				Message: fmt.Sprintf("%s jars are given twice", j.Entry.Jar.V),
				Advice:  "Keep one entry for each size.",
				Notes:   []Note{{Pos: m.Jars[first].Entry.Jar.Pos, Message: "first given here"}},
			})
		}
	}
	return fs
}

// sameJar gives the first entry of processing for the size of one behind it; -1
// if there is none.
func (m *Match) sameJar(i int) int {
	size := m.Jars[i].Entry.Jar.V.Millilitres()
	return slices.IndexFunc(m.Jars[:i], func(j JarMatch) bool {
		return j.Entry.Jar.Set() && compare(j.Entry.Jar.V.Millilitres(), size) == 0
	})
}
