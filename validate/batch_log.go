package validate

import (
	"strings"

	"stillroom/content"
)

// batchLog gives advice on an entry of the kitchen log that could not be
// traced.
var batchLog = &Rule{
	ID:       "batch-log",
	Severity: Advice,
	Summary:  "an entry of the kitchen log without its day, its jars or its altitude",
	Doc: `When a gauge turns out to have been wrong, or a lemon was forgotten, the log tells which
jars those were: the day, how many, at what altitude, and how many lids failed. Each
entry of a canned recipe should have them.`,
	Source: Source{
		Title:   "Canning journal, Home Farm Ideas",
		Address: "http://www.homefarmideas.com/index.php?option=com_content&view=article&id=64:canning-journal&catid=38:canning",
	},
	Check: func(r *content.Recipe) []Finding {
		if !isCanned(r) {
			return nil
		}
		var fs []Finding
		for _, b := range r.Batches {
			if lacks := lacking(b); len(lacks) > 0 {
				fs = append(fs, Finding{
					Pos:     b.Pos,
					Message: "the log does not say " + strings.Join(lacks, ", "),
					Advice:  "Write it down while it is known.",
				})
			}
		}
		return fs
	},
}

func lacking(b content.Batch) []string {
	var lacks []string
	for _, x := range []struct {
		given bool
		what  string
	}{
		{b.Made.Set(), "when it was made"},
		{b.Yield.Set(), "how much it made"},
		{b.Altitude.Set(), "at what altitude"},
	} {
		if !x.given {
			lacks = append(lacks, x.what)
		}
	}
	return lacks
}
