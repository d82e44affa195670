package validate

import "stillroom/content"

// The families of faults that reading finds. They have no check of their own.
var (
	frontMatter = reading(content.FrontMatter, "front matter that is missing, never closed or not YAML",
		`A file begins with a line of three dashes, its front matter in YAML, and three
dashes again. What follows is Markdown. An indented line of dashes ends the front
matter as well, so write such a line some other way.`)
	unknownKey = reading(content.UnknownKey, "a key that nobody knows",
		`A misspelt key would be a value that nobody checks. The nearest known key is
named; "stillroom schema" lists them all.`)
	repeatedKey = reading(content.RepeatedKey, "a key given twice",
		`Of two values one would be lost without a word. Keep the one that is meant.`)
	wrongType = reading(content.WrongType, "a list where a text belongs, 6.5 where a whole number does",
		`Each key wants one sort of value. Whole numbers are written in plain digits: 010,
1_0 and 1e1 are refused, since programs read them in different ways.`)
	badValue = reading(content.BadValue, "a word or a measure that cannot be read",
		`Lengths, weights, volumes, temperatures, durations and altitudes carry a unit:
1/4 in, 350 g, 10 min, 4,500 ft. Words come from short lists; the finding names
the nearest.`)
	missingKey = reading(content.MissingKey, "a key that every such file must have",
		`Without it a page cannot be made, or a reader would be left without something
that they must know.`)
	fileName = reading(content.BadFileName, "a file name that makes no address",
		`The file's name becomes the page's address: lower-case letters, digits and
hyphens, as in damson-jam.md.`)
	textRule = reading(content.BadText, "text that is not UTF-8, or holds control characters",
		`Save the file as UTF-8. Control characters break feeds and structured data.`)
)

func reading(kind content.FaultKind, summary, doc string) *Rule {
	return &Rule{ID: string(kind), Severity: Error, Summary: summary, Doc: doc, Source: contract}
}
