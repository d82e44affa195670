package validate

import (
	"math/big"

	"stillroom/content"
)

// lowSugarTime reports a jam of little sugar with the time of an ordinary one.
var lowSugarTime = &Rule{
	ID:       "low-sugar-time",
	Severity: Warning,
	Summary:  "a jam of little sugar with the time of an ordinary one",
	Doc: `An ordinary jam is half sugar and more, and a few minutes do for it. With a pectin
made for little sugar, with a sweetener, or with less than half the usual sugar, it
is fruit that has to keep by its heat alone, and has longer times of its own. Follow
the times of that pectin's maker, or keep the jam in the refrigerator or freezer.`,
	Source: Source{
		Title:   "Reduced sugar jams and jellies, Michigan State University Extension",
		Address: "http://www.solareagle.com/PREP/PFS/01600960.HTM",
	},
	CheckKeeping: checkLowSugarTime,
}

func checkLowSugarTime(r *content.Recipe, m *Match) []Finding {
	if m.Process == nil || !isSpread(r.Kind.V) || !m.ordinaryJam() {
		return nil
	}
	why := m.littleSugar()
	if why == "" {
		return nil
	}
	return []Finding{{
		Pos:     m.Keeping.Process.Pos,
		Message: why + ", and " + m.Process.ID + " was tested with the sugar of an ordinary jam",
		Advice:  "Take the times that come with the pectin, or keep it in the refrigerator or the freezer.",
	}}
}

func isSpread(k content.Kind) bool {
	return k == content.Jam || k == content.Jelly || k == content.Marmalade || k == content.Conserve
}

// ordinaryJam reports whether the process is under ten minutes long, as those
// of ordinary jam are.
func (m *Match) ordinaryJam() bool {
	s := m.Process.Jars[0].Schedules
	return m.Process.Method == content.BoilingWater && s[0].Bands[0].Minutes < sterilisingMinutes()
}

// littleSugar says what shows that a jam has little sugar; empty if nothing
// does.
func (m *Match) littleSugar() string {
	for _, in := range m.Items {
		switch {
		case in.Class.Kind == ItemPectin && in.Class.Variety == "low-sugar":
			return "the pectin is one for little sugar"
		case in.Class.Kind == ItemSweetener:
			return in.Item + " takes the place of sugar"
		}
	}
	if x := m.sugarToFruit(); x != nil && x.Cmp(LimitRat("jam-sugar-little")) < 0 {
		return "there is less sugar than half the fruit by volume"
	}
	return ""
}

// sugarToFruit gives the sugar in cups to a cup of fruit or juice; nil if it
// cannot be told.
func (m *Match) sugarToFruit() *big.Rat {
	sugar, ok := cupsOf(ofRole(m.Items, RoleSugar))
	fruit, all := cupsOf(ofRole(m.Items, RoleFruit))
	if !ok || !all || fruit.Sign() == 0 {
		return nil
	}
	return sugar.Quo(sugar, fruit)
}
