package build

import (
	"fmt"
	"math/big"

	"stillroom/content"
)

// isoTimes gives a recipe's times as ISO 8601 durations; empty where one is
// not known. Consumers read prepTime and cookTime only as a pair, and the total
// holds the waiting too.
// https://developers.google.com/search/docs/appearance/structured-data/recipe
func isoTimes(t content.Times) (prep, cook, total string) {
	hands, handsKnown := inSeconds(t.HandsOn.V)
	cooking, cookingKnown := inSeconds(t.Cooking.V)
	waiting, waitingKnown := inSeconds(t.Waiting.V)
	if hands > 0 && cooking > 0 {
		prep, cook = isoDuration(hands), isoDuration(cooking)
	}
	if handsKnown && cookingKnown && waitingKnown {
		total = isoDuration(hands + cooking + waiting)
	}
	return prep, cook, total
}

// inCalendar reports whether a time has a unit that is not always as long: mo
// or y, at the start of a word or behind a digit.
func inCalendar(text string) bool {
	for i := range len(text) {
		if i > 0 && isWordByte(text[i-1]) && !isDigit(text[i-1]) {
			continue
		}
		if begins(text[i:], "y") || begins(text[i:], "mo") {
			return true
		}
	}
	return false
}

// longestTold is a hundred years.
var longestTold = big.NewRat(100*365*24*60*60, 1)

// inSeconds gives a duration in seconds, of a range the longer end: nobody
// should set aside too little. It is known unless it was written in months or
// years, which have no fixed length; a duration that is not given is 0.
func inSeconds(d content.Duration) (n int64, known bool) {
	if d.IsZero() {
		return 0, true
	}
	if inCalendar(d.Text) {
		return 0, false
	}
	q, ok := d.In(content.Second)
	if !ok || !q.High.IsInt() || q.High.Cmp(longestTold) > 0 {
		return 0, false
	}
	return q.High.Num().Int64(), true
}

// isoDuration writes seconds as P21D or PT1H15M: whole numbers, no weeks,
// which may stand with no other unit, and no months. Nothing is the empty
// string, never PT0S.
func isoDuration(seconds int64) string {
	if seconds <= 0 {
		return ""
	}
	days, rest := seconds/86400, seconds%86400
	iso := "P"
	if days > 0 {
		iso += fmt.Sprintf("%dD", days)
	}
	if rest == 0 {
		return iso
	}
	iso += "T"
	for _, u := range []struct {
		size   int64
		letter string
	}{{3600, "H"}, {60, "M"}, {1, "S"}} {
		if n := rest / u.size; n > 0 {
			iso += fmt.Sprint(n, u.letter)
		}
		rest %= u.size
	}
	return iso
}
