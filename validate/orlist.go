package validate

import (
	"fmt"
	"strings"
)

// orList joins words for a sentence: a, b or c.
func orList[T ~string](words []T) string { return joined(words, "or") }

// andList joins words for a sentence: a, b and c.
func andList[T ~string](words []T) string { return joined(words, "and") }

func joined[T ~string](words []T, last string) string {
	s := make([]string, len(words))
	for i, w := range words {
		s[i] = string(w)
	}
	if len(s) < 2 {
		return strings.Join(s, "")
	}
	return fmt.Sprintf("%s %s %s", strings.Join(s[:len(s)-1], ", "), last, s[len(s)-1])
}
