package validate

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"time"

	"stillroom/content"
)

func TestRevisionsAreComplete(t *testing.T) {
	ids := map[string]bool{}
	for _, v := range Revisions() {
		if ids[v.ID] {
			t.Errorf("%s stands twice", v.ID)
		}
		ids[v.ID] = true
		if v.Says == "" || v.Look == "" || v.Source.Title == "" {
			t.Errorf("%s lacks something: %+v", v.ID, v)
		}
		if strings.HasSuffix(v.Says, ".") || !strings.HasSuffix(v.Look, ".") {
			t.Errorf("%s: %q is to be a clause, and %q a sentence", v.ID, v.Says, v.Look)
		}
		if v.Date != "" && (!isDate(v.Date) || v.Date > v.Entered) {
			t.Errorf("%s: dated %q", v.ID, v.Date)
		}
		if !isDay(v.Entered) || v.Entered > Edition {
			t.Errorf("%s: entered %q, and the edition is %s", v.ID, v.Entered, Edition)
		}
		if v.Notice == nil && len(v.Ways) == 0 {
			t.Errorf("%s speaks of no way of keeping", v.ID)
		}
		for _, id := range v.Processes {
			if !slices.ContainsFunc(Processes(), func(p *Process) bool { return p.ID == id }) {
				t.Errorf("%s: no process %s", v.ID, id)
			}
		}
	}
}

// isDay reports whether a text is a day such as 2026-11-25.
func isDay(s string) bool {
	_, err := time.Parse(time.DateOnly, s)
	return err == nil
}

// isDate reports whether a text is a day, a month or a year.
func isDate(s string) bool {
	_, month := time.Parse("2006-01", s)
	_, year := time.Parse("2006", s)
	return isDay(s) || month == nil || year == nil
}

// A notice that is added later is told to those whose recipes it concerns.
func TestEveryNoticeIsARevision(t *testing.T) {
	told := map[string]string{}
	for _, r := range readTable("changes.tsv") {
		if id := r.text("notice"); id != "" {
			told[id] = r.text("date")
		}
	}
	for _, n := range Notices() {
		if date, ok := told[n.ID]; !ok || date != n.Date {
			t.Errorf("the notice %s of %q is no row of changes.tsv, or of %q", n.ID, n.Date, date)
		}
	}
}

func TestRevisionConcerns(t *testing.T) {
	peaches := "produce: [peaches]\nkeeping: [{way: boiling-water, process: peaches-halved-hot}]"
	tests := []struct {
		say, matter string
		want        string // IDs
	}{
		{"peaches on the shelf", peaches, "rest-after-boiling closures flesh-unsaid"},
		{"peaches in the freezer", "produce: [peaches]\nkeeping: [{way: freezer}]", ""},
		{"white peaches", "name: White peaches\n" + peaches, "rest-after-boiling closures white-flesh-said"},
		{"peaches that are said to be yellow", "name: Yellow peaches\n" + peaches, "rest-after-boiling closures"},
		{"rhubarb in the freezer", "produce: [rhubarb]\nname: Rhubarb\nkeeping: [{way: freezer}]", ""},
		{"frosted rhubarb in the freezer", "produce: [rhubarb]\nname: Frosted rhubarb\nkeeping: [{way: freezer}]", "frosted-rhubarb"},
		{"tomatoes by their process", "produce: [tomatoes]\nkeeping: [{way: pressure, process: tomatoes-crushed-hot}]",
			"tomato-acid wait-after-pressure closures canner-size"},
		{"two batches in one", peaches + "\nscale: {smallest: 1, largest: 2}", "rest-after-boiling closures flesh-unsaid no-doubling"},
		{"one batch at most", peaches + "\nscale: {smallest: 1/2, largest: 1}", "rest-after-boiling closures flesh-unsaid"},
		{"a pot three times as large", "produce: [plums]\nkeeping: [{way: boiling-water, process: plums-hot, factor: 3}]", "rest-after-boiling closures no-doubling"},
		{"zucchini by the process that a notice leaves alone", "produce: [zucchini]\nkeeping: [{way: boiling-water, process: pickled-bread-and-butter-zucchini}]",
			"rest-after-boiling closures"},
		{"steam", "produce: [apples]\nkeeping: [{way: atmospheric-steam, process: applesauce-hot}]", "steam-accepted closures"},
	}
	for _, tt := range tests {
		r, _ := content.ReadRecipe("a.md", []byte("---\n"+tt.matter+"\n---\n"))
		var got []string
		for _, v := range Revisions() {
			if v.concerns(r, itemsOf(r)) {
				got = append(got, v.ID)
			}
		}
		if s := strings.Join(got, " "); s != tt.want {
			t.Errorf("%s: %q, want %q", tt.say, s, tt.want)
		}
	}
}

func TestRechecks(t *testing.T) {
	read := func(name, matter string) *content.Recipe {
		r, _ := content.ReadRecipe(name, []byte("---\nname: A\n"+matter+"\n---\n"))
		return r
	}
	plums := "produce: [plums]\nkeeping: [{way: boiling-water, process: plums-hot}]\n"
	s := &content.Site{Recipes: []*content.Recipe{
		read("never.md", plums),
		read("long-ago.md", plums+"checked: {edition: 2026-01-01, date: 2026-01-02}"),
		read("now.md", plums+"checked: {edition: "+Edition+", date: 2027-01-02}"),
		read("fridge.md", "produce: [plums]\nkeeping: [{way: refrigerator}]"),
	}}
	all := Rechecks(s)
	if len(all) != 2 || all[0].Recipe.File != "never.md" || all[1].Recipe.File != "long-ago.md" {
		t.Fatalf("rechecks %+v", all)
	}
	if !all[0].Never || all[1].Never {
		t.Errorf("never: %v, %v", all[0].Never, all[1].Never)
	}
	if all[0].Since != "2026-11-25" || all[1].Since != "2026-11-25" {
		t.Errorf("since %q and %q, want the edition in which the changes stand first", all[0].Since, all[1].Since)
	}
	if got := all[1].Reasons; len(got) != 3 || got[0].Date != Edition || got[1].Date != "2015" || got[2].Date != "2009" {
		t.Errorf("reasons %+v, want the figures, then 2015 and 2009", got)
	}
}

func ExampleRechecks() {
	r, _ := content.ReadRecipe("recipes/plums.md", []byte(`---
produce: [plums]
keeping: [{way: boiling-water, process: plums-hot}]
checked: {edition: 2026-01-31, date: 2026-02-01}
---
`))
	s := &content.Site{Recipes: []*content.Recipe{r}}
	for _, c := range Rechecks(s) {
		fmt.Printf("%s: to compare again since %s\n", c.Recipe.File, c.Since)
		for _, why := range c.Reasons {
			fmt.Printf("  %s: %s\n", why.Date, why.Says)
		}
		fmt.Println("  for one of them, see", c.Reasons[1].Source.Title)
	}
	// Output:
	// recipes/plums.md: to compare again since 2026-11-25
	//   2026-11-25: the figures of plums-hot are those of the edition of 2026-11-25
	//   2015: jars with zinc caps, glass lids or wire bails are no longer used for canning
	//   2009: jars rest for 5 minutes in the canner with the lid off before they are lifted out
	//   for one of them, see Kansas State University Extension on the USDA guide of 2015
}
