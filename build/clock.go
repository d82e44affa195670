package build

import (
	"iter"
	"regexp"
	"strings"

	"stillroom/content"
)

var (
	// kitchenTime finds a time that can be set on a kitchen clock, or a range of
	// times.
	kitchenTime = regexp.MustCompile(`(?i)\b(\d{1,3}(?:½| 1/2)?|½)(?: ?(?:to|or|[-–]) ?\d{1,3}½?)? ?(seconds?|minutes?|mins?|hours?|hrs?|h)\b`)
	// canner is the word of the step that sends the reader to the table of the canner.
	canner = []string{"altitude"}
	// high are the words of a sentence whose times depend on altitude.
	high = []string{"altitude", "feet", "foot", "ft", "meter", "meters", "metre", "metres"}
)

// longestClock is the most that a kitchen clock is set to: over night.
const longestClock = 12 * 60 * 60

// clocks finds the times in a step. Of a range the shorter end counts: that is
// when the cook looks.
func clocks(text string) []mark {
	var marks []mark
	for begin, said := range sentences(text) {
		s, from := aroundTimes(said, beginsClock)
		if s == "" || says(said, high) {
			continue
		}
		for _, at := range kitchenTime.FindAllStringSubmatchIndex(s, -1) {
			d, err := content.ParseDuration(s[at[2]:at[3]] + " " + s[at[4]:at[5]])
			if err != nil {
				continue
			}
			if n, ok := inSeconds(d); ok && n > 0 && n <= longestClock {
				marks = append(marks, mark{begin + from + at[0], begin + from + at[1], `<time datetime="` + isoDuration(n) + `">`, "</time>"})
			}
		}
	}
	return marks
}

// beginsClock reports whether a number ends before a place at which, or behind
// a space at it, a unit of time may begin.
func beginsClock(s string, at int) bool {
	if at == 0 || !isDigit(s[at-1]) && s[at-1] != "½"[1] {
		return false
	}
	rest := strings.TrimPrefix(s[at:], " ")
	return rest != "" && strings.IndexByte("smhSMH", rest[0]) >= 0
}

// sentences gives each sentence with the stops that end it, and where in the
// text it begins. A point before a digit ends none.
func sentences(text string) iter.Seq2[int, string] {
	return func(yield func(int, string) bool) {
		for i := 0; i < len(text); {
			if isStop(text[i]) {
				i++
				continue
			}
			begin := i
			for i < len(text) && (!isStop(text[i]) || text[i] == '.' && i+1 < len(text) && isDigit(text[i+1])) {
				i++
			}
			for i < len(text) && isStop(text[i]) {
				i++
			}
			if !yield(begin, text[begin:i]) {
				return
			}
		}
	}
}

func isStop(c byte) bool { return c == '.' || c == '!' || c == '?' }

func isDigit(c byte) bool { return '0' <= c && c <= '9' }
