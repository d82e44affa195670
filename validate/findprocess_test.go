package validate

import (
	"fmt"
	"testing"

	"stillroom/content"
)

func TestFindProcess(t *testing.T) {
	tests := []struct {
		id   string
		way  content.Way
		pack content.Pack
		want content.Way // of the process; empty for none
		why  string
	}{
		{"green-beans-raw", content.PressureCanner, content.Raw, content.PressureCanner, ""},
		{"green-beans-raw", content.PressureCanner, "", content.PressureCanner, ""},
		{"green-beans-raw", content.PressureCanner, content.Hot, "", "packs [raw] instead [green-beans-hot]"},
		{"green-beans-raw", content.BoilingWater, content.Raw, "", "ways [pressure]"},
		{"green-beans-raw", content.AtmosphericSteam, content.Raw, "", "ways [pressure]"},
		{"green-bean-raw", content.PressureCanner, content.Raw, "", "unknown, near [green-beans-raw green-beans-hot]"},
		{"tomato-sauce", content.BoilingWater, content.Hot, "",
			"unknown, near [tomato-taco-sauce-hot mexican-tomato-sauce-hot tomato-sauce-standard-hot]"},
		{"my-own-jam-of-1987", content.BoilingWater, content.Hot, "", "unknown, near []"},
		{"", content.BoilingWater, content.Hot, "", "unknown, near []"},
		{"berry-jam-no-added-pectin", content.AtmosphericSteam, content.Hot, content.BoilingWater, ""},
		{"tomatoes-crushed-hot", content.AtmosphericSteam, content.Hot, content.BoilingWater, ""},
		{"tomatoes-crushed-hot", content.PressureCanner, content.Hot, content.PressureCanner, ""},
		{"spaghetti-sauce-meat-hot", content.AtmosphericSteam, content.Hot, "", "ways [pressure]"},
		{"grapefruit-orange-sections-hot", content.BoilingWater, content.Hot, "", "ways [pressure]"},
		{"grapefruit-orange-sections-hot", content.BoilingWater, "", "", "ways [pressure] instead [grapefruit-orange-sections-raw]"},
		{"pickled-eggs", content.BoilingWater, content.Hot, "", "ways [refrigerator]"},
	}
	for _, tt := range tests {
		p, why := FindProcess(tt.id, tt.way, tt.pack)
		got := content.Way("")
		if p != nil {
			got = p.Method
		}
		if got != tt.want || describe(why) != tt.why {
			t.Errorf("FindProcess(%q, %s, %s) = %q, %q, want %q, %q", tt.id, tt.way, tt.pack, got, describe(why), tt.want, tt.why)
		}
	}
}

func describe(m Missing) string {
	var s string
	switch {
	case m.Unknown:
		s = fmt.Sprintf("unknown, near %v", m.Nearest)
	case len(m.Ways) > 0:
		s = fmt.Sprintf("ways %v", m.Ways)
	case len(m.Packs) > 0:
		s = fmt.Sprintf("packs %v", m.Packs)
	}
	if len(m.Instead) > 0 {
		s += fmt.Sprintf(" instead %v", m.Instead)
	}
	return s
}

func ExampleFindProcess() {
	p, _ := FindProcess("green-beans-raw", content.PressureCanner, content.Raw)
	for _, j := range p.Jars {
		fmt.Println(j.Jar, j.Headspace.RatString(), "in,", j.Schedules[0].Bands[0].Minutes, "min")
	}
	_, why := FindProcess("green-bean-raw", content.PressureCanner, content.Raw)
	fmt.Println(why.Nearest)
	// Output:
	// pint 1 in, 20 min
	// quart 1 in, 25 min
	// [green-beans-raw green-beans-hot]
}

func BenchmarkFindProcess(b *testing.B) {
	for b.Loop() {
		FindProcess("tomatoes-crushed-hot", content.PressureCanner, content.Hot)
	}
}
