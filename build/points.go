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

// points gives, for what sets without pectin from a box, where water boils and
// jelly sets at every thousand feet, in degrees Fahrenheit: 0 211.95 219.95;1000
// 210.13 218.13. Between them both fall in a line, to a thousandth of a degree.
// It is empty for all else.
func points(r *content.Recipe) string {
	if !slices.Contains(setting, r.Kind.V) || hasPectin(r) {
		return ""
	}
	var all []string
	for feet := 0; feet <= highestKitchen; feet += 1000 {
		all = append(all, fmt.Sprintf("%d %.2f %.2f", feet, validate.BoilingPoint(float64(feet)), validate.JellyPoint(float64(feet))))
	}
	return strings.Join(all, ";")
}

// highestKitchen is about as high, in feet, as anybody lives.
const highestKitchen = 16000

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
