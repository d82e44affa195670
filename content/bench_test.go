package content

import (
	"bytes"
	"os"
	"testing"

	"github.com/adrg/frontmatter"
	"github.com/yuin/goldmark/text"
	"go.yaml.in/yaml/v4"
)

// benchmarkFile is a recipe of the example site, a long one.
func benchmarkFile(b *testing.B) []byte {
	data, err := os.ReadFile("recipes/seville-marmalade.md")
	if err != nil {
		b.Fatal(err)
	}
	b.SetBytes(int64(len(data)))
	b.ReportAllocs()
	return data
}

func BenchmarkReadRecipe(b *testing.B) {
	data := benchmarkFile(b)
	for b.Loop() {
		if _, faults := ReadRecipe("content/recipes/seville-marmalade.md", data); len(faults) > 0 {
			b.Fatal(faults)
		}
	}
}

// BenchmarkFloor is what the libraries alone take for the same file.
func BenchmarkFloor(b *testing.B) {
	data := benchmarkFile(b)
	format := frontmatter.NewFormat("---", "---", func(block []byte, v any) error {
		return yaml.Load(block, v, yamlOptions)
	})
	for b.Loop() {
		var doc yaml.Node
		rest, err := frontmatter.MustParse(bytes.NewReader(data), &doc, format)
		if err != nil {
			b.Fatal(err)
		}
		markdown.Parser().Parse(text.NewReader(rest))
	}
}

// BenchmarkNodes reads its front matter by ourselves, and by the library.
func BenchmarkNodes(b *testing.B) {
	block := []byte(blockOf(benchmarkFile(b)))
	b.Run("usual", func(b *testing.B) {
		for b.Loop() {
			if usual(block) == nil {
				b.Fatal("left to the library")
			}
		}
	})
	b.Run("library", func(b *testing.B) {
		for b.Loop() {
			var doc yaml.Node
			if err := yaml.Load(block, &doc, yamlOptions); err != nil {
				b.Fatal(err)
			}
		}
	})
}
