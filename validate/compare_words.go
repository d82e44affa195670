package validate

import "math/big"

// plenty says of what there is so much.
var plenty = map[string]string{"acid": "much acid", "tomatoes": "weight of tomatoes"}

// lineOf writes portions of a published recipe: 1 lb onions and 2 lb chile
// peppers.
func lineOf(items []Item) string {
	words := make([]string, len(items))
	for i, in := range items {
		words[i] = in.Amount.String() + " " + in.Item
	}
	return andList(words)
}

// shareOver says how much more than a dose there is: 150%, and 100.4% rather
// than 100%.
func shareOver(got, want *big.Rat) string {
	x := new(big.Rat).Quo(got, want)
	x.Mul(x, big.NewRat(100, 1))
	if x.Cmp(big.NewRat(102, 1)) < 0 {
		return x.FloatString(1) + "%"
	}
	return x.FloatString(0) + "%"
}
