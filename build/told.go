package build

import "stillroom/content"

// A told recipe is what its page and its card both tell, found once for both
// where one is made soon after the other.
type told struct {
	*content.Recipe
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
	return told{r, m, ingredientGroups(r), e.keepingBlocks(r), asked(r)}, nil
}
