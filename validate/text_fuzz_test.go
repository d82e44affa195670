package validate

import (
	"bytes"
	"os"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"stillroom/content"
)

// FuzzText puts any Markdown under the front matter of a recipe, and any text
// into the transcript of an episode: nothing panics, and every finding stands in
// its file. Each line of it is looked up as produce too.
func FuzzText(f *testing.F) {
	data, err := os.ReadFile("testdata/sentences.tsv")
	if err != nil {
		f.Fatal(err)
	}
	var steps []string
	for line := range bytes.Lines(data) {
		if c := bytes.Split(line, []byte("\t")); len(c) == 5 {
			steps = append(steps, "1. "+string(c[3])+"\n")
		}
	}
	// Many in one text: each text is read once before anything is changed.
	for some := range slices.Chunk(steps, 25) {
		f.Add(strings.Join(some, ""))
	}
	names, _ := os.ReadDir("../content/recipes")
	for _, n := range names {
		text, err := os.ReadFile("../content/recipes/" + n.Name())
		if err != nil {
			f.Fatal(err)
		}
		f.Add(string(text))
	}
	f.Add("> *Never* `turn` [jars](/x) &frac14;\\* inch\r\n\n| a | 10 min |\n|---|---|\n| b | ½ |\n\n- [ ] x\n\n\ttwo&nbsp;and—a half 1/0 9999999999999999999 °F\n")
	for some := range slices.Chunk(AllProduce(), 50) {
		var names strings.Builder
		for _, p := range some {
			names.WriteString(p.Name + ", chopped\n")
		}
		f.Add(names.String())
	}
	f.Add("é½\x00(")
	f.Add("Never:\n\n- turn jars upside down unless 5 psi\n\n## Don'ts\n\n```\nprocess 5 minutes\n```\n")
	const head = "---\nkind: jam\nproduce: [tomatoes]\ningredients: [2 cups sugar, 3 tomatoes]\nkeeping: [{way: boiling-water, process: tomatoes-crushed-hot, acid: 2 tbsp bottled lemon juice per quart, headspace: 1/2 in, keeps: 12 months, processing: [{jar: pint, altitude: {0-1,000 ft: 35 min, above 1,000 ft: 40 min}}]}, {way: pressure, headspace: 1 in, processing: [{jar: pint, time: 20 min, dial: {0-2,000 ft: 11 psi}}]}, {way: fermenting, salt: 2%, temperature: 70 F}]\n---\n"
	f.Fuzz(func(t *testing.T, body string) {
		files := map[string]string{"content/recipes/a.md": head + body, "content/episodes/a.vtt": "WEBVTT\n\n00:01.000 --> 00:02.000\n" + body}
		r, _ := content.ReadRecipe("content/recipes/a.md", []byte(files["content/recipes/a.md"]))
		s := &content.Site{Recipes: []*content.Recipe{r}, FS: fstest.MapFS{"content/episodes/a.vtt": {Data: []byte(files["content/episodes/a.vtt"])}}}
		e, _ := content.ReadEpisode("content/episodes/a.md", []byte("---\nrecipes: [a]\ntranscript: a.vtt\n---\n"+body))
		files["content/episodes/a.md"] = "---\nrecipes: [a]\ntranscript: a.vtt\n---\n" + body
		for _, f := range append(checkRecipe(r, Rules), checkEpisode(e, s, Rules)...) {
			stands(t, f, files[f.Pos.File])
		}
		for line := range strings.Lines(body) {
			if p, ok := LookUpProduce(line); ok != (p.Name != "") {
				t.Errorf("LookUpProduce(%q) = %q, %v", line, p.Name, ok)
			}
			ClassifyItem(line, line)
		}
	})
}

// stands reports a finding whose place is not in its file, or just behind the
// end of a line.
func stands(t *testing.T, f Finding, text string) {
	t.Helper()
	lines := strings.Split(strings.TrimPrefix(text, "\ufeff"), "\n")
	p := f.Pos
	if p.Line < 1 || p.Line > len(lines) || p.Col < 1 || p.Col > len(lines[p.Line-1])+1 {
		t.Errorf("%s: there is no such place in a file of %d lines", f, len(lines))
	}
}
