package content

import (
	"fmt"
	"strings"
	"time"
)

// ParseMonth reads a month by its English name or its first three letters:
// july, Jul.
func ParseMonth(s string) (time.Month, error) {
	name := strings.ToLower(strings.TrimSpace(s))
	for m := time.January; m <= time.December; m++ {
		full := strings.ToLower(m.String())
		if name == full || name == full[:3] || name == "sept" && m == time.September {
			return m, nil
		}
	}
	return 0, fmt.Errorf("%q is not a month: write it as jul or july", s)
}
