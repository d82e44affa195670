package validate

import "stillroom/content"

// fermentIncomplete reports a ferment without its salt, temperature or time.
var fermentIncomplete = &Rule{
	ID:       "ferment-incomplete",
	Severity: Error,
	Summary:  "a ferment without its salt, its temperature or its time",
	Doc: `Salt, warmth and time decide which bacteria win. A ferment says how strong its
brine or dry salting is by weight ("salt: 2.4 %"), how warm the room is
("temperature: 70-75 F") and how long it takes ("duration: 3-4 weeks").`,
	Source: Source{
		Title:   "Sauerkraut, University of Florida IFAS Extension HE 287, after AIB 539",
		Address: "https://edis.ifas.ufl.edu/he287",
	},
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding {
		k := m.Keeping
		if k.Way.V != content.Fermenting {
			return nil
		}
		return wanting(m, []want{
			{"salt", k.Salt.Set(), "the strength of the brine or dry salting by weight, as in 2.4 %"},
			{"temperature", k.Temperature.Set(), "how warm the room is, as in 70-75 F"},
			{"duration", k.Duration.Set(), "how long it takes, as in 3-4 weeks"},
		})
	},
}

// A want is a key that a way of keeping must have.
type want struct {
	key   string
	given bool
	what  string
}

// wanting reports each key of the list that was not written.
func wanting(m *Match, wants []want) []Finding {
	var fs []Finding
	for _, w := range wants {
		if w.given {
			continue
		}
		fs = append(fs, Finding{
			Pos:     m.place(w.key),
			Message: "no " + w.key,
			Advice:  "Write " + w.key + ": " + w.what + ".",
		})
	}
	return fs
}
