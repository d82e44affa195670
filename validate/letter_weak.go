package validate

import (
	"fmt"

	"stillroom/content"
)

// letterWeak reports a written process that is weaker than what holds for all
// canned food.
var letterWeak = &Rule{
	ID:       "letter-weak",
	Severity: Error,
	Summary:  "a written process that is weaker than the general rules",
	Doc: `"tested_by:" stands for a process that an authority set for one recipe. Even then some
things hold for all home canning: a quarter of an inch of headspace, an inch for
low-acid food; sterilised jars under 10 minutes; no jar over a quart; and for low-acid
food under pressure 11 psi on a dial gauge, 12, 13 and 14 as altitude rises, or 10 and
15 on a weighted one. Look at the letter again.

A letter for low-acid food in boiling water stands on its acid: give the pH that it
names, or this warns.`,
	Source:       guide,
	CheckKeeping: checkLetterWeak,
}

func checkLetterWeak(r *content.Recipe, m *Match) []Finding {
	k := m.Keeping
	if k.TestedBy == nil || !k.Way.V.Canned() {
		return nil
	}
	low := hasLowAcid(r)
	fs := letterHeadspace(k, low)
	for _, j := range m.Jars {
		fs = append(fs, letterJar(j)...)
		if k.Way.V == content.PressureCanner && low {
			fs = append(fs, letterPressure(j.Entry)...)
		}
		if k.Way.V != content.PressureCanner && !k.JarsSterilised.V {
			fs = append(fs, letterSterilised(j.Entry)...)
		}
	}
	if k.Way.V != content.PressureCanner && low && !k.PH.Set() {
		fs = append(fs, Finding{
			Pos:      k.TestedBy.Pos,
			Severity: Warning,
			Message:  "low-acid food in boiling water by a letter, and its pH is not given",
			Advice:   "Write ph: with the highest that the letter allows.",
		})
	}
	return fs
}

func hasLowAcid(r *content.Recipe) bool {
	for _, p := range r.Produce {
		if food, ok := LookUpProduce(p.V); ok && food.Acidity == LowAcid {
			return true
		}
	}
	return false
}

func letterHeadspace(k *content.Keeping, low bool) []Finding {
	least := LimitOf("headspace-jam-jelly")
	if low && k.Way.V == content.PressureCanner {
		least = LimitOf("headspace-low-acid-min")
	}
	if !k.Headspace.Set() || atLeast(k.Headspace.V, least) {
		return nil
	}
	return []Finding{{
		Pos:     k.Headspace.Pos,
		Message: fmt.Sprintf("%s of headspace is under the general %s", k.Headspace.V.Text, inches(least.Low)),
		Advice:  "Look at the letter again.",
		Source:  least.Source,
	}}
}

func letterJar(j JarMatch) []Finding {
	size, ok := jarOunces(j.Entry.Jar.V)
	if !ok || size.Cmp(JarOunces("quart")) <= 0 {
		return nil
	}
	return []Finding{{
		Pos:     j.Entry.Jar.Pos,
		Message: j.Entry.Jar.V.String() + " jars are larger than a quart",
		Advice:  "Half-gallon jars are for very acid juice alone, by its own process.",
		Source:  LimitOf("jar-largest-general").Source,
	}}
}

func letterSterilised(p *content.Processing) []Finding {
	for _, b := range p.Altitude {
		if b.Value.Set() && shorter(b.Value.V, sterilisingMinutes()) {
			return []Finding{{
				Pos:     b.Value.Pos,
				Message: fmt.Sprintf("%s is under %d min, and the jars are not said to be sterilised", b.Value.V.Text, sterilisingMinutes()),
				Advice:  "Sterilise the jars and write jars_sterilised: true.",
				Source:  LimitOf("jar-sterilise-when").Source,
			}}
		}
	}
	return nil
}
