package build

import (
	"regexp"
	"slices"
	"strings"

	"stillroom/content"
)

var (
	// waitTime finds how long something is left alone.
	waitTime = regexp.MustCompile(`(?i)\b(?:` + countWord + `)(?: ?(?:to|or|[-–]) ?(?:` + countWord + `))? ?(?:minutes?|mins?|hours?|hrs?|days?|weeks?)\b|\bover ?night\b`)
	// waitStems begin the words for what it does meanwhile.
	waitStems = []string{"stand", "rest", "soak", "steep", "drip", "drain", "chill", "refrigerat", "leave", "left", "condition"}
	// heatStems begin the words of a sentence in which something cooks.
	heatStems = []string{"boil", "simmer", "cook", "roast", "bake"}
	// lasting are the words of a sentence that tells how long the food keeps.
	lasting = []string{"keep", "keeps", "within"}
)

// countWord is a number as steps have it.
const countWord = `\d{1,3}(?:½| 1/2)?|½|an?|one|two|three|four|five|six|eight|ten|twelve`

var waitNames = map[string]string{
	"stand": "Standing", "rest": "Resting", "soak": "Soaking", "steep": "Steeping", "drip": "Dripping", "drain": "Draining",
	"chill": "Chilling", "refrigerat": "Chilling", "leave": "Standing", "left": "Standing", "condition": "Conditioning",
}

// shortestWait and longestCook, in minutes, part a wait from a pause at the
// stove, and a dish that has cooked from one that has been scalded.
const (
	shortestWait = 30
	longestScald = 30
)

// waits finds in the steps what has to be waited for, parted by whether it is
// before the cooking or after. What follows the canner is not among it.
func waits(r *content.Recipe) (before, after []stretch) {
	cooked := 0.0
	steps := mainSteps(r)
	heated := lastHeated(steps)
	for i, s := range steps {
		if says(s, canner) {
			continue
		}
		all, heat := waitsOf(s)
		cooked += heat
		if cooked >= longestScald || i >= heated {
			after = append(after, all...)
		} else {
			before = append(before, all...)
		}
	}
	own := ownWait(r)
	if mainWay(r) == content.Fermenting {
		return append(before, own...), after
	}
	return before, append(own, after...)
}

// waitsOf gives the waits of a step, and for how many minutes it cooks. The
// length of a wait may stand in the sentence after the one that tells of it.
func waitsOf(step string) (all []stretch, cooked float64) {
	word := ""
	for _, t := range sentences(step) {
		heats := false
		if w := firstStem(t, waitStems); w != "" {
			word = w
		} else {
			heats = firstStem(t, heatStems) != ""
		}
		if word == "" && !heats {
			continue
		}
		at, minutes := longestWait(t)
		if heats {
			cooked += minutes
			continue
		}
		if minutes < shortestWait || notAWait(t) {
			continue
		}
		all = append(all, stretch{"rest", waitNames[word], typeset(inFigures(at)), minutes})
		word = ""
	}
	return all, cooked
}

// ownWait is the fermenting or drying of the main way of keeping.
func ownWait(r *content.Recipe) []stretch {
	if len(r.Keeping) == 0 || !r.Keeping[0].Duration.Set() {
		return nil
	}
	k := r.Keeping[0]
	return []stretch{taking("rest", nameWay(k.Way.V).name, k.Duration.V)}
}

// mainSteps gives the steps of the main way of keeping: a part whose heading
// names the freezer is for others.
func mainSteps(r *content.Recipe) []string {
	var steps []string
	for _, p := range r.Body.Method {
		if mainWay(r) != content.Freezer && strings.Contains(strings.ToLower(p.Heading), "freez") {
			continue
		}
		for _, s := range p.Steps {
			steps = append(steps, s.Text)
		}
	}
	return steps
}

// lastHeated gives the last step in which something cooks; -1 if there is none.
func lastHeated(steps []string) int {
	for i, s := range slices.Backward(steps) {
		if firstStem(s, heatStems) != "" {
			return i
		}
	}
	return -1
}

// notAWait reports whether a sentence tells of an altitude, of how long the food
// keeps, or of the jars after the canner.
func notAWait(sentence string) bool {
	return says(sentence, high) || says(sentence, lasting) || cooled(sentence) != ""
}

// longestWait gives the longest time in a sentence, as it is written and in
// minutes, at its longest. Over night is twelve hours.
func longestWait(sentence string) (text string, minutes float64) {
	part, _ := aroundTimes(sentence, beginsTime)
	if part == "" {
		return "", 0
	}
	for _, at := range waitTime.FindAllString(part, -1) {
		m := 12 * 60.0
		if d, err := content.ParseDuration(inFigures(at)); err == nil {
			m = minutesOf(d)
		} else if !strings.EqualFold(at[:4], "over") {
			continue
		}
		if m > minutes {
			text, minutes = at, m
		}
	}
	return text, minutes
}

// inFigures writes the numbers of a time in figures.
func inFigures(s string) string {
	words := strings.Fields(strings.ToLower(s))
	for i, w := range words {
		if f, ok := figuresOf[w]; ok {
			words[i] = f
		}
	}
	return strings.Join(words, " ")
}

var figuresOf = map[string]string{
	"a": "1", "an": "1", "one": "1", "two": "2", "three": "3", "four": "4", "five": "5", "six": "6", "eight": "8", "ten": "10", "twelve": "12",
	"or": "to",
}

// cooling is how long jars are left alone after the canner: as the steps say,
// or 12 to 24 hours (USDA Complete Guide to Home Canning, AIB 539 (2015), from
// memory).
func cooling(r *content.Recipe) stretch {
	const usual = "12 to 24 hours"
	for _, s := range mainSteps(r) {
		if at := cooled(s); at != "" {
			return stretch{"rest", "Cooling", typeset(at), 24 * 60}
		}
	}
	return stretch{"rest", "Cooling", typeset(usual), 24 * 60}
}

// cooled gives the time that jars are left to cool, if a text tells of it.
func cooled(text string) string {
	if !strings.Contains(text, "24 hours") { // which spares most the search
		return ""
	}
	return coolingTime.FindString(text)
}

// coolingTime is a range that ends with the day.
var coolingTime = regexp.MustCompile(`\b\d{1,2} (?:to|or|[-–]) 24 hours`)
