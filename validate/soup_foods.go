package validate

import (
	"slices"
	"sync"

	"stillroom/content"
)

// soupFoods reports a soup with something in it that has no canning process,
// or with seafood under the process of other soups.
var soupFoods = &Rule{
	ID:       "soup-foods",
	Severity: Error,
	Summary:  "a soup with a food that has no canning process of its own",
	Doc: `The process of soups is for mixtures of foods that can each be canned by themselves:
vegetables with a pressure process, soaked beans, meat, poultry. Cabbage, broccoli,
cauliflower and squash have none and stay out. With fish or shellfish the soup takes
the longer time of soups-with-seafood. A mixture never takes the time of its quickest
part.`,
	Source: Source{
		Title:   "Ask Extension, answer 152099: canning mixtures and soups",
		Address: "https://ask2.extension.org/kb/faq.php?id=152099",
	},
	CheckKeeping: checkSoupFoods,
}

func checkSoupFoods(_ *content.Recipe, m *Match) []Finding {
	if !m.isSoup() {
		return nil
	}
	var fs []Finding
	for _, in := range m.inJar() {
		food := in.Class.Produce
		f := Finding{Pos: in.Pos, Notes: []Note{{Pos: m.Keeping.Process.Pos, Message: "cited here"}}}
		switch {
		case in.role() != RoleLowAcid:
			continue
		case (food.Group == Fishes || food.Group == Shellfish) && m.Process.ID == "soups":
			f.Message = in.Item + ": a soup with seafood has a longer process"
			f.Advice = "Cite soups-with-seafood."
			f.Source = LimitOf("soup-seafood-time").Source
		case !pressureFoods()[food.swap()]:
			f.Message = in.Item + ": has no pressure process of its own, and so no place in a canned soup"
			f.Advice = "Add it when the jar is opened."
		default:
			continue
		}
		fs = append(fs, f)
	}
	return fs
}

// isSoup reports whether the cited process is one of the two for mixtures.
func (m *Match) isSoup() bool {
	return m.Process != nil && slices.Contains(m.Process.Kinds, content.Soup) && m.Process.names("any")
}

// pressureFoods are the foods that a pressure process for low-acid food
// names.
var pressureFoods = sync.OnceValue(func() map[string]bool {
	named := map[string]bool{}
	for _, p := range Processes() {
		if p.Method != content.PressureCanner || p.Acidity != LowAcid {
			continue
		}
		for _, name := range slices.Concat(p.Produce, p.Others) {
			food, _ := LookUpProduce(name)
			named[food.swap()] = true
		}
	}
	return named
})
