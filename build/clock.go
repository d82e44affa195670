package build

import (
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
	// sentence finds sentences, each with the stop that ends it.
	sentences = regexp.MustCompile(`[^.!?]+(?:\.\d[^.!?]*)*[.!?]*`)
)

// longestClock is the most that a kitchen clock is set to: over night.
const longestClock = 12 * 60 * 60

// clocks finds the times in a step. Of a range the shorter end counts: that is
// when the cook looks.
func clocks(text string) []mark {
	var marks []mark
	for _, s := range sentences.FindAllStringIndex(text, -1) {
		if !strings.ContainsAny(text[s[0]:s[1]], "0123456789½") || says(text[s[0]:s[1]], high) {
			continue
		}
		for _, at := range kitchenTime.FindAllStringSubmatchIndex(text[s[0]:s[1]], -1) {
			d, err := content.ParseDuration(text[s[0]+at[2]:s[0]+at[3]] + " " + text[s[0]+at[4]:s[0]+at[5]])
			if err != nil {
				continue
			}
			if n, ok := inSeconds(d); ok && n > 0 && n <= longestClock {
				marks = append(marks, mark{s[0] + at[0], s[0] + at[1], `<time datetime="` + isoDuration(n) + `">`, "</time>"})
			}
		}
	}
	return marks
}
