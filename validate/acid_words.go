package validate

import (
	"fmt"
	"math/big"
	"strings"

	"stillroom/content"
)

// acidAdvice says what acid the cited process was tested with.
func (m *Match) acidAdvice() string {
	n := m.need()
	var ways []string
	for _, c := range n.Choices {
		ways = append(ways, c.String())
	}
	switch {
	case len(ways) == 0:
		return "Bring the acid that the publication names, and write acid: in-recipe."
	case n.Origin == AcidInEachJar:
		return fmt.Sprintf("The process has %s.", orList(ways))
	}
	return fmt.Sprintf("The tested recipe has %s.", orList(ways))
}

// String gives a choice as it was published: 2 tbsp bottled lemon juice per
// quart; 1 cup vinegar for 6-8 pints.
func (c AcidChoice) String() string {
	var doses []string
	for _, d := range c.Doses {
		doses = append(doses, d.words())
	}
	all := strings.Join(doses, " and ")
	switch {
	case c.Per == "jar":
		return fmt.Sprintf("%s per %s", all, c.Jar)
	case c.Low == nil:
		return all
	case c.High.Cmp(c.Low) == 0:
		return fmt.Sprintf("%s for %s %s jars", all, c.Low.RatString(), c.Jar)
	}
	return fmt.Sprintf("%s for %s-%s %s jars", all, c.Low.RatString(), c.High.RatString(), c.Jar)
}

func (d AcidDose) words() string {
	if d.Amount == nil {
		return d.Words
	}
	return fmt.Sprintf("%s %s", kitchenAmount(d.Amount, d.Unit), d.Words)
}

// kitchenAmount writes an amount with a kitchen fraction: 1 1/2 cups.
func kitchenAmount(n *big.Rat, u content.Unit) string {
	return content.Quantity{Low: n, High: n, Unit: u}.String()
}
