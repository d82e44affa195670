package build

import (
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/txtar"

	"stillroom/content"
)

// dayOf reads a recipe with these times, ways of keeping and steps.
func dayOf(t *testing.T, times, keeping, steps string) *content.Recipe {
	t.Helper()
	text := "As of a day, as of 2026-09-01.\n-- content/site.yaml --\nname: A\n-- content/recipes/a.md --\n---\n" +
		"name: A\nsummary: A.\npublished: 2026-01-01\nkind: jam\nproduce: [plums]\nyield: 6 half-pint jars\ningredients: [1 cup sugar]\n" +
		"times: " + times + "\nkeeping:\n" + keeping + "\n---\n" + steps + "\n"
	return editionOf(t, txtar.Parse([]byte(text))).recipes[0]
}

const (
	cold   = "  - {way: refrigerator, keeps: 3 weeks}"
	jarred = `  - way: boiling-water
    processing: [{jar: pint, altitude: {"0-1,000 ft": 10 min, "1,001-6,000 ft": 15 min, "above 6,000 ft": 20 min}}]
    keeps: 1 year`
	soured = "  - {way: fermenting, duration: 3-4 weeks, keeps: 4 months}"
)

func TestDay(t *testing.T) {
	for _, c := range []struct{ name, times, keeping, steps, home, want string }{
		{"processing is part of the cooking", "{hands_on: 1 h, cooking: 50 min, waiting: 12 h}", jarred, "1. Fill.\n2. Leave the jars for 12 to 24 hours.", "1,350 ft",
			"Hands on, 1 h; Cooking, 35 min; Processing, 15 min at 1,350 ft; Cooling, 12 to 24 hours"},
		{"without a kitchen it is the lowest band's", "{hands_on: 1 h, cooking: 50 min}", jarred, "1. Fill.", "",
			"Hands on, 1 h; Cooking, 40 min; Processing, 10 min at 0–1,000 ft; Cooling, 12 to 24 hours"},
		{"at the edge of a band", "{hands_on: 1 h, cooking: 50 min}", jarred, "1. Fill.", "6,000 ft",
			"Hands on, 1 h; Cooking, 35 min; Processing, 15 min at 6,000 ft; Cooling, 12 to 24 hours"},
		{"a foot above it", "{hands_on: 1 h, cooking: 50 min}", jarred, "1. Fill.", "6,001 ft",
			"Hands on, 1 h; Cooking, 30 min; Processing, 20 min at 6,001 ft; Cooling, 12 to 24 hours"},
		{"what stands before it is cooked", "{hands_on: 1 h, cooking: 50 min}", jarred, "1. Salt them and let them stand for 3 to 4 hours.\n2. Boil it for 5 minutes.", "0 ft",
			"Hands on, 1 h; Standing, 3 to 4 hours; Cooking, 40 min; Processing, 10 min at 0 ft; Cooling, 12 to 24 hours"},
		{"what is chilled after it has cooked", "{hands_on: 1 h, cooking: 3 h}", cold, "1. Simmer it for 2 hours.\n2. Chill it overnight.\n3. Boil it.", "",
			"Hands on, 1 h; Cooking, 3 h; Chilling, overnight"},
		{"a number in words, in the next sentence", "{hands_on: 1 h, cooking: 1 h}", cold, "1. Let it drip. Two or three hours does it.\n2. Boil it for 5 minutes.", "",
			"Hands on, 1 h; Dripping, 2 to 3 hours; Cooking, 1 h"},
		{"a pause is no wait, nor is how long it keeps", "{hands_on: 1 h, cooking: 1 h}", cold, "1. Let it stand 29 minutes.\n2. Chill it. It keeps for 3 weeks in the cold.", "",
			"Hands on, 1 h; Cooking, 1 h"},
		{"waiting that no step tells of", "{hands_on: 1 h, waiting: 12 h}", cold, "1. Let it stand for 2 hours.", "",
			"Hands on, 1 h; Standing, 2 hours; Waiting, 10 h"},
		{"the crock stands before what is cooked", "{hands_on: 1 h, cooking: 45 min, waiting: 4 weeks}", soured, "1. Salt it.", "",
			"Hands on, 1 h; Fermenting, 3–4 weeks; Cooking, 45 min"},
		{"one stretch is no line", "{hands_on: 1 h}", cold, "1. Stir.", "", ""},
	} {
		home, _ := content.ParseAltitude(c.home)
		d := dayLine(dayOf(t, c.times, c.keeping, c.steps), home)
		got := ""
		if d != nil {
			got = strings.TrimSuffix(strings.TrimPrefix(strings.ReplaceAll(d.Told, "\u00a0", " "), "In order: "), ".")
		}
		if got != c.want {
			t.Errorf("%s:\n%q, want\n%q", c.name, got, c.want)
		}
	}
}

// Work is drawn to one scale, a long wait always as long; names stand apart,
// also where the processing is shortest.
func TestDayIsToScale(t *testing.T) {
	home, _ := content.ParseAltitude("1,350 ft")
	d := dayLine(dayOf(t, "{hands_on: 1 h, cooking: 45 min}", jarred, "1. Let it stand for 3 hours.\n2. Boil it."), home)
	scale := number(t, d.Canned.Scale)
	for i, minutes := range []float64{60, 180, 30} {
		if got := d.Parts[i].High; got != px(minutes*scale) {
			t.Errorf("%s is %s px high, want %v", d.Parts[i].Name, got, minutes*scale)
		}
	}
	if got := d.Canned.High; got != px(15*scale) {
		t.Errorf("processing is %s px high, want %v", got, 15*scale)
	}
	if shift := d.Canned.Shift; shift != px(5*scale) || d.Canned.Least != "10" {
		t.Errorf("what follows is shifted by %s px from %s min, want %v from 10", shift, d.Canned.Least, 5*scale)
	}
	if cool := d.Later[0]; cool.Tear == "" || cool.High != px(dayTorn) || !d.Torn {
		t.Errorf("a day's wait is not torn short: %+v", cool)
	}
	before := 0.0
	for _, p := range append(append(d.Parts, d.Canned.DayPart), d.Later...) {
		if at := number(t, p.Word); at-before < dayWords && before != 0 {
			t.Errorf("%s stands %v px below the name before", p.Name, at-before)
		} else {
			before = at
		}
	}
	if low := number(t, d.Height); low < before+10*scale {
		t.Errorf("the last name at %v px leaves no room for the longest processing in %v px", before, low)
	}
}
