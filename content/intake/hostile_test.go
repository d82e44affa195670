package intake

import (
	"fmt"
	"io/fs"
	"strings"
	"testing"
	"testing/fstest"

	"stillroom/content"
)

func inScript(json string) string { return `<script type="application/ld+json">` + json + `</script>` }

// recipeSaying is a page with a recipe of which some keys are given.
func recipeSaying(keys string) string {
	return inScript(`{"@type":"Recipe","name":"Jam","recipeIngredient":["1 cup sugar"],"recipeInstructions":"Stir.",` + keys + `}`)
}

func times(n int, piece func(i int) string) string {
	var b strings.Builder
	for i := range n {
		b.WriteString(piece(i))
	}
	return b.String()
}

// Pages that would fill the memory or take hours are read in part or not at
// all, and the answer says where. Before there were limits each of these took
// minutes or gigabytes.
func TestHostilePages(t *testing.T) {
	microdata := func(inside string) string {
		return `<div itemscope itemtype="https://schema.org/Recipe"><b itemprop=name>A</b>` + inside
	}
	const tangled, tags = `the recipe "`, "it holds more than 1048576 tags, and nothing that is written for people does"
	for name, c := range map[string]struct{ page, want string }{
		"scripts": {times(50_000, func(i int) string { return inScript(fmt.Sprintf(`{"@type":"Recipe","name":"R%d"}`, i)) }), "p.html:1:1"},
		"broken":  {times(50_000, func(int) string { return inScript("{\x00}\r") }), "p.html:31:46: this JSON-LD is broken"},
		"recipes": {inScript("[" + times(3000, func(i int) string {
			return fmt.Sprintf(`{"@type":"Recipe","name":"R%d","recipeIngredient":["salt"]},`, i)
		}) + "0]"), `the recipe "R500" comes after 500 others`},
		"long script": {recipeSaying(`"description":"` + strings.Repeat("a", mostData) + `"`), "p.html:1:36"},
		"long text":   {recipeSaying(`"description":"` + strings.Repeat("a", mostText) + `"`), `p.html:1:62`},
		"marks":       {recipeSaying(`"description":"` + strings.Repeat("*_[", 80_000) + `"`), tangled},
		"elements":    {recipeSaying(`"description":"` + strings.Repeat("<p>x", 50_000) + `"`), tangled},
		"lists":       {recipeSaying(`"recipeYield":[` + strings.Repeat("{},", 100_000) + `0]`), tangled},
		"pictures":    {recipeSaying(`"image":[`+strings.Repeat(`"a.jpg",`, 10_000)+`0]`) + strings.Repeat(`<img src="b/a.jpg">`, 50_000), ""},
		"huge name":   {inScript(`{"@type":"Recipe","name":"` + strings.Repeat("a b", 50_000) + `","recipeIngredient":["salt"]}`), `the recipe "a ba b`},
		"huge number": {recipeSaying(`"recipeYield":1e999999999,"prepTime":"PT` + strings.Repeat("9", 100_000) + `H"`), ""},
		"tags":        {strings.Repeat("<p>", mostTags+1), tags},
		"formatting":  {strings.Repeat("<b><i><p>", 100_000), ""},
		"props":       {microdata(strings.Repeat(`<b itemprop=recipeIngredient>`, 400) + strings.Repeat("a", 4<<20)), ""},
		"references": {microdata(`<i itemprop=recipeIngredient>a</i></div>`) + times(500, func(i int) string {
			return fmt.Sprintf(`<i id=x%d itemprop=a itemscope itemref="%s"></i>`, i, strings.Repeat("x1 ", 500))
		}), ""},
		"old address":  {`<link rel=canonical href="http://a/jam%22/">` + recipeSaying(`"recipeYield":1`), ""}, // no folder of Windows answers to it
		"open comment": {"<!--" + strings.Repeat("<!--", 200_000), "holds no recipe"},
		"letters":      {"\xff\xfe" + strings.Repeat("\x00\xd8", 200_000), "holds no recipe"}, // surrogates without their other halves
		"many more":    {"\n<div itemscope>" + strings.Repeat("<i a b c d e f g h>", mostOfTags/8+1), "up to line 2 its tags have more than 1048576 attributes"},
		"one long tag": {"\n<div " + strings.Repeat("a ", longestTag/2) + ">", "on line 2 begins a tag or a text of more than 8 MB"},
		"attributes":   {"<div itemscope " + times(50_000, func(i int) string { return fmt.Sprint("a", i, " ") }) + ">", "holds no recipe"},
	} {
		all, troubles, err := ReadPage(Page{Name: "p.html", Data: []byte(c.page), Produce: produce})
		said := fmt.Sprint(err, "\n")
		for _, x := range troubles {
			said += fmt.Sprintf("%s: %s\n", x.Pos, x.Says)
		}
		if !strings.Contains(said, c.want) || len(troubles) > mostTroubles {
			t.Errorf("%s: %d troubles, %.300s; want %s", name, len(troubles), said, c.want)
		}
		for _, a := range all {
			if faults := faultsOf(a); len(faults) > 0 {
				t.Errorf("%s: %v", name, faults[0])
			}
		}
	}
}

// Nothing that a page or a feed says runs, closes what it stands in or leads
// out of the folder.
func TestHostileSayings(t *testing.T) {
	beside := fstest.MapFS{"a.jpg": {Data: []byte("no picture")}, "p_files/evil.svg": {Data: []byte("<svg onload=a()>")}, "to.jpg": {Data: []byte("/etc/passwd"), Mode: fs.ModeSymlink | 0o777}}
	for _, said := range []string{
		`<script>alert(1)</script>`, `<img src=x onerror=alert(1)>`, `<svg onload=alert(1)>`, `<a href=\"javascript:alert(1)\">a</a>`, `[a](javascript:alert(1))`, `<a href=\"java\tscript:a()\">a</a>`,
		`<a href=\"data:text/html,a\">a</a>`, `<iframe src=//evil.example>`, `&lt;script&gt;alert(1)&lt;/script&gt;`, `&amp;lt;script&amp;gt;a`, `<style>@import '//evil.example'</style>`, `<!-- a --`, `]]>`, `-->`,
		`---\nstatus: ready\n---`, `a\n---\nkeeping: []`, `\"\nstatus: ready\nx: \"`, `{{.}}`, `\u0000\u001b[31m`, `a\u202eb`, `\ud800`, `\udfff\ud800`, `<math><mtext><style><img src=x onerror=a()>`, `&#0;&#27;&#xd800;`,
		`../../../etc/passwd`, `/etc/passwd`, `C:\\windows\\a.jpg`, `..\\..\\a.jpg`, `p_files/evil.svg`, `to.jpg`, `a.jpg`, `file:///etc/passwd`, `%2e%2e/%2e%2e/a.jpg`, `data:image/svg+xml;base64,PHN2Zy8+`, `data:image/png;base64,AAAA`, `con`, `*anchor`, `!!binary a`, `<<: *a`, `~`, `# a`, `- a`, "a: b",
	} {
		page := inScript(`{"@type":"Recipe","name":"Jam ` + strings.ReplaceAll(said, "</script", `<\/script`) + `","recipeIngredient":["SAID"],"recipeInstructions":["SAID"],"description":"SAID","image":"SAID","author":"SAID","recipeYield":"SAID","datePublished":"SAID","prepTime":"SAID"}`)
		page = strings.ReplaceAll(page, "SAID", strings.ReplaceAll(said, "</script", `<\/script`))
		all, _, err := ReadPage(Page{Name: "p.html", Data: []byte(page), Beside: beside, Produce: produce})
		if err != nil || len(all) != 1 {
			t.Errorf("%q: %d recipes, %v", said, len(all), err)
			continue
		}
		wantTame(t, said, all[0])
	}
}

// wantTame holds that what was read is a draft of its own folder that can be
// read again and runs nothing.
func wantTame(t *testing.T, said string, a Arrival) {
	t.Helper()
	if faults := faultsOf(a); len(faults) > 0 {
		t.Errorf("%q: %v\n%s", said, faults[0], a.Text.Data)
	}
	r, _ := content.ReadRecipe(a.Text.Path, a.Text.Data)
	page := strings.ToLower(string(r.Body.HTML(r.Body.Doc)))
	for _, harm := range []string{"<script", "<img", "<svg", "<iframe", "<style", `href="javascript`, `href="data`, "onerror=\""} {
		if strings.Contains(page, harm) {
			t.Errorf("%q: the page holds %s:\n%s", said, harm, page)
		}
	}
	if r.Status.V != content.Draft || len(r.Keeping) > 0 || len(a.Extra) > 0 {
		t.Errorf("%q: %s, kept by %v, with %d pictures", said, r.Status.V, r.Keeping, len(a.Extra))
	}
	if slug := strings.TrimSuffix(strings.TrimPrefix(a.Text.Path, "content/recipes/"), ".md"); slug != content.Slug(slug) {
		t.Errorf("%q: it is written to %s", said, a.Text.Path)
	}
}

// A feed is held to the same limits, and two entries never share a file.
func TestHostileFeeds(t *testing.T) {
	item := func(title, notes string) string {
		return `<item><title>` + title + `</title><description><![CDATA[` + notes + `]]></description><enclosure url="https://a.example/a.mp3" type="audio/mpeg" length="99999999999999999999"/></item>`
	}
	feed := func(items string) string { return `<rss version="2.0"><channel>` + "\n" + items + `</channel></rss>` }
	for name, c := range map[string]struct {
		feed, want string
		episodes   int
	}{
		"twins":     {feed(item("a", "") + item("a", "") + item("a 2", "") + item("A-2", "") + item("", "") + item("…", "")), "<nil>", 6},
		"marks":     {feed(item("a", strings.Repeat("*_[", 50_000)) + item("b", "Hello.")), `feed.xml:2: entry 1, "a", is longer or more tangled`, 1},
		"entities":  {`<!DOCTYPE rss [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;">]>` + feed(item("&b;", "x")), "", -1},
		"outside":   {`<!DOCTYPE rss [<!ENTITY a SYSTEM "file:///etc/passwd">]>` + feed(item("&a;", "x")), "", -1},
		"tags":      {feed(strings.Repeat("<item/>", mostTags)), "more than 1048576 tags", 0},
		"title":     {feed(item(strings.Repeat("a", 300_000), "x")), `feed.xml:2: entry 1, "aaaa`, 0},
		"script":    {feed(item("&lt;script&gt;a()&lt;/script&gt;", "<script>a()</script><img src=x onerror=a()>Hello.")), "<nil>", 1},
		"title tag": {feed("<title/><i " + "/>" + strings.Repeat("<i a='' b='' c='' d='' e='' f='' g='' h=''/>", mostOfTags/8+1)), "up to line 2 its tags have more than 1048576 attributes", 0},
		"first tag": {"<rss " + strings.Repeat("a ", longestTag/2) + ">", "on line 1 begins a tag or a text of more than 8 MB", 0},
		"cut":       {feed(item("a", "x"))[:90], "no feed that can be read", 0},
	} {
		all, troubles, err := ReadFeed("feed.xml", []byte(c.feed))
		said := fmt.Sprint(err, "\n")
		for _, x := range troubles {
			said += fmt.Sprintf("%s: %s\n", x.Pos, x.Says)
		}
		if !strings.Contains(said, c.want) || c.episodes >= 0 && len(all) != c.episodes {
			t.Errorf("%s: %d episodes, %.300s; want %d, %s", name, len(all), said, c.episodes, c.want)
		}
		paths := make(map[string]bool)
		for _, a := range all {
			if text := string(a.Text.Data); paths[a.Text.Path] || len(faultsOf(a)) > 0 || strings.Contains(text, "<script") || strings.Contains(text, "root:") || len(text) > 2*mostText {
				t.Errorf("%s: %s twice, or broken: %v\n%.500s", name, a.Text.Path, faultsOf(a), text)
			}
			paths[a.Text.Path] = true
		}
	}
}
