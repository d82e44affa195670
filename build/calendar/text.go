package calendar

import (
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"

	"stillroom/build"
	"stillroom/content"
	"stillroom/validate"
)

// Text gives the calendar as a sheet to print and pin to the wall. What has
// nothing in it is left out.
func (c *Calendar) Text() string {
	s := &sheet{}
	s.head(strings.ToUpper(c.Site), c.Day.Time().Format("Monday 2 January 2006"))
	s.now(c.Months)
	s.coming(c.Months)
	s.planned(c.Planned)
	s.again(c.Again, c.Day)
	s.recheck(c.Recheck)
	s.best(c.Best)
	s.drafts(c.Drafts)
	return s.String()
}

func (s *sheet) now(months []Month) {
	s.section("TO PUT UP IN " + strings.ToUpper(months[0].First.Month.String()))
	if len(months[0].Ripe) == 0 {
		s.entry("", "Nothing that has a season.")
	}
	for _, r := range months[0].Ripe {
		s.entry(capital(r.Produce), namesOf(r.Recipes)+r.last())
	}
}

// last says when a season is nearly over.
func (r Ripe) last() string {
	if r.Ends {
		return " (the last month)"
	}
	return ""
}

func (s *sheet) coming(months []Month) {
	s.section("COMING UP")
	for _, m := range months[1:] {
		left := m.First.Month.String()
		for _, r := range m.Ripe {
			if r.Starts {
				s.entry(left, r.Produce+r.until(m)+": "+namesOf(r.Recipes))
				left = ""
			}
		}
		if left != "" {
			s.entry(left, "nothing new")
		}
	}
}

// until says how long a season lasts that begins in a month.
func (r Ripe) until(m Month) string {
	if r.Until == m.First.Month {
		return ""
	}
	return " (to " + r.Until.String() + ")"
}

func (s *sheet) planned(planned []build.Held) {
	if len(planned) > 0 {
		s.section("TO BE PUBLISHED")
	}
	for _, h := range planned {
		s.entry(shortDay(h.Until), h.Name+", "+sortOf(h.File))
	}
}

func (s *sheet) again(again []Again, day content.Date) {
	if len(again) > 0 {
		s.section("TO SHOW AGAIN BEFORE ITS SEASON")
	}
	for _, a := range again {
		s.entry(a.when(day), fmt.Sprintf("[ ] %s, last shown %s; season from %s", a.Recipe.Name.V, shortDay(a.Last), shortDay(a.Season)))
	}
}

// when says on which days something is best shown again.
func (a Again) when(day content.Date) string {
	switch {
	case a.To.Before(day):
		return "now"
	case a.From.Before(day):
		return "by " + a.To.Time().Format("2 Jan")
	case a.From.Month == a.To.Month:
		return a.From.Time().Format("2") + " to " + a.To.Time().Format("2 Jan")
	}
	return a.From.Time().Format("2 Jan") + " to " + a.To.Time().Format("2 Jan")
}

func (s *sheet) recheck(all []validate.Recheck) {
	if len(all) > 0 {
		s.section("TO CHECK AGAIN")
	}
	for _, r := range all {
		s.entry(since(r), "[ ] "+r.Recipe.Name.V)
		for _, why := range mostReasons(r) {
			s.more(why)
		}
	}
}

// since says when a recipe was checked last.
func since(r validate.Recheck) string {
	switch d := r.Recipe.Checked; {
	case r.Never:
		return "never checked"
	case d.Date.Set():
		return shortDay(d.Date.V)
	default:
		return shortDay(d.Edition.V)
	}
}

// mostReasons gives the newest reasons in words, and how many more there are.
// That a recipe was never checked is reason enough.
func mostReasons(r validate.Recheck) []string {
	const most = 3
	all := r.Reasons
	if r.Never {
		return nil
	}
	var says []string
	for _, r := range all[:min(most, len(all))] {
		says = append(says, strings.TrimPrefix(r.Date+": "+r.Says, ": "))
	}
	if n := len(all) - most; n > 0 {
		says = append(says, fmt.Sprintf("%d more: see stillroom check", n))
	}
	return says
}

func (s *sheet) best(all []Best) {
	if len(all) > 0 {
		s.section("BEST USED BY, IF ANY IS LEFT")
	}
	for _, b := range all {
		s.entry(shortDay(b.By), b.Recipe.Name.V+", "+b.made())
	}
}

// made says what a batch gave and when, and how it is kept if there is more
// than one way.
func (b Best) made() string {
	made := strings.TrimSpace(b.Batch.Yield.V.Text + " made " + shortDay(b.Batch.Made.V))
	if len(b.Recipe.Keeping) > 1 {
		made += " (" + strings.ReplaceAll(string(b.Way.Way.V), "-", " ") + ")"
	}
	return made
}

func (s *sheet) drafts(all []build.Held) {
	if len(all) > 0 {
		s.section("DRAFTS TO FINISH")
	}
	for _, h := range all {
		if h.Name == "" {
			h.Name = h.File
		}
		s.entry(sortOf(h.File), "[ ] "+h.Name)
	}
}

// sortOf names what a file is.
func sortOf(file string) string {
	switch content.SortOf(file) {
	case content.ARecipe:
		return "recipe"
	case content.AnEpisode:
		return "episode"
	}
	return "page"
}

func namesOf(recipes []*content.Recipe) string {
	var names []string
	for _, r := range recipes {
		names = append(names, r.Name.V)
	}
	return strings.Join(slices.Compact(names), "; ")
}

// shortDay writes a day so that no reader takes the month for the day.
func shortDay(d content.Date) string { return d.Time().Format("2 Jan 2006") }

func capital(s string) string {
	r, n := utf8.DecodeRuneInString(s)
	return strings.ToUpper(string(r)) + s[n:]
}
