package intake

import (
	"bytes"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/rogpeppe/go-internal/txtar"

	"stillroom/content"
)

var update = flag.Bool("update", false, "write what is read into testdata")

// Each file is a page or a feed, and all that is made of it.
func TestIntake(t *testing.T) {
	files, err := filepath.Glob("testdata/*.txtar")
	if err != nil || len(files) < 5 {
		t.Fatal(files, err)
	}
	for _, name := range files {
		ar, err := txtar.ParseFile(name)
		if err != nil {
			t.Fatal(err)
		}
		got := intakeOf(t, ar.Files[0].Name, ar.Files[0].Data)
		want := &ar.Files[len(ar.Files)-1]
		if *update {
			want.Data = []byte(got)
			if err := os.WriteFile(name, txtar.Format(ar), 0o666); err != nil {
				t.Fatal(err)
			}
		}
		if diff := cmp.Diff(string(want.Data), got); diff != "" {
			t.Errorf("%s (-want +got):\n%s", name, diff)
		}
	}
}

// intakeOf writes down what is made of a page or a feed.
func intakeOf(t *testing.T, name string, data []byte) string {
	t.Helper()
	read := func() ([]Arrival, []Trouble, error) {
		if IsFeed(data) {
			return ReadFeed(name, data)
		}
		return ReadPage(Page{Name: name, Data: data, Produce: produce})
	}
	all, troubles, err := read()
	if err != nil {
		t.Fatalf("%s: %v", name, err)
	}
	var b strings.Builder
	for _, x := range troubles {
		fmt.Fprintf(&b, "%s: %s\n", x.Pos, x.Says)
	}
	for _, a := range all {
		fmt.Fprintf(&b, "%s, from %s it, %d to check\n", a.Text.Path, a.From, len(a.Checks))
		b.Write(a.Text.Data)
		for _, fault := range faultsOf(a) {
			t.Errorf("%s: %s", name, fault.Message)
		}
	}
	return b.String()
}

// produce knows two foods.
func produce(words string) (string, bool) {
	for _, p := range []string{"cabbage", "cucumbers"} {
		if strings.Contains(words, strings.TrimSuffix(p, "s")) {
			return p, true
		}
	}
	return "", false
}

// faultsOf gives what content cannot read of a file, but for keys that are left
// to the author.
func faultsOf(a Arrival) []content.Fault {
	var faults, left []content.Fault
	if strings.HasPrefix(a.Text.Path, "content/episodes/") {
		_, faults = content.ReadEpisode(a.Text.Path, a.Text.Data)
	} else {
		_, faults = content.ReadRecipe(a.Text.Path, a.Text.Data)
	}
	for _, f := range faults {
		if !f.Later {
			left = append(left, f)
		}
	}
	return left
}

// The author is told of canning where a page speaks of it, and of it alone.
func TestCanningWords(t *testing.T) {
	for text, want := range map[string]string{
		"Process in a water-bath canner": "Process", "Sterilise the jars": "Sterilise", "leave 1/4 inch headspace": "headspace",
		"Pulse in the food processor": "", "cover with a lid": "", "in cans": "",
	} {
		if got := canningWords.FindString(text); got != want {
			t.Errorf("in %q: %q, want %q", text, got, want)
		}
	}
}

// Pages declare their letters in many ways: HTML standard, 13.2.3.
func TestLetters(t *testing.T) {
	page := func(head, name string) []byte {
		return []byte(head + `<script type="application/ld+json">{"@type":"Recipe","name":"` + name + `","recipeIngredient":["1 cup sugar"]}</script>`)
	}
	late := strings.Repeat("<!-- a long head -->", 80)
	for _, c := range []struct {
		what string
		data []byte
		want string
	}{
		{"declared UTF-8", page(`<meta charset="utf-8">`, "Gelée"), "Gelée"},
		{"UTF-8 with a mark", append([]byte("\xef\xbb\xbf"), page("", "Gelée")...), "Gelée"},
		{"UTF-8, not declared", page(late, "Gelée"), "Gelée"},
		{"declared Latin-1", page(`<meta http-equiv="Content-Type" content="text/html; charset=iso-8859-1">`, "Gel\xe9e"), "Gelée"},
		{"declared windows-1252", page(`<meta charset="windows-1252">`, "Gel\xe9e \x96 \x93jam\x94"), "Gelée – “jam”"},
		{"not declared", page("", "Gel\xe9e"), "Gelée"},
		{"declared late", page(late+`<meta charset="iso-8859-2">`, "Sza\xb3wia"), "Szałwia"},
		{"UTF-16", append([]byte{0xff, 0xfe}, wide(string(page("", "Gelée")))...), "Gelée"},
	} {
		all, _, err := ReadPage(Page{Name: "page.html", Data: c.data})
		if err != nil || len(all) != 1 || all[0].Name != c.want {
			t.Errorf("%s: %+v, %v, want %s", c.what, all, err, c.want)
		}
	}
}

func wide(s string) []byte {
	var b []byte
	for _, r := range s {
		b = append(b, byte(r), byte(r>>8))
	}
	return b
}

// What would take too long, or too much, is refused in words.
func TestRefused(t *testing.T) {
	if _, _, err := ReadPage(Page{Name: "big.html", Data: make([]byte, MaxPage+1)}); err == nil || !strings.Contains(err.Error(), "no more than") {
		t.Errorf("a page of %d bytes: %v", MaxPage+1, err)
	}
	if _, _, err := ReadPage(Page{Name: "deep.html", Data: []byte(strings.Repeat("<div>", 100_000))}); err == nil || !strings.Contains(err.Error(), "too deeply") {
		t.Errorf("a deep page: %v", err)
	}
	if _, _, err := ReadFeed("cut.xml", []byte(`<rss version="2.0"><channel><item><title>A`)); err == nil {
		t.Error("half a feed is read")
	}
	deep := `{"@type":"Recipe","name":"A","recipeIngredient":` + strings.Repeat("[", 5000) + strings.Repeat("]", 5000) + "}"
	all, troubles, err := ReadPage(Page{Name: "a.html", Data: []byte(`<script type="application/ld+json">` + deep + `</script>`)})
	if err != nil || len(all) > 0 || len(troubles) == 0 {
		t.Errorf("deep JSON: %v, %v, %v", all, troubles, err)
	}
}

// Things that lie in one another in rings, and references that double at every
// step, come to an end.
func TestRings(t *testing.T) {
	ring := `{"@graph":[{"@type":"Recipe","@id":"r","name":{"@id":"a"},"headline":"Ring","image":{"@id":"a"},"author":{"@id":"a"},
		"recipeIngredient":["1 cup sugar",{"@id":"a"}],"recipeInstructions":[{"@id":"a"},{"@id":"b"},{"@id":"b"}]},
		{"@id":"a","@type":"HowToSection","name":{"@id":"b"},"url":{"@id":"a"},"itemListElement":[{"@id":"a"},{"@id":"b"},{"@id":"b"}]},
		{"@id":"b","@type":"HowToStep","itemListElement":[{"@id":"a"},{"@id":"b"},{"@id":"a"},{"@type":"HowToTip","text":"Stir."}]}]}`
	all, _, err := ReadPage(Page{Name: "ring.html", Data: []byte(`<script type="application/ld+json">` + ring + `</script>`)})
	if err != nil || len(all) != 1 || all[0].Name != "Ring" || !bytes.Contains(all[0].Text.Data, []byte("Stir.")) {
		t.Errorf("a ring of JSON-LD: %v, %v", all, err)
	}
	var b strings.Builder
	b.WriteString(`<div itemscope itemtype="https://schema.org/Recipe" itemref="x0 y0"><b itemprop="name">Twice</b><i itemprop="recipeIngredient">salt</i></div>`)
	for i := range 60 {
		fmt.Fprintf(&b, `<p id="x%d" itemprop="a" itemscope itemref="x%d y%d"></p><p id="y%d" itemprop="a" itemscope itemref="x%d y%d"></p>`, i, i+1, i+1, i, i+1, i+1)
	}
	all, troubles, err := ReadPage(Page{Name: "twice.html", Data: []byte(b.String())})
	if err != nil || len(all) > 0 || len(troubles) != 1 || !strings.Contains(troubles[0].Says, "more tangled") {
		t.Errorf("references that double: %v, %v, %v", all, troubles, err)
	}
}

// FuzzRead takes the bytes of a stranger's file for a page and for a feed.
func FuzzRead(f *testing.F) {
	files, _ := filepath.Glob("testdata/*.txtar")
	for _, name := range files {
		if ar, err := txtar.ParseFile(name); err == nil {
			f.Add(ar.Files[0].Data)
		}
	}
	f.Add([]byte(`<rss version="2.0"><channel><item><title>A</title><guid>#: 'x'</guid><enclosure url="https://a.example/a.mp3"/></item></channel></rss>`))
	f.Fuzz(func(t *testing.T, data []byte) {
		checkPage(t, data)
		checkFeed(t, data)
	})
}

// checkPage holds that no page brings what runs, and none says how food is kept.
// What is made of it can be read again.
func checkPage(t *testing.T, data []byte) {
	all, _, err := ReadPage(Page{Name: "page.html", Data: data, Produce: produce})
	if err != nil {
		return
	}
	for _, a := range all {
		for _, fault := range faultsOf(a) {
			t.Errorf("%s: %s\n%s", fault.Pos, fault.Message, a.Text.Data)
		}
		r, _ := content.ReadRecipe(a.Text.Path, a.Text.Data)
		if len(r.Keeping) > 0 || r.Status.V != content.Draft {
			t.Errorf("kept by %v, %s", r.Keeping, r.Status.V)
		}
		if page := bytes.ToLower(r.Body.HTML(r.Body.Doc)); bytes.Contains(page, []byte("<script")) || bytes.Contains(page, []byte(`href="javascript:`)) {
			t.Errorf("a page that runs:\n%s", page)
		}
	}
}

// checkFeed holds that an episode keeps its guid to the letter, and can be read
// again.
func checkFeed(t *testing.T, data []byte) {
	all, _, err := ReadFeed("feed.xml", data)
	if err != nil {
		return
	}
	paths := make(map[string]bool)
	for _, a := range all {
		for _, fault := range faultsOf(a) {
			t.Errorf("%s: %s\n%s", fault.Pos, fault.Message, a.Text.Data)
		}
		if paths[a.Text.Path] {
			t.Errorf("two are written to %s", a.Text.Path)
		}
		paths[a.Text.Path] = true
	}
}

// TestHalves holds that no amount changes by how a page is written: what is
// half a cup must not become a cup. The bytes are those of the WHATWG Encoding
// Standard's windows-1252 and UTF-8.
func TestHalves(t *testing.T) {
	page := func(head, half string) []byte {
		return []byte(head + "\n<script type=application/ld+json>{\"@type\":\"Recipe\",\"name\":\"Cr\xc3\xa8me\",\"recipeIngredient\":[\"" + half + " cup (830 g) sugar\"]}</script>")
	}
	const utf, windows = "<meta charset=utf-8>", "<meta charset=windows-1252>"
	for _, c := range []struct{ head, half, line, says string }{
		{utf, "\xc2\xbd", "- ½ cup (830 g) sugar\n", ""},
		{"", "\xc2\xbd", "- ½ cup (830 g) sugar\n", ""},
		{windows, "\xbd", "- ½ cup (830 g) sugar\n", ""},
		{utf, "\xbd\xbd", "- ½½ cup (830 g) sugar\n", "page:2: the page is to be UTF-8"},
		{utf + "é ü", "\xbd", "- '? cup (830 g) sugar'\n", "page:2: letters are broken"},
		{utf, "&frac12;", "- ½ cup (830 g) sugar\n", ""},
	} {
		all, troubles, err := ReadPage(Page{Name: "page", Data: page(c.head, c.half)})
		if err != nil || len(all) != 1 || !strings.Contains(string(all[0].Text.Data), c.line) {
			t.Errorf("%s with %q: no line %q: %v %v", c.head, c.half, c.line, all, err)
		}
		if says := fmt.Sprint(troubles); c.says == "" && len(troubles) > 0 || !strings.Contains(says, strings.TrimPrefix(c.says, "page:2: ")) || c.says != "" && troubles[0].Pos.Line != 2 {
			t.Errorf("%s with %q says %s, want %q", c.head, c.half, says, c.says)
		}
	}
}
