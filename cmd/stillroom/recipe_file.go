package main

import (
	"fmt"
	"slices"

	"stillroom/content"
)

// recipe reads and judges the recipe of a file. It is nil if there is none, or
// if it has errors: then the user has been told, and status is how that ends.
func (p *program) recipe(name string) (r *content.Recipe, status int) {
	j, file, status := p.judgeFile(name)
	if status != succeeded {
		return nil, status
	}
	return p.recipeOf(j.site, file)
}

// recipeOf finds the recipe of a file among those of its site. It is nil if
// there is none, or if it was withdrawn, as recipe says.
func (p *program) recipeOf(s *content.Site, file string) (r *content.Recipe, status int) {
	at := slices.IndexFunc(s.Recipes, func(r *content.Recipe) bool { return r.File == file })
	if at < 0 {
		return nil, p.fail(noRecipe(file))
	}
	if r := s.Recipes[at]; r.Withdrawn != nil {
		return nil, p.refuseWithdrawn(r)
	}
	return s.Recipes[at], succeeded
}

func noRecipe(file string) error {
	return fmt.Errorf("%s is no recipe: those lie in content/recipes, and end in .md", file)
}

// judgeFile judges the site in which a file lies, and gives the file's path
// there. If the file has errors, or there is no such site, the user has been
// told, and status is how that ends.
func (p *program) judgeFile(name string) (j judged, file string, status int) {
	dir, err := siteOf(name)
	if err != nil {
		return j, "", p.fail(err)
	}
	progress := p.startProgress()
	j, err = p.judge(dir, day{}, progress)
	progress.end()
	if err != nil {
		return j, "", p.fail(err)
	}
	file, _ = relativeTo(dir, name)
	j.narrow([]string{file})
	if j.report.Counts.Errors > 0 {
		writeText(p.err, withoutAdvice(j.report), colourFor(p.err))
		return j, "", refused
	}
	return j, file, succeeded
}

// refuseWithdrawn says why nothing is made of a recipe that was taken back.
func (p *program) refuseWithdrawn(r *content.Recipe) int {
	p.say("%s was withdrawn on %s: %s", r.Name.V, r.Withdrawn.Date.V, r.Withdrawn.Reason.V)
	return refused
}
