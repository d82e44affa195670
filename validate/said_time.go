package validate

// saidTime reports a time of a process in the text that the recipe's own table
// does not have.
var saidTime = &Rule{
	ID:       "said-time",
	Severity: Error,
	Summary:  "a processing time in the text that the table does not have",
	Doc: `Many readers follow the steps and never look at the table. A time in a step, a
note or a caution must be one of the table's, for the jar and the altitude that
are named beside it: "pints take 20 minutes up to 1,000 feet". Without a jar or an
altitude any of the table's times will do. A longer one is a warning.

Times of other work are not compared: to simmer, rest, vent, stand or cool.`,
	Source: Source{
		Title:   "Of home recipes that had a process, 61% gave the right minutes: " + blogStudy.Title,
		Address: blogStudy.Address,
	},
	CheckText: checkSaidTime,
}

func checkSaidTime(t *Text) []Finding {
	if t.Recipe == nil {
		return nil
	}
	table := tableOf(t.Matches)
	var fs []Finding
	for _, said := range t.timesOfProcess() {
		if said.place == placeName {
			continue
		}
		if len(table) == 0 {
			fs = append(fs, processWithoutTable(said)...)
			continue
		}
		if miss, ok := table.misses(said); ok {
			fs = append(fs, miss.finding(said))
		}
	}
	return fs
}

// processWithoutTable reports a process in a recipe that cites none.
func processWithoutTable(said timeSaid) []Finding {
	if said.place == placeLog || said.place == placePicture {
		return nil
	}
	return []Finding{{
		Pos:     said.pos(said.from),
		Message: "a process in the text, and none among the ways of keeping",
		Advice:  "Give the way of keeping with the process that it cites, or take the process out.",
	}}
}
