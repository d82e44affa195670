package validate

import (
	"fmt"
	"math/big"

	"stillroom/content"
)

// saltDiffers reports a stated strength of salt that the ingredients do not
// bear out.
var saltDiffers = &Rule{
	ID:       "salt-differs",
	Severity: Warning,
	Summary:  "a strength of salt that the ingredients do not bear out",
	Doc: `"salt:" and the ingredients must say the same. A dry salting is reckoned on the weight
of the vegetables, a brine on salt and water together; where the strength is given on
another footing, such as on vegetables and water together, this shows it. Salt by the
spoon is weighed by a table: 18 g to a tablespoon of canning salt.`,
	Source: Source{
		Title:   "Sauerkraut, University of Florida IFAS Extension HE 287, after AIB 539",
		Address: "https://edis.ifas.ufl.edu/he287",
	},
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding {
		k := m.Keeping
		if k.Way.V != content.Fermenting || !k.Salt.Set() {
			return nil
		}
		reckoned := m.saltReckoned()
		if reckoned == nil || !differ(k.Salt.V.Low, reckoned) || !differ(k.Salt.V.High, reckoned) || holdsShare(k.Salt.V, reckoned) {
			return nil
		}
		return []Finding{{
			Pos:     k.Salt.Pos,
			Message: fmt.Sprintf("the ingredients come to %s%% of salt, not %s", reckoned.FloatString(1), k.Salt.V.Text),
			Advice:  "Correct one of them, and give the salt by weight.",
			Notes:   []Note{{Pos: m.ofKind(ItemSalt)[0].Pos, Message: "salt"}},
		}}
	},
}

func holdsShare(s content.Share, x *big.Rat) bool { return s.Low.Cmp(x) <= 0 && x.Cmp(s.High) <= 0 }
