package validate

import (
	"cmp"
	"fmt"
	"math/big"
	"slices"
	"testing"

	"stillroom/content"
)

func TestProcessesAreInOrder(t *testing.T) {
	key := func(a, b *Process) int { return cmp.Or(cmp.Compare(a.ID, b.ID), cmp.Compare(a.Method, b.Method)) }
	all := Processes()
	for i, p := range all[1:] {
		if key(all[i], p) >= 0 {
			t.Errorf("%s %s comes after %s %s", p.ID, p.Method, all[i].ID, all[i].Method)
		}
	}
}

// The compiled tables had 1,131 rows of fruit, jam and tomatoes, and 739 of
// pickles, vegetables and meat.
func TestEveryFigureIsThere(t *testing.T) {
	figures := 0
	for _, p := range Processes() {
		_, all := p.FromMemory()
		figures += all
	}
	if want := 1131 + 739; figures != want {
		t.Errorf("%d figures, want %d", figures, want)
	}
}

func TestProcessesAreComplete(t *testing.T) {
	for _, p := range Processes() {
		if p.Food == "" || p.Publication == "" || p.Table == "" || len(p.Jars) == 0 {
			t.Errorf("%s %s lacks something: %+v", p.ID, p.Method, p)
		}
		last := new(big.Rat)
		for _, j := range p.Jars {
			if p.Method.Canned() && (JarOunces(j.Jar) == nil || j.Headspace.Sign() <= 0) {
				t.Errorf("%s: jar %q with headspace %v", p.ID, j.Jar, j.Headspace)
			}
			if size := JarOunces(j.Jar); size != nil {
				if size.Cmp(last) <= 0 {
					t.Errorf("%s: %s is listed twice, or after a larger jar", p.ID, j.Jar)
				}
				last = size
			}
			checkSchedules(t, p, j)
		}
	}
}

func checkSchedules(t *testing.T, p *Process, j JarProcess) {
	gauges := map[string]bool{}
	names := map[string]bool{}
	for _, s := range j.Schedules {
		where := fmt.Sprintf("%s %s %s %s", p.ID, p.Method, j.Jar, s.Name)
		gauges[s.Gauge] = true
		if names[s.Name] {
			t.Errorf("%s: listed twice", where)
		}
		names[s.Name] = true
		checkBands(t, where, p, s)
	}
	switch {
	case p.Method == content.PressureCanner && !(gauges[DialGauge] && gauges[WeightedGauge] && len(gauges) == 2):
		t.Errorf("%s %s: gauges %v, want dial and weighted", p.ID, j.Jar, gauges)
	case p.Method != content.PressureCanner && len(j.Schedules) != 1:
		t.Errorf("%s %s: %d schedules without pressure", p.ID, j.Jar, len(j.Schedules))
	}
}

func checkBands(t *testing.T, where string, p *Process, s Schedule) {
	for i, b := range s.Bands {
		last := i == len(s.Bands)-1
		switch {
		case i == 0 && b.From != 0:
			t.Errorf("%s: starts at %d ft", where, b.From)
		case i > 0 && b.From != s.Bands[i-1].To+1:
			t.Errorf("%s: a gap or overlap below %d ft", where, b.From)
		case !last && b.To <= b.From:
			t.Errorf("%s: the band from %d ft ends at %d", where, b.From, b.To)
		}
		if i > 0 && (b.Minutes < s.Bands[i-1].Minutes || b.PSI < s.Bands[i-1].PSI) {
			t.Errorf("%s: falls at %d ft", where, b.From)
		}
		if (b.PSI > 0) != (p.Method == content.PressureCanner) || (b.Minutes > 0) != p.Method.Canned() {
			t.Errorf("%s: %d min at %d psi", where, b.Minutes, b.PSI)
		}
		if b.Evidence == "" || b.Evidence == practice {
			t.Errorf("%s: evidence %q", where, b.Evidence)
		}
	}
	if top := s.Bands[len(s.Bands)-1].To; top != topOf(s) {
		t.Errorf("%s: ends at %d ft, want %d", where, top, topOf(s))
	}
}

// topOf gives where a schedule of the guide ends: a dial gauge's at 8,000 ft;
// that of the heaviest weight at 1,000 ft, above which there is no heavier.
func topOf(s Schedule) int {
	switch {
	case s.Gauge == DialGauge:
		return 8000
	case s.Gauge == WeightedGauge && s.Bands[0].PSI == 15:
		return 1000
	}
	return 0
}

// A larger jar never takes less time, whatever the schedule.
func TestLargerJarsTakeNoLess(t *testing.T) {
	for _, p := range Processes() {
		for i, j := range p.Jars[1:] {
			for _, s := range j.Schedules {
				k := slices.IndexFunc(p.Jars[i].Schedules, func(o Schedule) bool { return o.Name == s.Name })
				if k >= 0 && s.Bands[0].Minutes < p.Jars[i].Schedules[k].Bands[0].Minutes {
					t.Errorf("%s %s %s: a %s takes less than a %s", p.ID, p.Method, s.Name, j.Jar, p.Jars[i].Jar)
				}
			}
		}
	}
}

// These figures were written down by hand, apart from the tables, from the
// USDA Complete Guide to Home Canning, AIB 539 (2015), by its guide; those of
// guide 0 from the National Center for Home Food Preservation or So Easy to
// Preserve. They are from memory.
func TestPublishedFigures(t *testing.T) {
	tests := []struct {
		guide    int
		id       string
		way      content.Way
		jar      string
		schedule string
		at       int // feet
		minutes  int
		psi      int
	}{
		{2, "apples-sliced-hot", content.BoilingWater, "quart", "", 0, 20, 0},
		{2, "applesauce-hot", content.BoilingWater, "pint", "", 0, 15, 0},
		{2, "applesauce-hot", content.BoilingWater, "quart", "", 6500, 35, 0},
		{2, "apple-juice-hot", content.BoilingWater, "half-gallon", "", 500, 10, 0},
		{2, "apricots-halved-raw", content.BoilingWater, "quart", "", 0, 30, 0},
		{2, "berries-whole-raw", content.BoilingWater, "quart", "", 2000, 25, 0},
		{2, "cherries-whole-raw", content.BoilingWater, "pint", "", 0, 25, 0},
		{2, "figs-hot", content.BoilingWater, "pint", "", 0, 45, 0},
		{2, "grapes-whole-hot", content.BoilingWater, "pint", "", 0, 10, 0},
		{2, "peaches-halved-hot", content.BoilingWater, "pint", "", 0, 20, 0},
		{2, "peaches-halved-raw", content.BoilingWater, "quart", "", 7000, 45, 0},
		{2, "peaches-halved-hot", content.PressureCanner, "pint", "dial", 0, 10, 6},
		{2, "peaches-halved-hot", content.PressureCanner, "pint", "weighted", 1500, 10, 10},
		{2, "plums-raw", content.BoilingWater, "quart", "", 0, 25, 0},
		{2, "rhubarb-stewed-hot", content.BoilingWater, "quart", "", 0, 15, 0},
		{2, "apple-pie-filling-hot", content.BoilingWater, "quart", "", 0, 25, 0},
		{3, "tomatoes-crushed-hot", content.BoilingWater, "pint", "", 0, 35, 0},
		{3, "tomatoes-crushed-hot", content.BoilingWater, "quart", "", 0, 45, 0},
		{3, "tomatoes-whole-no-liquid-raw", content.BoilingWater, "quart", "", 0, 85, 0},
		{3, "tomatoes-whole-no-liquid-raw", content.BoilingWater, "quart", "", 7000, 100, 0},
		{3, "tomato-juice-hot", content.BoilingWater, "pint", "", 0, 35, 0},
		{3, "tomatoes-crushed-hot", content.PressureCanner, "quart", "dial-11", 0, 15, 11},
		{3, "spaghetti-sauce-meat-hot", content.PressureCanner, "pint", "dial", 0, 60, 11},
		{3, "spaghetti-sauce-no-meat-hot", content.PressureCanner, "quart", "weighted", 0, 25, 10},
		{3, "tomato-ketchup-hot", content.BoilingWater, "pint", "", 0, 15, 0},
		{3, "chile-salsa-hot", content.BoilingWater, "pint", "", 0, 15, 0},
		{4, "green-beans-raw", content.PressureCanner, "pint", "dial", 0, 20, 11},
		{4, "green-beans-raw", content.PressureCanner, "quart", "dial", 7000, 25, 14},
		{4, "green-beans-hot", content.PressureCanner, "quart", "weighted", 1001, 25, 15},
		{4, "asparagus-raw", content.PressureCanner, "pint", "weighted", 0, 30, 10},
		{4, "beets", content.PressureCanner, "quart", "dial", 0, 35, 11},
		{4, "carrots-raw", content.PressureCanner, "pint", "dial", 3000, 25, 12},
		{4, "corn-whole-kernel-hot", content.PressureCanner, "quart", "dial", 0, 85, 11},
		{4, "corn-cream-style", content.PressureCanner, "pint", "dial", 0, 85, 11},
		{4, "peas-green-raw", content.PressureCanner, "quart", "dial", 0, 40, 11},
		{4, "potatoes-white", content.PressureCanner, "quart", "dial", 0, 40, 11},
		{4, "pumpkin-winter-squash-cubed", content.PressureCanner, "quart", "weighted", 0, 90, 10},
		{4, "spinach-greens", content.PressureCanner, "pint", "dial", 0, 70, 11},
		{4, "sweet-potatoes", content.PressureCanner, "pint", "dial", 0, 65, 11},
		{4, "mixed-vegetables", content.PressureCanner, "pint", "dial", 0, 75, 11},
		{4, "mushrooms", content.PressureCanner, "half-pint", "dial", 0, 45, 11},
		{4, "soups", content.PressureCanner, "pint", "dial", 0, 60, 11},
		{5, "chicken-rabbit-boneless-raw", content.PressureCanner, "quart", "dial", 0, 90, 11},
		{5, "chicken-rabbit-bone-in-hot", content.PressureCanner, "pint", "dial", 0, 65, 11},
		{5, "meat-stock", content.PressureCanner, "quart", "dial", 0, 25, 11},
		{5, "fish-pint-raw", content.PressureCanner, "pint", "dial", 0, 100, 11},
		{5, "fish-quart-raw", content.PressureCanner, "quart", "weighted", 0, 160, 10},
		{5, "smoked-fish", content.PressureCanner, "pint", "dial", 0, 110, 11},
		{6, "bread-and-butter-pickles", content.BoilingWater, "quart", "", 0, 10, 0},
		{6, "quick-fresh-pack-dill-pickles-raw", content.BoilingWater, "quart", "", 0, 15, 0},
		{6, "pickled-beets", content.BoilingWater, "pint", "", 5000, 40, 0},
		{6, "dilled-beans-raw", content.BoilingWater, "pint", "", 3000, 10, 0},
		{6, "sauerkraut-raw", content.BoilingWater, "pint", "", 0, 20, 0},
		{6, "marinated-peppers-raw", content.BoilingWater, "half-pint", "", 0, 15, 0},
		{7, "jelly-no-added-pectin", content.BoilingWater, "half-pint", "", 0, 5, 0},
		{7, "jams-jellies-added-pectin", content.BoilingWater, "pint", "", 6001, 15, 0},
		{7, "peach-pineapple-spread", content.BoilingWater, "half-pint", "", 0, 15, 0},
		{0, "berry-jam-no-added-pectin", content.BoilingWater, "half-pint", "", 1001, 10, 0},
		{0, "lemon-curd", content.BoilingWater, "half-pint", "", 0, 15, 0},
		{0, "watermelon-rind-pickles", content.BoilingWater, "pint", "", 0, 10, 0},
	}
	for _, tt := range tests {
		b, ok := figure(tt.id, tt.way, tt.jar, tt.schedule, tt.at)
		if !ok || b.Minutes != tt.minutes || b.PSI != tt.psi {
			t.Errorf("guide %d, %s %s %s %s at %d ft = %d min %d psi, want %d min %d psi",
				tt.guide, tt.id, tt.way, tt.jar, tt.schedule, tt.at, b.Minutes, b.PSI, tt.minutes, tt.psi)
		}
	}
}

func figure(id string, way content.Way, jar, schedule string, at int) (TestedBand, bool) {
	p, _ := FindProcess(id, way, "")
	if p == nil {
		return TestedBand{}, false
	}
	for _, j := range p.Jars {
		for _, s := range j.Schedules {
			for _, b := range s.Bands {
				if j.Jar == jar && s.Name == schedule && b.From <= at && (b.To == 0 || at <= b.To) {
					return b, true
				}
			}
		}
	}
	return TestedBand{}, false
}

func TestProcessJar(t *testing.T) {
	tests := []struct {
		id, jar string
		want    string // empty for none
		exact   bool
	}{
		{"green-beans-raw", "pint", "pint", true},
		{"green-beans-raw", "pints", "pint", true},
		{"green-beans-raw", "half-pint", "pint", false},
		{"green-beans-raw", "12-ounce", "pint", false},
		{"green-beans-raw", "pint-and-a-half", "quart", false},
		{"green-beans-raw", "quart", "quart", true},
		{"green-beans-raw", "half-gallon", "", false},
		// A half-pint holds 236.588 ml, a pint 473.176, a quart 946.353.
		{"apple-juice-hot", "236 ml", "pint", false},
		{"berry-jam-no-added-pectin", "236 ml", "half-pint", false},
		{"berry-jam-no-added-pectin", "237 ml", "pint", false},
		{"berry-jam-no-added-pectin", "250 ml", "pint", false},
		{"green-beans-raw", "473 ml", "pint", false},
		{"green-beans-raw", "500 ml", "quart", false},
		{"green-beans-raw", "946 ml", "quart", false},
		{"green-beans-raw", "1 l", "", false},
		{"apple-juice-hot", "1 l", "half-gallon", false},
		{"apple-juice-hot", "half-gallon", "half-gallon", true},
		{"fish-pint-raw", "half-pint", "pint", false}, // limit fish-half-pint-as-pint
		{"corn-cream-style", "quart", "", false},      // limit jar-cream-corn-pint
		{"lemon-curd", "quarter-pint", "half-pint", false},
		{"lemon-curd", "pint", "", false},
	}
	for _, tt := range tests {
		p := anyProcess(t, tt.id)
		size, err := content.ParseJar(tt.jar)
		if err != nil {
			t.Errorf("ParseJar(%q): %v", tt.jar, err)
			continue
		}
		j, exact := p.Jar(size)
		got := ""
		if j != nil {
			got = j.Jar
		}
		if got != tt.want || exact != tt.exact {
			t.Errorf("%s, jar of %s = %q, %v, want %q, %v", tt.id, tt.jar, got, exact, tt.want, tt.exact)
		}
	}
	if j, _ := anyProcess(t, "pickled-eggs").Jar(content.Jar{Name: "pint", Text: "pint"}); j != nil {
		t.Errorf("pickled eggs in a pint = %v, want none", j)
	}
	if j, _ := anyProcess(t, "lemon-curd").Jar(content.Jar{}); j != nil {
		t.Errorf("no jar = %v, want none", j)
	}
}

func anyProcess(t *testing.T, id string) *Process {
	t.Helper()
	for _, p := range Processes() {
		if p.ID == id {
			return p
		}
	}
	t.Fatalf("no process %s", id)
	return nil
}

func TestProcessSource(t *testing.T) {
	seen, _ := FindProcess("apple-butter-hot", content.BoilingWater, content.Hot)
	if s := seen.Source(); s.Address == "" || s.Read != Edition {
		t.Errorf("source of %s = %+v, want the address of a copy", seen.ID, s)
	}
	memorised, _ := FindProcess("tuna-hot", content.PressureCanner, content.Hot)
	if s := memorised.Source(); s.Address != "" || s.Read != "" {
		t.Errorf("source of %s = %+v, want none that was read", memorised.ID, s)
	}
	if unseen, all := memorised.FromMemory(); unseen != all || all != 24/2 {
		t.Errorf("%s: %d of %d figures from memory, want 12 of 12", memorised.ID, unseen, all)
	}
}

func BenchmarkLoadProcesses(b *testing.B) {
	for b.Loop() {
		loadProcesses()
	}
}
