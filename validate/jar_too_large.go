package validate

import (
	"fmt"

	"stillroom/content"
)

// jarTooLarge reports a jar larger than the largest that was tested.
var jarTooLarge = &Rule{
	ID:       "jar-too-large",
	Severity: Error,
	Summary:  "a jar larger than any that the process was tested with",
	Doc: `There is no formula for a bigger jar. The largest tested size is the largest that
can be used; a smaller jar takes the time of the next larger tested one. A volume
is taken exactly: 500 ml is more than a pint (473 ml) and is judged as a quart.
Half-gallon jars have a process for apple and grape juice only.`,
	Source:       safeChanges,
	CheckKeeping: checkJarTooLarge,
}

func checkJarTooLarge(_ *content.Recipe, m *Match) []Finding {
	if m.Process == nil {
		return nil
	}
	var fs []Finding
	for _, j := range m.Jars {
		if j.Tested != nil || j.Entry.Jar.V.IsZero() {
			continue
		}
		largest := m.Process.Jars[len(m.Process.Jars)-1].Jar
		fs = append(fs, Finding{
			Pos:     j.Entry.Jar.Pos,
			Message: fmt.Sprintf("%s jars are larger than the largest tested, the %s", j.Entry.Jar.V, largest),
			Advice:  fmt.Sprintf("Use %s jars or smaller ones.", largest),
			Source:  m.Process.Source(),
		})
	}
	return fs
}
