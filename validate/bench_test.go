package validate

import (
	"os"
	"path/filepath"
	"testing"

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

// BenchmarkCheck judges the example recipes, one a turn. Compare it with
// BenchmarkRead: judging must cost less than reading.
func BenchmarkCheck(b *testing.B) {
	names, texts := exampleRecipes(b)
	var recipes []*content.Recipe
	for i := range names {
		r, _ := content.ReadRecipe(names[i], texts[i])
		recipes = append(recipes, r)
	}
	checkRecipe(recipes[0], Rules) // the tables are read once
	b.ReportAllocs()
	i := 0
	for b.Loop() {
		checkRecipe(recipes[i%len(recipes)], Rules)
		i++
	}
}

// BenchmarkRead reads the same recipes, one a turn.
func BenchmarkRead(b *testing.B) {
	names, texts := exampleRecipes(b)
	b.ReportAllocs()
	i := 0
	for b.Loop() {
		content.ReadRecipe(names[i%len(names)], texts[i%len(texts)])
		i++
	}
}
