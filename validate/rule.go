package validate

import "stillroom/content"

// A Rule is one thing that is checked, and who published it.
//
// A rule has one of the checks, or a Practice, or none if it only names a family
// of faults that reading finds.
//
// What it looks at besides the recipe, episode or page has to be known to a
// [Desk], which judges again only what depends on a change: of an episode the
// recipes that it names, and the files that lie beside it.
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
	CheckDay     func(*content.Site, content.Date) []Finding // on the site, as of a day; zero if nobody knows it

	Practice  *Practice             // what a text must not tell its readers to do
	CheckText func(*Text) []Finding // once for each recipe, episode and page
}
