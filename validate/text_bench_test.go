package validate

import (
	"testing"

	"stillroom/content"
)

// BenchmarkText reads the words of the example recipes and runs the rules on
// them, one recipe a turn.
func BenchmarkText(b *testing.B) {
	names, texts := exampleRecipes(b)
	var recipes []*content.Recipe
	var matches [][]*Match
	size := 0
	for i := range names {
		r, _ := content.ReadRecipe(names[i], texts[i])
		items := itemsOf(r)
		var ms []*Match
		for k := range r.Keeping {
			ms = append(ms, match(&r.Keeping[k], items))
		}
		recipes, matches = append(recipes, r), append(matches, ms)
		size += len(texts[i])
	}
	checkText(textOfRecipe(recipes[0], matches[0]), Rules) // the lexicon is built once
	b.SetBytes(int64(size / len(recipes)))
	b.ReportAllocs()
	i := 0
	for b.Loop() {
		checkText(textOfRecipe(recipes[i%len(recipes)], matches[i%len(recipes)]), Rules)
		i++
	}
}
