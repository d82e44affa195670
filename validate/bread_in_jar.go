package validate

import (
	"strings"

	"stillroom/content"
)

// breadInJar reports bread or cake that is baked and sealed in a jar.
var breadInJar = &Rule{
	ID:       "bread-in-jar",
	Severity: Error,
	Summary:  "bread or cake sealed in a jar for the shelf",
	Doc: `Bread and cake that are baked in a jar and sealed hot look canned and are not: the
crumb is moist and low in acid, and the oven never got it hot enough. Bake them in
a tin and freeze them, or give the dry ingredients in a jar.`,
	Source: Source{
		Title:   "What not to store, Utah State University Extension",
		Address: "https://extension.usu.edu/foodstorage/htm/what-not-to-store",
	},
	CheckKeeping: checkBreadInJar,
}

// baked are the words of a name that tell of something baked.
var baked = []string{"bread", "cake", "cakes", "brownie", "brownies", "muffin", "muffins", "loaf", "pudding cake"}

func checkBreadInJar(r *content.Recipe, m *Match) []Finding {
	if !m.Keeping.Way.V.Canned() {
		return nil
	}
	name := strings.ReplaceAll(strings.ReplaceAll(plain(r.Name.V), "-", " "), "bread and butter", "")
	if len(m.ofKind(ItemLeavening)) == 0 && !saysAny(name, baked) {
		return nil
	}
	if m.Process != nil && len(m.ofKind(ItemStarch, ItemLeavening)) == 0 {
		return nil
	}
	return []Finding{{
		Pos:     r.Name.Pos,
		Message: "bread and cake have no process for the shelf",
		Advice:  "Freeze it.",
		Notes:   []Note{{Pos: m.Keeping.Way.Pos, Message: "canned here"}},
	}}
}
