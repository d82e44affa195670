package calendar

import (
	"bytes"
	"strings"
	"testing"
	"testing/fstest"
	"unicode/utf8"

	"github.com/emersion/go-ical"

	"stillroom/content"
)

// larder is a site of three recipes; a name holds all that has to be escaped
// and is long enough to be folded inside a letter of two bytes.
func larder(t *testing.T) *content.Site {
	t.Helper()
	const rest = "\nsummary: A jar.\nkind: jam\nyield: 2 cups\ningredients: [1 cup sugar]\n"
	fsys := fstest.MapFS{
		"content/site.yaml": {Data: []byte("name: Ada's Larder; and more\naddress: https://ada.example\n")},
		"content/recipes/plum.md": {Data: []byte("---\nname: 'Plums, damsons; éééééééééééééééééééééééééééééééééééééé \\ the rest'" + rest +
			"published: 2025-01-01\nproduce: [plums]\nkeeping: [{way: refrigerator, keeps: 3 weeks}, {way: freezer, factor: 2, keeps: 1 year}]\n" +
			"batches: [{made: 2026-07-01}, {made: 2026-07-01}, {made: 2026-07-02, factor: 2}]\n---\n")},
		"content/recipes/later.md":   {Data: []byte("---\nname: Later" + rest + "published: 2026-08-01\nproduce: [plums]\nkeeping: [{way: refrigerator, keeps: 3 weeks}]\n---\n")},
		"content/recipes/oranges.md": {Data: []byte("---\nname: Oranges" + rest + "published: 2025-01-01\nseason: [nov, dec, jan]\nproduce: [oranges]\nkeeping: [{way: refrigerator, keeps: 3 weeks}]\n---\n")},
		"content/recipes/idea.md":    {Data: []byte("---\nname: Idea\nstatus: draft" + rest + "produce: [plums]\nkeeping: [{way: refrigerator, keeps: 3 weeks}]\n---\n")},
	}
	s, faults, err := content.Read(fsys, func(int, int) {})
	if err != nil || len(faults) > 0 {
		t.Fatal(err, faults)
	}
	return s
}

func date(s string) content.Date {
	d, err := content.ParseDate(s)
	if err != nil {
		panic(err)
	}
	return d
}

func TestOf(t *testing.T) {
	c := Of(larder(t), date("2026-06-10"), 13)
	if len(c.Planned) != 1 || c.Planned[0].Name != "Later" || len(c.Drafts) != 1 || c.Drafts[0].Name != "Idea" {
		t.Errorf("planned %v, drafts %v", c.Planned, c.Drafts)
	}
	july, january := c.Months[1].Ripe, c.Months[7].Ripe
	if len(july) != 1 || !july[0].Starts || july[0].Ends || july[0].Until != 10 {
		t.Errorf("July: %+v", july)
	}
	if len(january) != 1 || january[0].Starts || !january[0].Ends || january[0].Until != 1 {
		t.Errorf("January ends a season that begins in November: %+v", january)
	}
}

// A recipe is shown again from four to two weeks before its season.
func TestAgain(t *testing.T) {
	plums := larder(t)
	for _, c := range []struct {
		day, when string
	}{
		{"2026-06-01", "3 to 17 Jun"}, {"2026-06-03", "3 to 17 Jun"}, {"2026-06-04", "by 17 Jun"}, {"2026-06-17", "by 17 Jun"},
		{"2026-06-18", "now"}, {"2026-06-30", "now"},
	} {
		all := Of(plums, date(c.day), 1).Again
		if len(all) != 1 || all[0].when(date(c.day)) != c.when {
			t.Errorf("on %s: %v, want %s", c.day, all, c.when)
		}
	}
	if all := Of(plums, date("2026-07-01"), 1).Again; len(all) > 0 {
		t.Errorf("when its season is there: %v", all)
	}
	plums.Recipes[3].Updated.V = date("2026-06-05")
	if all := Of(plums, date("2026-06-10"), 1).Again; len(all) > 0 {
		t.Errorf("after it was shown again: %v", all[0].Last)
	}
}

// What was taken back is not made, and so not checked again.
func TestRecheck(t *testing.T) {
	const canned = "---\nname: Plums\nsummary: A jar.\nkind: jam\npublished: 2025-01-01\nproduce: [plums]\nyield: 2 cups\n" +
		"ingredients: [1 cup sugar]\nkeeping: [{way: boiling-water, process: berry-jam, keeps: 1 year}]\n"
	for rest, want := range map[string]int{
		"": 1,
		"withdrawn: {date: 2026-05-30, reason: Nobody has tested it.}\n": 0,
		"status: draft\n": 0,
	} {
		r, faults := content.ReadRecipe("content/recipes/plums.md", []byte(canned+rest+"---\n"))
		if len(faults) > 0 {
			t.Fatal(faults)
		}
		c := Of(&content.Site{Recipes: []*content.Recipe{r}}, date("2026-06-10"), 13)
		if len(c.Recheck) != want {
			t.Errorf("with %q: %d recipes to check again, want %d", rest, len(c.Recheck), want)
		}
	}
}

// A batch is kept in the way that its factor belongs to.
func TestBest(t *testing.T) {
	var got []string
	for _, b := range Of(larder(t), date("2026-07-01"), 13).Best {
		got = append(got, b.By.String()+" "+string(b.Way.Way.V))
	}
	if want := "2026-07-22 refrigerator, 2026-07-22 refrigerator, 2027-07-02 freezer"; strings.Join(got, ", ") != want {
		t.Errorf("best by %v, want %s", got, want)
	}
}

// RFC 5545, 3.1 and 3.3.11: lines of at most 75 octets that end in CRLF, folded
// between letters; and what a parser of the standard makes of the file.
func TestICalendar(t *testing.T) {
	c := Of(larder(t), date("2026-06-10"), 14)
	got := c.ICalendar()
	if again := Of(larder(t), date("2026-06-10"), 14).ICalendar(); !bytes.Equal(got, again) {
		t.Error("the same day gives other bytes")
	}
	wantLines(t, string(got))
	cal, err := ical.NewDecoder(bytes.NewReader(got)).Decode()
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	ids := make(map[string]bool)
	for _, e := range cal.Events() {
		name, _ := e.Props.Text("SUMMARY")
		id, _ := e.Props.Text("UID")
		start, err1 := e.DateTimeStart(nil)
		end, err2 := e.DateTimeEnd(nil)
		stamp := e.Props.Get("DTSTAMP").Value
		if ids[id] || err1 != nil || err2 != nil || !start.Before(end) || stamp != "20260610T000000Z" {
			t.Errorf("%s: uid %s, from %v to %v, stamp %s", name, id, start, end, stamp)
		}
		ids[id] = true
		names = append(names, start.Format("01-02 ")+name)
	}
	plums := "Plums, damsons; " + strings.Repeat("é", 38) + ` \ the rest`
	want := []string{
		"07-01 Put up: plums (to October)", "11-01 Put up: oranges (to January)", "07-01 Put up: plums (to October)",
		"08-01 Published: Later", "06-03 Show again: " + plums, "10-04 Show again: Oranges",
		"07-22 Best used by today: " + plums, "07-22 Best used by today: " + plums, "07-02 Best used by today: " + plums,
	}
	if strings.Join(names, "\n") != strings.Join(want, "\n") {
		t.Errorf("got\n%s\nwant\n%s", strings.Join(names, "\n"), strings.Join(want, "\n"))
	}
}

// What is read again later changes what is there.
// wantLines looks at the lines of a stream.
func wantLines(t *testing.T, stream string) {
	t.Helper()
	for l := range strings.SplitSeq(strings.TrimSuffix(stream, "\r\n"), "\r\n") {
		if len(l) > 75 || strings.ContainsAny(l, "\r\n") || !utf8.ValidString(l) {
			t.Errorf("line %q", l)
		}
	}
}

// A name that is folded at any of its bytes, and one that would be a line of its
// own, is read as it was written: RFC 5545, 3.1 and 3.3.11.
func TestNamesComeBack(t *testing.T) {
	names := []string{"a\r\nEND:VEVENT", "a\nBEGIN:VALARM", `a\nATTENDEE:b`, `\\;,:"`, ` a `, "\ta", strings.Repeat(`\`, 200), strings.Repeat(",;", 200), strings.Repeat("a\u0301", 100)}
	for n := range 80 {
		for _, letter := range []string{"b", "é", "€", "🍑"} {
			names = append(names, strings.Repeat("a", n)+strings.Repeat(letter, 40)+" \\,")
		}
	}
	for _, name := range names {
		w := new(icalendar)
		w.text("SUMMARY", name)
		wantLines(t, w.String())
		cal, err := ical.NewDecoder(strings.NewReader("BEGIN:VCALENDAR\r\nBEGIN:VEVENT\r\n" + w.String() + "END:VEVENT\r\nEND:VCALENDAR\r\n")).Decode()
		if err != nil {
			t.Errorf("%q: %v", name, err)
			continue
		}
		if got, err := cal.Children[0].Props.Text("SUMMARY"); err != nil || got != strings.ReplaceAll(name, "\r", "") {
			t.Errorf("%q is read as %q (%v)", name, got, err)
		}
	}
}

func TestIDsStay(t *testing.T) {
	ids := func(day string) map[string]bool {
		all := make(map[string]bool)
		for _, l := range strings.Split(string(Of(larder(t), date(day), 6).ICalendar()), "\r\n") {
			if id, ok := strings.CutPrefix(l, "UID:"); ok {
				all[id] = true
			}
		}
		return all
	}
	first, later := ids("2026-06-10"), ids("2026-06-20")
	for id := range first {
		if !later[id] {
			t.Errorf("%s has gone after ten days", id)
		}
	}
}

func TestNothingAhead(t *testing.T) {
	if got := Of(&content.Site{}, date("2026-06-10"), 12).ICalendar(); got != nil {
		t.Errorf("an empty site gives %s", got)
	}
}

// RFC 9562, appendix A.4.
func TestUUID(t *testing.T) {
	names := uid{0x6b, 0xa7, 0xb8, 0x10, 0x9d, 0xad, 0x11, 0xd1, 0x80, 0xb4, 0x00, 0xc0, 0x4f, 0xd4, 0x30, 0xc8}
	if got := uuid(names, "www.example.com").String(); got != "2ed6657d-e927-568b-95e1-2665a8aea6a2" {
		t.Errorf("got %s", got)
	}
}
