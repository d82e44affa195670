package build

import (
	"fmt"
	"slices"
	"strings"

	"stillroom/content"
	"stillroom/validate"
)

// setting are the kinds that are cooked until they set.
var setting = []content.Kind{"jam", "jelly", "marmalade", "conserve"}

// points gives, for what sets without pectin from a box, the altitudes in feet
// at which the boiling point of water and the jelly point are published, and
// both in degrees Fahrenheit: 0 212 220;1000 210.2 218. It is empty for all
// else.
func points(r *content.Recipe) string {
	if !slices.Contains(setting, r.Kind.V) || hasPectin(r) {
		return ""
	}
	var all []string
	for _, p := range validate.GelPoints() {
		if p.Altitude <= highestGel {
			all = append(all, fmt.Sprintf("%d %s %s", p.Altitude, decimal(p.Boiling.FloatString(1)), decimal(p.Gel.FloatString(1))))
		}
	}
	return strings.Join(all, ";")
}

// highestGel is the highest altitude, in feet, for which a jelly point is
// published; above it the table holds figures that were worked out.
const highestGel = 8000

// decimal cuts the zeros from the end of a number with a point.
func decimal(s string) string { return strings.TrimSuffix(strings.TrimRight(s, "0"), ".") }

func hasPectin(r *content.Recipe) bool {
	for _, g := range r.Ingredients {
		for _, i := range g.Items {
			if validate.ClassifyItem(i.Item, i.Note).Kind == validate.ItemPectin {
				return true
			}
		}
	}
	return false
}
