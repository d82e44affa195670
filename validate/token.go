package validate

import "math/big"

// A token is a word, a number or a sign of measure of a running text.
type token struct {
	id         int32 // of the lexicon; 0 for a word that it does not hold
	start, end int32 // in the text of its passage
	num, den   int32 // the value of a number in digits; zero for a word
	after      byte  // the strongest mark between it and the next token: 0 , : ; - ( ) . ? !
	joined     bool  // nothing, or a hyphen, stands between it and the token before
	quoted     bool
	bracketed  bool
	simple     bool  // a word of plain letters, all of them in its id
	counts     bool  // a number may begin here
	bit        uint8 // of the word in a sieve
}

// number is the value of a number in digits; the zero ratio for a word.
func (t *token) number() ratio { return ratio{int64(t.num), int64(t.den)} }

// A ratio is a number as a cook writes it; its den is 0 if there is none.
type ratio struct{ num, den int64 }

func (r ratio) set() bool { return r.den != 0 }

// compare compares the number with one of the recipe's, exactly.
func (r ratio) compare(x *big.Rat) int {
	num, den, ok := parted(x)
	if !ok || r.num < 0 || x.Sign() < 0 {
		return r.rat().Cmp(x)
	}
	return compareParts(uint64(r.num), uint64(r.den), num, den)
}

// rat gives the number as those of the recipe are held.
func (r ratio) rat() *big.Rat {
	if r.den == 1 {
		return new(big.Rat).SetInt64(r.num)
	}
	return big.NewRat(r.num, r.den)
}

// ranks orders marks by how much they part.
var ranks = [256]uint8{',': 1, ':': 2, '-': 3, ';': 4, '(': 5, ')': 6, '.': 7, '?': 8, '!': 9}

func rank(mark byte) int { return int(ranks[mark]) }

// parts reports whether a mark parts two clauses for certain.
func parts(mark byte) bool { return rank(mark) > 1 }
