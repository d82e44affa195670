package build

import (
	"html/template"
	"strings"
	"testing"

	"stillroom/build/amount"
	"stillroom/content"
)

// withMarks makes the method of a recipe that has the given ingredients, ways and
// steps, and shows what is set apart in it: {amount} and <time>.
func withMarks(t *testing.T, yaml string, steps ...string) []string {
	t.Helper()
	r := recipeOf(t, yaml)
	parts := []Part{{}}
	for _, s := range steps {
		parts[0].Steps = append(parts[0].Steps, Step{HTML: template.HTML(s)})
	}
	markSteps(r, amount.Lines(r), parts)
	var got []string
	for _, s := range parts[0].Steps {
		text := strings.NewReplacer("\u00a0", " ", "</span>", "}").Replace(string(s.HTML))
		for i := strings.Index(text, `<span class="q"`); i >= 0; i = strings.Index(text, `<span class="q"`) {
			end := i + strings.Index(text[i:], ">")
			text = text[:i] + "{" + text[end+1:]
		}
		if s.Process != "" {
			text = "[" + s.Process + "] " + text
		}
		got = append(got, text)
	}
	return got
}

func TestMarkSteps(t *testing.T) {
	const canned = "kind: jam\nproduce: [plums]\nkeeping: [{way: boiling-water, processing: [{jar: pint, altitude: {0-1000 ft: 10 min}}], keeps: 12 months}]"
	for _, c := range []struct{ step, want string }{
		// The recipe has 1 cup sugar.
		{"Stir in the 1 cup of sugar.", "Stir in the {1 cup} of sugar."},
		{"Stir in the 1\ncup of <em>sugar</em> &amp; stir.", "Stir in the {1 cup} of <em>sugar</em> &amp; stir."},
		{"Stir in 1 <em>cup</em> sugar.", "Stir in 1 <em>cup</em> sugar."}, // over a tag
		{"Put 1 cup of sugar into each jar.", "Put 1 cup of sugar into each jar."},
		// Times, of a range the shorter end.
		{"Boil for 5 minutes.", `Boil for <time datetime="PT5M">5 minutes</time>.`},
		{"Simmer 20 to 25 minutes, then 1½ hours.", `Simmer <time datetime="PT20M">20 to 25 minutes</time>, then <time datetime="PT1H30M">1½ hours</time>.`},
		{"Dip them for 30–60 seconds.", `Dip them for <time datetime="PT30S">30–60 seconds</time>.`},
		{"Leave it for 24 hours, or 3 weeks.", "Leave it for 24 hours, or 3 weeks."},
		// What depends on altitude has no clock of its own.
		{"Boil the jars for 10 minutes, and 1 minute more for each 1,000 feet. Wait 5 minutes.",
			`Boil the jars for 10 minutes, and 1 minute more for each 1,000 feet. Wait <time datetime="PT5M">5 minutes</time>.`},
		{"Process for the time your altitude asks: pints take 15 minutes. Wait 5 minutes.",
			"[keeping-boiling-water] Process for the time your altitude asks: pints take 15 minutes. Wait 5 minutes."},
	} {
		if got := withMarks(t, canned, c.step)[0]; got != c.want {
			t.Errorf("%q\n got %q\nwant %q", c.step, got, c.want)
		}
	}
}

// Which of two canners a step speaks of is not guessed, and neither is a time
// of either.
func TestStepOfTwoCanners(t *testing.T) {
	const both = "kind: tomato\nproduce: [tomatoes]\nkeeping:\n  - {way: boiling-water, processing: [{jar: pint, altitude: {0-1000 ft: 35 min}}], keeps: 12 months}\n" +
		"  - {way: pressure, processing: [{jar: pint, time: 15 min, dial: {0-2000 ft: 11 psi}}], keeps: 12 months}"
	got := withMarks(t, both, "Process for as long as your altitude asks: 35 minutes.")[0]
	if want := "Process for as long as your altitude asks: 35 minutes."; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}

func TestKeepingIDs(t *testing.T) {
	r := &content.Recipe{Keeping: []content.Keeping{
		{Way: content.Field[content.Way]{V: content.Freezer}}, {Way: content.Field[content.Way]{V: content.Drying}}, {Way: content.Field[content.Way]{V: content.Freezer}},
	}}
	if got := strings.Join(keepingIDs(r), " "); got != "keeping-freezer keeping-drying keeping-freezer-2" {
		t.Errorf("got %s", got)
	}
}
