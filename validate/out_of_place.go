package validate

import (
	"fmt"
	"slices"

	"stillroom/content"
)

// outOfPlace reports a key that means nothing for its way of keeping.
var outOfPlace = &Rule{
	ID:       "out-of-place",
	Severity: Error,
	Summary:  "a value that means nothing for that way of keeping",
	Doc: `A processing time beside "way: refrigerator" is either a slip in the way or a
value that no reader will see. Each way has keys of its own: the canned ways take
process, pack, acid, jars_sterilised and processing; fermenting and drying take
temperature and duration; fermenting takes salt; the freezer takes blanch and
container.`,
	Source:       contract,
	CheckKeeping: checkOutOfPlace,
}

// keepingKeys are the keys of a way of keeping.
var keepingKeys = content.RecipeKeys.Find("keeping").Keys

func checkOutOfPlace(_ *content.Recipe, m *Match) []Finding {
	way := m.Keeping.Way.V
	if way == "" {
		return nil
	}
	var fs []Finding
	for name, pos := range m.Keeping.Keys {
		key := keepingKeys.Find(name)
		if key == nil || key.For == nil || slices.Contains(key.For, way) {
			continue
		}
		fs = append(fs, Finding{
			Pos:     pos,
			Message: fmt.Sprintf("%s means nothing for %s", name, way),
			Advice:  fmt.Sprintf("It is for %s.", orList(key.For)),
		})
	}
	return append(fs, gaugesOutOfPlace(m)...)
}

// gaugesOutOfPlace reports pressures outside a pressure canner, and times by
// altitude in one.
func gaugesOutOfPlace(m *Match) []Finding {
	wrong := []string{"time", "dial", "weighted"}
	if m.Keeping.Way.V == content.PressureCanner {
		wrong = []string{"altitude"}
	}
	var fs []Finding
	for _, j := range m.Jars {
		for _, key := range wrong {
			if pos, ok := j.Entry.Keys[key]; ok {
				fs = append(fs, Finding{
					Pos:     pos,
					Message: fmt.Sprintf("%s means nothing for %s", key, m.Keeping.Way.V),
					Advice:  "Boiling water and steam have times by altitude; a pressure canner has one time, and pressures by altitude.",
				})
			}
		}
	}
	return fs
}
