package build

import (
	"stillroom/build/amount"
	"stillroom/content"
)

// A told recipe is what its page and its card both tell, found once for both
// where one is made soon after the other.
type told struct {
	*content.Recipe
	lines       [][]amount.Line
	method      Method
	ingredients []IngredientGroup
	keeping     []KeepingBlock
	asked       Asked
}

func (e *edition) tell(r *content.Recipe) (told, error) {
	m, err := e.md.method(r.Body)
	if err != nil {
		return told{}, err
	}
	lines := amount.Lines(r)
	return told{r, lines, m, ingredientGroups(r, lines), e.keepingBlocks(r), asked(r)}, nil
}
