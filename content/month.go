package content

import (
	"fmt"
	"strings"
	"time"
)

// ParseMonth reads a month by its English name or its first three letters, in
// any case: july, Jul.
func ParseMonth(s string) (time.Month, error) {
	name := strings.ToLower(strings.TrimSuffix(trimSpace(s), "."))
	names := make([]string, 0, 12)
	for m := time.January; m <= time.December; m++ {
		full := strings.ToLower(m.String())
		if name == full || name == full[:3] || m == time.September && name == "sept" {
			return m, nil
		}
		names = append(names, full)
	}
	if near := nearest(name, names); near != "" {
		return 0, &misreading{fmt.Sprintf("%q is not a month", clip(s)), "did you mean " + near + "?"}
	}
	return 0, &misreading{fmt.Sprintf("%q is not a month", clip(s)), "write it as in jul or july"}
}
