package validate

import (
	"fmt"
	"math/big"

	"stillroom/content"
)

// saltShort reports a ferment with less salt than was published for it.
var saltShort = &Rule{
	ID:       "salt-short",
	Severity: Error,
	Summary:  "a ferment with less salt than was published for it",
	Doc: `Salt holds back the wrong bacteria until the right ones have made acid. It is never
reduced in a ferment. The lowest strengths in print are those of the guide: three
quarters of a cup of canning salt to 25 lb of cabbage (1.9 per cent of its weight; most
sheets say 2.25 to 2.5, and less than that is a warning here), and half a cup to 8 cups
of water for dill pickles (7 per cent of the brine).

For other vegetables no strength was tested: that is told as advice.`,
	Source: Source{
		Title:   "Reduced-sodium pickles, Michigan State University Extension",
		Address: "http://www.solareagle.com/PREP/PFS/01600956.HTM",
	},
	CheckKeeping: checkSaltShort,
}

func checkSaltShort(r *content.Recipe, m *Match) []Finding {
	k := m.Keeping
	if k.Way.V != content.Fermenting || r.Kind.V == content.Vinegar || r.Kind.V == content.Cordial {
		return nil
	}
	have, pos := k.Salt.V.Percent(), k.Salt.Pos
	if reckoned := m.saltReckoned(); reckoned != nil && (have == nil || reckoned.Cmp(have) < 0 && differ(reckoned, have)) {
		have, pos = reckoned, m.ofKind(ItemSalt)[0].Pos
	}
	if have == nil {
		return nil // ferment-incomplete asks for it
	}
	least, source := m.saltTested(r)
	usual := LimitOf("kraut-salt-percent-range")
	f := Finding{Pos: pos, Source: source}
	switch {
	case least == nil:
		f.Severity, f.Source = Advice, Source{}
		f.Message = "no strength of salt is published for a ferment of this"
		f.Advice = "Keep it in the refrigerator, and measure its pH."
	case have.Cmp(least) < 0:
		f.Message = fmt.Sprintf("%s%% of salt is under the published %s%%", percent(have), percent(least))
		f.Advice = "Never use less salt than was published; weigh it."
	case least.Cmp(usual.Low) < 0 && roughly(have).Cmp(usual.Low) < 0:
		f.Severity, f.Source = Warning, usual.Source
		f.Message = fmt.Sprintf("%s%% of salt is under the %s%% of most sheets", percent(have), usual.Value)
		f.Advice = "Use 3 tablespoons of canning salt, 54 g, to 5 lb of cabbage."
	default:
		return nil
	}
	return []Finding{f}
}

// differ reports whether two strengths are further apart than rounding.
func differ(a, b *big.Rat) bool {
	off := new(big.Rat).Sub(a, b)
	return off.Abs(off).Cmp(LimitRat("salt-strength-agree")) > 0
}

// roughly allows a strength the rounding of its last digit.
func roughly(x *big.Rat) *big.Rat { return new(big.Rat).Add(x, big.NewRat(1, 100)) }
