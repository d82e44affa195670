package content

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"go.yaml.in/yaml/v4"
)

var patchSeeds = []string{
	"keeping:\n  - way: pressure\n    headspace: 1 in # say so\n",
	"keeping: [{way: pressure, dial: {0-2,000 ft: 11 psi, above 2,000 ft: 12 psi}}]\n",
	"keeping:\n- way: \"pressure\"\n  headspace:\n   - 1 in # low\n   # or\n\n  keeps: >\n   1 year\n# end\n",
	"keeping:\n  -\n    headspace: 'it''s' # a\n    processing: {a: [1, \"}\"], # b\n      c: 'd'}\n  - keeps: 1\n     year\n",
	"checked: {edition: 2026-01-01}\nkeeping: []\n",
}

// checkPatch sets keys in whatever can be read, reads the outcome, and finds in
// it what was there before and what was set, and nothing else.
func checkPatch(t *testing.T, data []byte) {
	p, _ := NewPatch("a.md", data, RecipeKeys)
	if p == nil {
		return
	}
	set(p)
	out, faults := p.Bytes()
	if faults != nil {
		return
	}
	after, faults := NewPatch("a.md", out, RecipeKeys)
	if after == nil {
		t.Fatalf("%q became %q: %v", data, out, faults)
	}
	before, _ := NewPatch("a.md", data, RecipeKeys)
	if got, want := tree(after.root, false), tree(before.root, true); got != want {
		t.Errorf("%q became %q\ngot  %s\nwant %s", data, out, got, want)
	}
}

func set(p *Patch) {
	top := p.Top()
	top.Set("tags", Writing{List: []Writing{{Text: "a"}, {Text: "b"}}})
	for _, e := range top.Entries("keeping") {
		e.Set("headspace", Writing{Text: "1/2 in"})
	}
}

// tree writes what a node says, in order of its keys; with the values of set
// if those were not written yet.
func tree(n *yaml.Node, unset bool) string { return treeOf(n, unset, 0) }

func treeOf(n *yaml.Node, unset bool, depth int) string {
	if n.Style&yaml.FlowStyle != 0 && n.Kind == yaml.MappingNode {
		joinThousands(n)
	}
	var parts []string
	switch n.Kind {
	case yaml.MappingNode:
		known := map[string]string{}
		if depth == 0 {
			known["tags"] = "[a b]"
		}
		if depth == 3 {
			known["headspace"] = "1/2 in"
		}
		for i := 0; i < len(n.Content); i += 2 {
			k, v := n.Content[i], n.Content[i+1]
			below := depth + 10
			if depth == 0 && k.Value == "keeping" && v.Kind == yaml.SequenceNode {
				below = 2
			}
			value := treeOf(v, unset, below)
			if set, ok := known[k.Value]; ok {
				if unset {
					value = set
				}
				delete(known, k.Value)
			}
			parts = append(parts, fmt.Sprintf("%q: %s", k.Value, value))
		}
		if unset {
			for k, v := range known {
				parts = append(parts, fmt.Sprintf("%q: %s", k, v))
			}
		}
		return "{" + strings.Join(slices.Sorted(slices.Values(parts)), ", ") + "}"
	case yaml.SequenceNode:
		for _, e := range n.Content {
			below := depth + 10
			if depth == 2 {
				below = 3
			}
			parts = append(parts, treeOf(e, unset, below))
		}
		return fmt.Sprint(parts)
	}
	return n.Value
}
