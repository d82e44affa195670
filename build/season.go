package build

import (
	"slices"
	"time"

	"stillroom/content"
)

// harvestMonths says when produce that is not given a season of its own is
// ripe in gardens of the northern temperate zone. Common practice, no source:
// a recipe's own season always wins, and the months say when to look for it,
// never whether it may be kept.
var harvestMonths = map[string][2]time.Month{
	"apples": {time.August, time.November}, "apricots": {time.June, time.August}, "artichokes": {time.May, time.July},
	"asparagus": {time.April, time.June}, "basil": {time.June, time.September}, "beets": {time.June, time.October},
	"blackberries": {time.July, time.September}, "blackcurrants": {time.July, time.August}, "blueberries": {time.June, time.September},
	"broccoli": {time.June, time.October}, "cabbage": {time.July, time.November}, "carrots": {time.June, time.November},
	"cauliflower": {time.June, time.November}, "cherries": {time.June, time.July}, "chilies": {time.July, time.October},
	"corn": {time.July, time.September}, "courgettes": {time.June, time.September}, "crab apples": {time.September, time.October},
	"cranberries": {time.September, time.December}, "cucumbers": {time.June, time.September}, "damsons": {time.August, time.October},
	"elderberries": {time.August, time.September}, "elderflowers": {time.May, time.June}, "figs": {time.July, time.October},
	"garlic": {time.July, time.August}, "gooseberries": {time.June, time.July}, "grapefruit": {time.December, time.April},
	"grapes": {time.August, time.October}, "green beans": {time.June, time.September}, "green tomatoes": {time.September, time.October},
	"horseradish": {time.October, time.March}, "jalapeños": {time.July, time.October}, "jalapenos": {time.July, time.October},
	"jalapeno peppers": {time.July, time.October}, "kumquats": {time.December, time.March}, "lemons": {time.December, time.April},
	"limes": {time.May, time.October}, "mint": {time.May, time.September}, "mushrooms": {time.August, time.November},
	"nectarines": {time.July, time.September}, "okra": {time.July, time.September}, "onions": {time.July, time.October},
	"oranges": {time.December, time.April}, "peaches": {time.July, time.September}, "pears": {time.August, time.November},
	"peas": {time.May, time.July}, "peppers": {time.July, time.October}, "plums": {time.July, time.October},
	"pumpkins": {time.September, time.November}, "quinces": {time.September, time.November}, "radishes": {time.April, time.October},
	"raspberries": {time.June, time.September}, "red cabbage": {time.August, time.December}, "red currants": {time.July, time.August},
	"rhubarb": {time.March, time.June}, "seville oranges": {time.December, time.February}, "sour cherries": {time.June, time.July},
	"spinach": {time.April, time.June}, "strawberries": {time.May, time.July}, "sweet potatoes": {time.September, time.November},
	"tomatillos": {time.July, time.October}, "tomatoes": {time.July, time.October}, "watermelon": {time.July, time.September},
	"winter squash": {time.September, time.November}, "zucchini": {time.June, time.September},
}

// Season gives the months in which a recipe is made, in order of the year: its
// own, or else those of its main produce. What can be made all year has none.
func Season(r *content.Recipe) []time.Month {
	var months []time.Month
	for _, m := range r.Season {
		months = append(months, m.V)
	}
	if len(months) == 0 && len(r.Produce) > 0 {
		months = ripe(r.Produce[0].V)
	}
	slices.Sort(months)
	return slices.Compact(months)
}

// ripe gives the months from the first to the last, which may lie in the next
// year.
func ripe(produce string) []time.Month {
	span, ok := lookUp(harvestMonths, produce)
	if !ok {
		return nil
	}
	months := []time.Month{span[0]}
	for m := span[0]; m != span[1]; {
		m = m%12 + 1
		months = append(months, m)
	}
	return months
}
