package validate

import (
	"fmt"

	"stillroom/content"
)

// juiceNotBottled reports fresh lemon or lime juice where a canned recipe
// relies on its acid.
var juiceNotBottled = &Rule{
	ID:       "juice-not-bottled",
	Severity: Error,
	Summary:  "lemon or lime juice that is not said to be bottled, where its acid is needed",
	Doc: `Bottled lemon and lime juice is made to a strength; a lemon is as sour as its
year, its tree and its ripeness made it. Where the juice carries the safety of a
canned recipe it must be bottled, and the line must say so: "bottled lemon juice".

Where the juice is there for the set or the taste of fruit that has acid of its
own, this is advice only.`,
	Source: Source{
		Title:   "Ask Extension, answer 217071, Colorado State University Extension",
		Address: "https://ask.extension.org/kb/faq.php?id=217071",
	},
	CheckKeeping: checkJuiceNotBottled,
}

func checkJuiceNotBottled(_ *content.Recipe, m *Match) []Finding {
	if !m.Keeping.Way.V.Canned() {
		return nil
	}
	relied := m.reliesOnAcid()
	var fs []Finding
	for _, in := range m.withAdded() {
		if in.Class.Kind != ItemCitrusJuice || in.Class.Form == JuiceBottled {
			continue
		}
		f := Finding{
			Pos:     in.Pos,
			Message: fmt.Sprintf("%s is not said to be bottled", in.Item),
			Advice:  `Write "bottled lemon juice", or lime.`,
		}
		if in.Class.Form == JuiceFresh {
			f.Message = "fresh juice, whose strength varies"
		}
		if !relied {
			f.Severity = Advice
			f.Advice += " Here it is for set or taste only."
		}
		fs = append(fs, f)
	}
	return fs
}
