package build

import "stillroom/content"

// A WithdrawnPage stands where a recipe, and its card, stood until it was taken
// back. It says why, and nothing by which the recipe could still be made.
type WithdrawnPage struct {
	Shell
	Name        string
	Date        Day
	Reason      string
	Instead     *Jar // nil if there is no recipe to make in its place
	Corrections []Correction
	Published   Day
	Safety      Link // the site's page on canning; zero if it has none
}

func (e *edition) withdrawnPage(r *content.Recipe) *WithdrawnPage {
	p := &WithdrawnPage{
		Name:        r.Name.V,
		Date:        day(r.Withdrawn.Date.V),
		Reason:      typeset(r.Withdrawn.Reason.V),
		Corrections: corrections(r),
		Published:   day(r.Published.V),
		Safety:      e.safetyPage(),
	}
	p.Shell = e.shell(leaf{
		address:     recipeAddress(r),
		name:        "Withdrawn: " + r.Name.V,
		description: "Withdrawn on " + p.Date.Text + ": " + r.Withdrawn.Reason.V,
		trail:       []Link{{Name: "Recipes", Address: recipesAddress}},
		styles:      []string{"notice.css"},
	})
	if other := e.recipe[r.Withdrawn.Instead.V]; other != nil {
		j := jar(other)
		p.Instead = &j
		p.Vessels = vessels([]Jar{j})
	}
	return p
}

// withdrawnCard stands where the card was: whoever has its address in a drawer
// has to be told too.
func (e *edition) withdrawnCard(r *content.Recipe) *WithdrawnPage {
	p := e.withdrawnPage(r)
	p.Title = e.title("Withdrawn card: " + r.Name.V)
	p.Description = "The card is withdrawn, as the recipe is. " + p.Description
	p.Hidden, p.Share = true, nil
	return p
}

// withdrawnLinks leads to the recipes that an episode names and that were taken
// back.
func (e *edition) withdrawnLinks(ep *content.Episode) []Link {
	var links []Link
	for _, s := range named(ep) {
		for _, r := range e.withdrawn {
			if r.Slug == s {
				links = append(links, Link{Name: r.Name.V, Address: recipeAddress(r)})
			}
		}
	}
	return links
}
