package content

import (
	"strings"
	"testing"
)

// A megabyte of anything is read or refused in a blink; a reader that goes
// over its text again and again would take minutes here.
func TestHostileInput(t *testing.T) {
	for _, piece := range []string{
		"9", "1 ", "(", "()", "1 cup + ", "½", " ", "\u00a0", "a", "1/", "-", "to ", "1 h ", "1,000", "1.", "jar ", " per ",
		"above ", "0-", "and a half ", "dozen ", "half a ", "of 1 ", "x", ",", "a few ", "\xff",
	} {
		for _, text := range []string{strings.Repeat(piece, 1<<20/len(piece)), "2 cups " + strings.Repeat(piece, 1<<20/len(piece))} {
			checkQuantity(t, text)
			checkIngredient(t, text)
			checkIngredient(t, text[:longestLine])
			checkBand(t, text)
			ParseDuration(text)
			ParseJar(text)
			ParseYield(text)
			ParseAcid(text)
			ParseDate(text)
			ParseMonth(text)
		}
	}
}
