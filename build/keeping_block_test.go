package build

import (
	"regexp"
	"strings"
	"testing"

	"stillroom/content"
	"stillroom/validate"
)

func TestKeepingBlocks(t *testing.T) {
	r := recipeOf(t, `
kind: tomato
produce: [tomatoes]
keeping:
  - way: boiling-water
    process: tomatoes-crushed
    pack: hot
    acid: 2 tbsp bottled lemon juice per quart
    headspace: 1/2 in
    processing:
      - {jar: pint, altitude: {"0-1,000 ft": 35 min, "above 1,000 ft": 40 min}}
      - {jar: quart, altitude: {"0-1,000 ft": 45 min, "above 1,000 ft": 50 min}}
    keeps: 12 months
  - {way: freezer, factor: 1/2, headspace: 13 mm, container: pint tubs, keeps: 8-12 months}
  - {way: freezer, keeps: 6 months}
  - {way: fermenting, salt: 2.5%, temperature: 70-75 F, duration: 3 weeks, ph: 3.6, measured: 2026-08-01, keeps: 4 months}
`)
	var got []string
	for _, b := range (&edition{settings: new(content.Settings)}).keepingBlocks(r) {
		got = append(got, b.ID+" "+b.Batch)
		for _, f := range b.Facts {
			got = append(got, strings.ReplaceAll(strings.Join([]string{f.Name, f.Number, f.Unit, f.Also, f.Note}, "|"), "\u00a0", " "))
		}
	}
	want := strings.TrimSpace(`
keeping-boiling-water 
Jars|Pint and quart|||473 ml and 946 ml
Pack|Hot|||food hot, jars hot
Acid|2|tbsp||bottled lemon juice in each quart jar, half as much in each pint jar
Headspace|½|in|13 mm|from the rim down
Keeps|12|months||for best quality
keeping-freezer Made from a batch ½ times the ingredients above.
Headspace|13|mm||from the rim down
Container|Pint tubs|||
Keeps|8–12|months||for best quality
keeping-freezer-2 
Keeps|6|months||for best quality
keeping-fermenting 
Salt|2.5%|||by weight
Temperature|70–75|°F|21–24 °C|
Takes|3|weeks||
pH|3.6|||the highest that was measured, 1 August 2026
Keeps|4|months||for best quality`)
	if text := strings.Join(got, "\n"); text != want {
		t.Errorf("got:\n%s\nwant:\n%s", text, want)
	}
}

// TestClock holds that every canned way says when the minutes begin, and that
// pressure says to vent before.
func TestClock(t *testing.T) {
	for _, w := range wayNames {
		k := content.Keeping{Way: content.Field[content.Way]{V: w.way}}
		b := keepingBlock(&k)
		if b.Canned != (b.Clock != "") {
			t.Errorf("%s: canned %v, clock %q", w.way, b.Canned, b.Clock)
		}
		if (w.way == content.PressureCanner) != (b.Before != "") {
			t.Errorf("%s: before the clock: %q", w.way, b.Before)
		}
		k.JarsSterilised.V = true
		if b = keepingBlock(&k); b.Canned && b.Before == "" {
			t.Errorf("%s, jars sterilised: %q", w.way, b.Before)
		}
	}
}

// Nothing that we say of a process may call it safe, or a figure from memory
// read.
func TestAgreement(t *testing.T) {
	safe := regexp.MustCompile(`(?i)\bsafe(ly)?\b`)
	read, remembered := 0, 0
	for _, p := range validate.Processes() {
		k := content.Keeping{}
		k.Way.V, k.Process.V, k.Pack.V = p.Method, p.ID, p.Pack
		a := agreement(&k)
		if a == nil {
			t.Errorf("%s, %s: no agreement", p.ID, p.Method)
			continue
		}
		if a.Food != p.Food || a.Publication != p.Publication || a.Table != p.Table {
			t.Errorf("%s: %+v", p.ID, a)
		}
		if safe.MatchString(a.Food + a.Publication + a.Seen) {
			t.Errorf("%s: %+v", p.ID, a)
		}
		unseen, _ := p.FromMemory()
		if (unseen > 0) != strings.Contains(a.Seen, "from memory") {
			t.Errorf("%s: %d figures from memory: %q", p.ID, unseen, a.Seen)
		}
		if unseen > 0 {
			remembered++
		} else {
			read++
		}
	}
	if read == 0 || remembered == 0 {
		t.Errorf("%d processes read, %d from memory", read, remembered)
	}
}

func TestAgreementInWriting(t *testing.T) {
	k := keepingOf(t, `
  - way: boiling-water
    tested_by: {authority: State Process Authority, reference: letter 12, date: 2026-03-02}
    processing: [{jar: pint, altitude: {"0-1,000 ft": 10 min, "above 1,000 ft": 15 min}}]
    keeps: 1 year`)
	a := agreement(&k[0])
	if a == nil || a.Food != "" || a.Publication != "State Process Authority" || a.Table != "letter 12" ||
		a.Seen != "The author holds this process in writing, dated 2 March 2026." {
		t.Errorf("agreement = %+v", a)
	}
	if a := agreement(&content.Keeping{}); a != nil {
		t.Errorf("agreement of nothing = %+v", a)
	}
}
