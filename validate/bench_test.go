package validate

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"runtime/metrics"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/extension"
	"github.com/yuin/goldmark/text"
	"go.yaml.in/yaml/v4"

	"stillroom/content"
)

// exampleRecipes gives the recipes of the example site: for each its file
// name and its text.
func exampleRecipes(b *testing.B) (names []string, texts [][]byte) {
	files, err := filepath.Glob("../content/recipes/*.md")
	if err != nil || len(files) == 0 {
		b.Fatalf("no example recipes: %v", err)
	}
	for _, f := range files {
		text, err := os.ReadFile(f)
		if err != nil {
			b.Fatal(err)
		}
		names = append(names, "content/recipes/"+filepath.Base(f))
		texts = append(texts, text)
	}
	return names, texts
}

// BenchmarkRecipe reads the example recipes and then judges them, as the command
// does with a site. The figures are those of one recipe: check/read is meant to be
// under 1, since judging is to cost less than reading. Beside them stands what the
// YAML and the Markdown library alone take.
func BenchmarkRecipe(b *testing.B) {
	names, texts := exampleRecipes(b)
	checkRecipe(&content.Recipe{}, Rules) // the tables are read once
	recipes := make([]*content.Recipe, len(texts))
	var read, check, matter, body time.Duration
	for b.Loop() {
		begin := time.Now()
		for i := range texts {
			recipes[i], _ = content.ReadRecipe(names[i], texts[i])
		}
		between := time.Now()
		for _, r := range recipes {
			checkRecipe(r, Rules)
		}
		read, check = read+between.Sub(begin), check+time.Since(between)
		for _, text := range texts {
			m, t := parseAlone(b, text)
			matter, body = matter+m, body+t
		}
	}
	report := func(d time.Duration, unit string) {
		b.ReportMetric(float64(d.Microseconds())/float64(b.N*len(texts)), unit)
	}
	report(read, "µs-read/recipe")
	report(check, "µs-check/recipe")
	report(matter, "µs-yaml/recipe")
	report(body, "µs-markdown/recipe")
	b.ReportMetric(float64(check)/float64(read), "check/read")
}

// parseAlone gives the time the YAML library takes for the front matter of a
// recipe, and the Markdown library for what follows.
func parseAlone(b *testing.B, recipe []byte) (matter, body time.Duration) {
	front, rest, ok := bytes.Cut(bytes.TrimPrefix(recipe, []byte("---\n")), []byte("\n---\n"))
	if !ok {
		b.Fatal("a recipe without front matter")
	}
	begin := time.Now()
	var doc yaml.Node
	if err := yaml.Load(front, &doc); err != nil {
		b.Fatal(err)
	}
	between := time.Now()
	benchMarkdown.Parser().Parse(text.NewReader(rest))
	return between.Sub(begin), time.Since(between)
}

// benchMarkdown understands the extensions that a recipe may use.
var benchMarkdown = goldmark.New(goldmark.WithExtensions(
	extension.Table, extension.Strikethrough, extension.TaskList, extension.Footnote, extension.Typographer))

// BenchmarkCheck judges the example recipes, one a turn.
func BenchmarkCheck(b *testing.B) {
	recipes := readExamples(b)
	checkRecipe(recipes[0], Rules) // the tables are read once
	b.ReportAllocs()
	i := 0
	for b.Loop() {
		checkRecipe(recipes[i%len(recipes)], Rules)
		i++
	}
}

func readExamples(b *testing.B) (recipes []*content.Recipe) {
	names, texts := exampleRecipes(b)
	for i := range names {
		r, _ := content.ReadRecipe(names[i], texts[i])
		recipes = append(recipes, r)
	}
	return recipes
}

// BenchmarkRead reads the same recipes, one a turn: front matter and Markdown.
func BenchmarkRead(b *testing.B) {
	names, texts := exampleRecipes(b)
	b.ReportAllocs()
	i := 0
	for b.Loop() {
		content.ReadRecipe(names[i%len(names)], texts[i%len(texts)])
		i++
	}
}

// BenchmarkSite reads a site of 10,000 recipes, the example's over and over, and
// judges it. With -cpu 2 it takes as long as check does on two processors, the disk
// left out; check/read is of the processors' time.
func BenchmarkSite(b *testing.B) {
	const recipes = 10_000
	names, texts := exampleRecipes(b)
	files := fstest.MapFS{}
	for i := range recipes {
		name := names[i%len(names)]
		if i >= len(names) {
			name = strings.Replace(name, ".md", fmt.Sprintf("-%d.md", i), 1)
		}
		files[name] = &fstest.MapFile{Data: texts[i%len(texts)]}
	}
	var read, check, readWork, checkWork time.Duration
	for b.Loop() {
		begin, worked := time.Now(), work()
		s, faults, err := content.Read(files, func(_, _ int) {})
		if err != nil {
			b.Fatal(err)
		}
		read, readWork = read+time.Since(begin), readWork+work()-worked
		begin, worked = time.Now(), work()
		Check(s, faults, content.Date{Year: 2026, Month: 11, Day: 25})
		check, checkWork = check+time.Since(begin), checkWork+work()-worked
	}
	b.ReportMetric(read.Seconds()/float64(b.N), "s-read/site")
	b.ReportMetric(check.Seconds()/float64(b.N), "s-check/site")
	b.ReportMetric(float64(checkWork)/float64(readWork), "check/read")
}

// work is the processors' time that this program has taken.
func work() time.Duration {
	sample := []metrics.Sample{{Name: "/cpu/classes/user:cpu-seconds"}, {Name: "/cpu/classes/gc/total:cpu-seconds"}}
	metrics.Read(sample)
	return time.Duration(1e9 * (sample[0].Value.Float64() + sample[1].Value.Float64()))
}
