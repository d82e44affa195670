package validate

import "stillroom/content"

// yieldInJars reports a canned recipe whose yield is neither in jars of a
// size nor a volume.
var yieldInJars = &Rule{
	ID:       "yield-in-jars",
	Severity: Warning,
	Summary:  "a canned recipe whose yield names no size of jar",
	Doc: `How many jars a batch fills shows whether water was lost or added, how many to make
ready, and how much acid each of them gets. Write "6 half-pint jars", or a volume.`,
	Source: Source{
		Title:   "Start a canning and preserving journal, Iowa State University Extension, 2023",
		Address: "https://blogs.extension.iastate.edu/answerline/2023/10/24/start-a-canning-and-preserving-notebook-journal",
	},
	Check: func(r *content.Recipe) []Finding {
		if !r.Yield.Set() || !isCanned(r) || mostVolume(r.Yield.V) != nil {
			return nil
		}
		return []Finding{{
			Pos:     r.Yield.Pos,
			Message: r.Yield.V.Text + " does not say how many jars of which size are filled",
			Advice:  "Write the number and the size, as in 6 half-pint jars.",
		}}
	},
}
