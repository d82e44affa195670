package validate

import (
	"fmt"
	"math/big"
	"sync"

	"stillroom/content"
)

// jamYield reports a jam whose yield is far from what its fruit and sugar can
// come to.
var jamYield = &Rule{
	ID:       "jam-yield",
	Severity: Advice,
	Summary:  "a yield of jam that its fruit and sugar do not come to",
	Doc: `Jam is set when two thirds of it are sugar and fruit solids, so what went in tells how
much comes out: the solids divided by 65 per cent. A yield that is far above it was
never cooked down, or misses some sugar; one far below was cooked too long, or is of
another batch. Readers prepare as many jars as you say.

The published recipes lie within a third of it, but for three rows of an old table of
jellies, whose jars hold more than went into the pot.`,
	Source: Source{
		Title:   "21 CFR 150.140 and 150.160, soluble solids of jellies and jams",
		Address: "https://webharvest.gov/peth04/20041029143249/http://www.cfsan.fda.gov/~dms/qa-ind5c.html",
	},
	CheckKeeping: checkJamYield,
}

func checkJamYield(r *content.Recipe, m *Match) []Finding {
	if !isSpread(r.Kind.V) || m.Keeping != &r.Keeping[0] || !r.Yield.Set() || isUncooked(r) {
		return nil
	}
	for _, in := range m.ofKind(ItemPectin) {
		if in.Class.Variety == "low-sugar" {
			return nil
		}
	}
	reckoned := jamJars(m.Items)
	most, least := mostVolume(r.Yield.V), leastVolume(r.Yield.V)
	if reckoned == nil || most == nil {
		return nil
	}
	off := new(big.Rat).Mul(reckoned, jamYieldOff())
	low, high := new(big.Rat).Sub(reckoned, off), off.Add(reckoned, off)
	if compare(most, low) >= 0 && compare(least, high) <= 0 {
		return nil
	}
	return []Finding{{
		Pos:     r.Yield.Pos,
		Message: fmt.Sprintf("%s, where fruit and sugar come to about %s half-pints", r.Yield.V.Text, halfPints(reckoned)),
		Advice:  "Count the jars of a batch again, and look at the amounts.",
	}}
}

// jamYieldOff is the part of a reckoned yield by which another may be off.
var jamYieldOff = sync.OnceValue(func() *big.Rat {
	return new(big.Rat).Quo(LimitRat("jam-yield-off"), big.NewRat(100, 1))
})

// jamJars gives the jars, in millilitres to the rim, that a jam fills; nil if
// it cannot be reckoned.
func jamJars(items []Item) *big.Rat {
	pot, ok := jamPotOf(items)
	if !ok {
		return nil
	}
	x := JamVolume(pot.mass, pot.solids, LimitRat("jam-solids-min"))
	x.Mul(x, big.NewRat(100, 1))
	return x.Quo(x, LimitRat("jar-filled"))
}

func halfPints(ml *big.Rat) string {
	size, _ := content.ParseJar("half-pint")
	return new(big.Rat).Quo(ml, size.Millilitres()).FloatString(1)
}

// leastVolume is the volume in millilitres of the smallest yield.
func leastVolume(y content.Yield) *big.Rat {
	y.High = y.Low
	return mostVolume(y)
}
