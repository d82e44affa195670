package validate

import (
	"os"
	"path/filepath"
	"testing"
	"time"

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

// BenchmarkRecipe reads the example recipes and judges them, one a turn, side by
// side. check/read is meant to be under 1: judging is to cost less than reading.
func BenchmarkRecipe(b *testing.B) {
	names, texts := exampleRecipes(b)
	checkRecipe(&content.Recipe{}, Rules) // the tables are read once
	var read, check time.Duration
	i := 0
	for b.Loop() {
		begin := time.Now()
		r, _ := content.ReadRecipe(names[i%len(names)], texts[i%len(texts)])
		between := time.Now()
		checkRecipe(r, Rules)
		read, check = read+between.Sub(begin), check+time.Since(between)
		i++
	}
	b.ReportMetric(float64(read.Microseconds())/float64(b.N), "µs-read/op")
	b.ReportMetric(float64(check.Microseconds())/float64(b.N), "µs-check/op")
	b.ReportMetric(float64(check)/float64(read), "check/read")
}

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

// BenchmarkSite judges a site of 10,000 recipes, the example's over and over.
// With -cpu 2 it takes as long as check does on two processors after reading.
func BenchmarkSite(b *testing.B) {
	names, texts := exampleRecipes(b)
	s := &content.Site{}
	for i := range 10_000 {
		r, _ := content.ReadRecipe(names[i%len(names)], texts[i%len(texts)])
		s.Recipes = append(s.Recipes, r)
	}
	for b.Loop() {
		Check(s, nil, content.Date{Year: 2026, Month: 11, Day: 25})
	}
	b.ReportMetric(b.Elapsed().Seconds()/float64(b.N), "s/10,000-recipes")
}
