package content

// ParseAcid reads where a jar's acid comes from: natural, in-recipe, or 2 tbsp
// bottled lemon juice per quart.
func ParseAcid(s string) (Acid, error) { return Acid{}, errNotYet }
