package editor

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"
)

// BenchmarkType measures from a key that is pressed to the findings that it
// makes another: in sites of many recipes, each a jam of its own name.
func BenchmarkType(b *testing.B) {
	for _, n := range []int{1_000, 10_000} {
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			files := larder()
			for i := range n {
				files[fmt.Sprintf("content/recipes/jam-%d.md", i)] = &fstest.MapFile{
					Data: []byte(strings.Replace(jam, "Blackberry jam", fmt.Sprintf("Jam no. %d", i), 1)),
				}
			}
			c := newClient(b, files)
			c.open(jamURI, jam)
			c.until(jamURI, "time-short", false)
			from, to := "15", "12"
			for v := 2; b.Loop(); v++ {
				change := changeParams{TextDocument: textDocument{URI: jamURI, Version: v}}
				change.ContentChanges = []contentChange{{&textRange{position{21, 26}, position{21, 28}}, to}}
				c.tell("textDocument/didChange", change)
				c.until(jamURI, "time-short", to == "12")
				from, to = to, from
			}
		})
	}
}
