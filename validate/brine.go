package validate

import "math/big"

// BrineStrength gives the salt of a brine in per cent by weight: of salt and
// water together, both in grams. It is nil where there is neither.
//
// This is the way in which strengths are published: AIB 539 has half a cup of
// canning salt (144 g) to 8 cups of water for dill pickles, 7 per cent.
func BrineStrength(salt, water *big.Rat) *big.Rat {
	return percentOf(salt, new(big.Rat).Add(salt, water))
}

// DrySaltStrength gives the salt of a dry salting in per cent of the weight of
// the vegetables alone, both in grams. It is nil where there are none.
//
// Sauerkraut is published so: 3 tablespoons of canning salt (54 g) to 5 lb of
// cabbage, 2.4 per cent.
func DrySaltStrength(salt, food *big.Rat) *big.Rat { return percentOf(salt, food) }

func percentOf(part, whole *big.Rat) *big.Rat {
	if whole.Sign() == 0 {
		return nil
	}
	x := new(big.Rat).Mul(part, big.NewRat(100, 1))
	return x.Quo(x, whole)
}
