package validate

import (
	"cmp"
	"slices"

	"stillroom/content"
)

// A Report is all that a check found.
type Report struct {
	Findings []Finding // in order of file, line, column and rule; accepted ones included
	Counts   Counts
}

// In gives what was found in one file; it is a part of Findings.
func (r Report) In(file string) []Finding {
	first, _ := slices.BinarySearchFunc(r.Findings, file, func(f Finding, file string) int { return cmp.Compare(f.Pos.File, file) })
	end := first
	for end < len(r.Findings) && r.Findings[end].Pos.File == file {
		end++
	}
	return r.Findings[first:end:end]
}

// Counts are the figures of the closing line. Accepted findings are not
// counted.
type Counts struct {
	Recipes  int `json:"recipes"`
	Episodes int `json:"episodes"`
	Pages    int `json:"pages"`
	Errors   int `json:"errors"`
	Warnings int `json:"warnings"`
	Advice   int `json:"advice"`
}

// A Checked is a site in which Check found no error. Only Check can make one.
type Checked struct {
	site *content.Site
	day  content.Date
}

// Site is what was checked; nobody may change it. Nil for the zero Checked.
func (c Checked) Site() *content.Site { return c.site }

// Day is the day for which the site was checked: what is published later is
// held back.
func (c Checked) Day() content.Date { return c.day }

// Check judges a site and the faults that were met in reading it, as of the
// given day. The site may be built if ok is true; otherwise the Checked is
// zero. Check changes nothing and keeps nothing.
func Check(s *content.Site, faults []content.Fault, day content.Date) (rep Report, c Checked, ok bool) {
	var fs []Finding
	for _, f := range faults {
		fs = append(fs, faultFinding(f))
	}
	fs = append(fs, sideBySide(len(s.Recipes), func(i int) []Finding { return checkRecipe(s.Recipes[i], Rules) })...)
	named := namedRecipes(s)
	fs = append(fs, sideBySide(len(s.Episodes), func(i int) []Finding {
		return checkEpisode(s.Episodes[i], besideEpisode(s, s.Episodes[i], named), Rules)
	})...)
	fs = append(fs, sideBySide(len(s.Pages), func(i int) []Finding { return checkText(textOfPage(s.Pages[i]), Rules) })...)
	whole := append(checkSite(s, Rules), checkDay(s, day, Rules)...)
	takeSiteAsRead(whole, s)
	fs = append(fs, whole...)
	sortFindings(fs)
	rep = Report{Findings: fs, Counts: count(s, fs)}
	if rep.Counts.Errors > 0 {
		return rep, Checked{}, false
	}
	return rep, Checked{site: s, day: day}, true
}

// checkRecipe runs the rules on one recipe and takes what its author accepted
// as read. What is withdrawn was wrong, and is not published: it is let be.
func checkRecipe(r *content.Recipe, rules []*Rule) []Finding {
	if r.Withdrawn != nil {
		return nil
	}
	items := itemsOf(r)
	matches := make([]*Match, len(r.Keeping))
	for i := range r.Keeping {
		matches[i] = match(&r.Keeping[i], items)
	}
	var fs []Finding
	for _, rule := range rules {
		if rule.Check != nil {
			fs = append(fs, rule.stamp(rule.Check(r))...)
		}
		if rule.CheckKeeping == nil {
			continue
		}
		fs = append(fs, rule.stamp(eachWay(rule, r, matches))...)
	}
	fs = append(fs, checkText(textOfRecipe(r, matches), rules)...)
	if unfinished(r) {
		letWait(fs)
	}
	refused := checkAccept(r, fs)
	takeAsRead(fs, r.Accept)
	return append(fs, refused...)
}

// unfinished reports whether a recipe is a draft that does not say yet what is
// kept, how, and for how long.
func unfinished(r *content.Recipe) bool {
	blank := func(k content.Keeping) bool { return !k.Way.Set() || !k.Keeps.Set() }
	return r.Status.V == content.Draft &&
		(!r.Yield.Set() || len(r.Ingredients) == 0 || len(r.Keeping) == 0 || slices.ContainsFunc(r.Keeping, blank))
}

// letWait makes warnings of errors. A draft that is not finished cannot be
// published, and what it says of jars and minutes has nothing yet to be held
// against: it stops nobody from publishing the rest.
func letWait(fs []Finding) {
	for i := range fs {
		if fs[i].Severity == Error {
			fs[i].Severity = Warning
		}
	}
}

// eachWay runs a rule on every way of keeping. What it says of one line for
// several ways is said once.
func eachWay(rule *Rule, r *content.Recipe, matches []*Match) []Finding {
	var fs []Finding
	for _, m := range matches {
		for _, f := range rule.CheckKeeping(r, m) {
			same := func(g Finding) bool { return g.Pos == f.Pos && g.Message == f.Message }
			if !slices.ContainsFunc(fs, same) {
				fs = append(fs, f)
			}
		}
	}
	return fs
}

// besideEpisode gives the part of a site beside which an episode is judged: of all
// recipes those that it names, for whoever looks for them, or all if one of them
// is missing.
func besideEpisode(s *content.Site, e *content.Episode, named map[string][]*content.Recipe) *content.Site {
	part := *s
	part.Recipes = nil
	for _, slug := range namedIn(e) {
		switch all := named[slug]; {
		case len(all) == 0:
			return s
		case !slices.Contains(part.Recipes, all[0]):
			part.Recipes = append(part.Recipes, all...)
		}
	}
	return &part
}

func checkEpisode(e *content.Episode, s *content.Site, rules []*Rule) []Finding {
	var fs []Finding
	for _, rule := range rules {
		if rule.CheckEpisode != nil {
			fs = append(fs, rule.stamp(rule.CheckEpisode(e, s))...)
		}
	}
	return append(fs, checkText(textOfEpisode(e, s), rules)...)
}

// checkText runs the rules that read on what a recipe, an episode or a page
// says. The text may be used no more.
func checkText(t *Text, rules []*Rule) []Finding {
	var fs []Finding
	for _, rule := range rules {
		if rule.Practice != nil {
			fs = append(fs, rule.stamp(rule.checkPractice(t))...)
		}
		if rule.CheckText != nil {
			fs = append(fs, rule.stamp(rule.CheckText(t))...)
		}
	}
	t.putAway()
	return fs
}

func checkSite(s *content.Site, rules []*Rule) []Finding {
	var fs []Finding
	for _, rule := range rules {
		if rule.CheckSite != nil {
			fs = append(fs, rule.stamp(rule.CheckSite(s))...)
		}
	}
	return fs
}

func checkDay(s *content.Site, day content.Date, rules []*Rule) []Finding {
	var fs []Finding
	for _, rule := range rules {
		if rule.CheckDay != nil {
			fs = append(fs, rule.stamp(rule.CheckDay(s, day))...)
		}
	}
	return fs
}

// stamp puts the rule's name on its findings, and its severity and source on
// those that bring none of their own.
func (r *Rule) stamp(fs []Finding) []Finding {
	for i := range fs {
		fs[i].Rule = r.ID
		if fs[i].Severity == 0 {
			fs[i].Severity = r.Severity
		}
		if fs[i].Source == (Source{}) {
			fs[i].Source = r.Source
		}
	}
	return fs
}

// takeAsRead marks the warnings and advice whose rule the author accepted. An
// error stays what it is.
func takeAsRead(fs []Finding, accept []content.Acceptance) {
	for i := range fs {
		if fs[i].Severity == Error {
			continue
		}
		if a := slices.IndexFunc(accept, func(a content.Acceptance) bool { return a.Rule.V == fs[i].Rule }); a >= 0 {
			fs[i].Accepted = accept[a].Reason.V
		}
	}
}

// takeSiteAsRead does so with what rules on the whole site found in recipes.
func takeSiteAsRead(fs []Finding, s *content.Site) {
	accept := make(map[string][]content.Acceptance)
	for i := range fs {
		accept[fs[i].Pos.File] = nil
	}
	for _, r := range s.Recipes {
		if _, ok := accept[r.File]; ok {
			accept[r.File] = r.Accept
		}
	}
	for i := range fs {
		takeAsRead(fs[i:i+1], accept[fs[i].Pos.File])
	}
}

func count(s *content.Site, fs []Finding) Counts {
	c := Counts{Recipes: len(s.Recipes), Episodes: len(s.Episodes), Pages: len(s.Pages)}
	for _, f := range fs {
		switch {
		case f.Accepted != "":
		case f.Severity == Error:
			c.Errors++
		case f.Severity == Warning:
			c.Warnings++
		case f.Severity == Advice:
			c.Advice++
		}
	}
	return c
}

// faultFinding turns a fault of the writing into a finding of the rule of the
// same name.
func faultFinding(f content.Fault) Finding {
	rule := FindRule(string(f.Kind))
	out := Finding{Pos: f.Pos, Message: f.Message, Advice: f.Advice}
	if f.Later {
		out.Severity = Warning
	}
	if f.AlsoSay != "" {
		out.Notes = []Note{{Pos: f.Also, Message: f.AlsoSay}}
	}
	return rule.stamp([]Finding{out})[0]
}
