package validate

import "stillroom/content"

// A Rule is one thing that is checked, and who published it.
//
// A rule has one of Check, CheckKeeping, CheckEpisode and CheckSite, or none if it
// only names a family of faults that reading finds.
type Rule struct {
	ID       string // printed in findings; never reused
	Severity Severity
	Summary  string // what it refuses, in a line: "a time under the tested one"
	Doc      string // for the cook: what, why, how to put it right
	Source   Source

	Check        func(*content.Recipe) []Finding
	CheckKeeping func(*content.Recipe, *Match) []Finding // once for each way of keeping
	CheckEpisode func(*content.Episode, *content.Site) []Finding
	CheckSite    func(*content.Site) []Finding
}

// A Match is a way of keeping beside what is published for it. Everything
// but Recipe and Keeping may be missing.
type Match struct {
	Keeping *content.Keeping
	Process *Process   // the process that is cited, for the way's method; nil if none or unknown
	Jars    []JarMatch // one for each entry of Keeping.Processing
}

// A JarMatch is an entry of processing beside the tested jar that it is judged by.
type JarMatch struct {
	Entry  *content.Processing
	Tested *JarProcess // the tested jar of the same size or the next size up; nil if none
}
