package validate

// tablePicture reports a table of times shown as a picture.
var tablePicture = &Rule{
	ID:       "table-picture",
	Severity: Error,
	Summary:  "a table of times shown as a picture",
	Doc: `A picture of a table cannot be read aloud, searched, or compared with the tested
one. The times go in the front matter; the page sets the table.`,
	Source: Source{Title: "W3C techniques for text alternatives (memory)"},
	Practice: &Practice{
		Phrases: `table|chart|list|grid|infographic .. of|with|showing|for|listing .. altitude|times|minutes|pressures|processing|process|canning|pressure; altitude|processing|pressure|canning|time|times|process table|chart|infographic
			maybe see|find|check|consult|look|in .. picture|photo|photograph|image|graphic|infographic|screenshot|scan ... times|minutes|altitude~|pressures|processing; maybe times|minutes|pressures ... are|is .. in|on .. picture|photo|photograph|image|graphic|infographic|screenshot|scan`,
		Where:   inAPicture,
		Grade:   func(*Text, *sentence) Severity { return Error }, // in a picture too
		Message: "a table is shown as a picture",
		Advice:  "Put the figures in the front matter, where they are checked.",
	},
}

// inAPicture holds in the words that stand for a picture, and where a text sends
// its readers to one for the figures.
func inAPicture(_ *Text, s *sentence, h hit) bool { return h.maybe != (s.place == placePicture) }
