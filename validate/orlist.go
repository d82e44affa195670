package validate

import (
	"fmt"
	"strings"
)

// orList joins words for a sentence: a, b or c.
func orList[T ~string](words []T) string {
	s := make([]string, len(words))
	for i, w := range words {
		s[i] = string(w)
	}
	if len(s) < 2 {
		return strings.Join(s, "")
	}
	return fmt.Sprintf("%s or %s", strings.Join(s[:len(s)-1], ", "), s[len(s)-1])
}
