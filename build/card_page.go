package build

import (
	"slices"
	"strings"

	"stillroom/content"
)

// A CardPage is a recipe as it lies beside the stove: all that has to be looked
// up with wet hands, to be printed on a card or a sheet.
type CardPage struct {
	Shell
	Name        string
	Kind        string
	Fill        string
	Recipe      string // address of the recipe's page
	Where       string // where to read more, as it is typed: hollowlane.example/recipes/damson-jam/
	Papers      []Paper
	Facts       []Fact
	Ingredients []IngredientGroup
	Method      []Part
	Keeping     []KeepingBlock
	Cautions    []string // the recipe's own, and the usual ones in short
	Canned      bool
	Refusals    []Refusal
	Asked       Asked
	Corrections []Correction
	Published   Day
	Checked     Day // when it was last checked against the tables of tested processes
}

// A Paper is a size to print on.
type Paper struct {
	ID     string // by which the style knows it
	Name   string
	Size   string
	Chosen bool
}

// papers are those that the style has pages for: the cards, then the sheets.
// ISO 216; CSS Paged Media 3 has no name for A6.
var papers = []Paper{
	{ID: "a6", Name: "A6 card", Size: "105 × 148 mm"},
	{ID: "index", Name: "Index card", Size: "4 × 6 in"},
	{ID: "half", Name: "Half letter", Size: "5½ × 8½ in"},
	{ID: "a4", Name: "A4 sheet", Size: "210 × 297 mm"},
	{ID: "letter", Name: "Letter sheet", Size: "8½ × 11 in"},
}

func cardAddress(r *content.Recipe) string { return recipeAddress(r) + "card/" }

func (e *edition) cardPage(t told) *CardPage {
	r, ways := t.Recipe, waysOf(t.Recipe)
	p := &CardPage{
		Name:        r.Name.V,
		Kind:        nameKind(r.Kind.V).one,
		Fill:        fill(r),
		Recipe:      recipeAddress(r),
		Where:       e.typed(recipeAddress(r)),
		Papers:      papersFor(e.settings.Units.V),
		Facts:       recipeFacts(r),
		Ingredients: t.ingredients,
		Method:      t.method.Parts,
		Keeping:     t.keeping,
		Cautions:    append(texts(r.Cautions), shortCautions(ways)...),
		Canned:      slices.ContainsFunc(ways, content.Way.Canned),
		Asked:       t.asked,
		Corrections: corrections(r),
		Published:   day(r.Published.V),
		Checked:     day(r.Checked.Date.V),
	}
	p.Refusals = refusals(p.Asked)
	p.Shell = e.shell(leaf{
		address:     cardAddress(r),
		name:        r.Name.V + ": the card",
		description: "To print and lay beside the stove: " + r.Name.V + ".",
		trail:       []Link{{Name: "Recipes", Address: recipesAddress}, {Name: r.Name.V, Address: recipeAddress(r)}},
		styles:      []string{"card.css"},
	})
	// FI-06 of the table of standards: a card stands for its recipe, and asks
	// search engines to leave it out.
	p.Hidden, p.Share, p.Data = true, nil, ""
	if p.Canonical != "" {
		p.Canonical = e.absolute(recipeAddress(r))
	}
	return p
}

// papersFor has the card chosen that the site's kitchens have at hand.
func papersFor(u content.Units) []Paper {
	chosen := "index"
	if u == content.Metric {
		chosen = "a6"
	}
	all := slices.Clone(papers)
	for i := range all {
		all[i].Chosen = all[i].ID == chosen
	}
	return all
}

// typed is an address as it is typed from paper; empty if the site has none.
func (e *edition) typed(address string) string {
	if e.settings.Address.V == "" {
		return ""
	}
	_, typed, _ := strings.Cut(e.absolute(address), "://")
	return typed
}
