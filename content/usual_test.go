package content

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/txtar"
	"go.yaml.in/yaml/v4"
)

// FuzzNodes takes bytes for front matter, and holds what the own reader makes
// of it against what the library does. It may leave to the library whatever it
// likes.
func FuzzNodes(f *testing.F) {
	for _, block := range append(blocksOf(f, "*/*.md", "*.yaml", "testdata/faults/*.txtar"), strings.Split(hostileMatter, "\n===\n")...) {
		f.Add([]byte(block))
	}
	for some := range slices.Chunk(strings.Split(hostileTexts, "\n"), 8) { // fewer beginnings leave more time for what comes of them
		f.Add([]byte("- " + strings.Join(some, "\n- ")))
		f.Add([]byte("a: {b: [" + strings.Join(some, "], c: [")))
	}
	f.Fuzz(func(t *testing.T, block []byte) { checkNodes(t, block) })
}

// TestUsual reads the front matter of every text of this repository, and what
// its authors would rather not write.
func TestUsual(t *testing.T) {
	for _, block := range append(blocksOf(t, "*/*.md", "*.yaml", "testdata/*/*.txtar", "../*/testdata/*.txtar", "../testdata/script/*.txtar"), hostileBlocks()...) {
		checkNodes(t, []byte(block))
	}
	recipes, ours := blocksOf(t, "recipes/*.md"), 0
	for _, block := range recipes {
		if checkNodes(t, []byte(block)) && checkNodes(t, []byte(strings.ReplaceAll(block, "\n", "\r\n"))) {
			ours++
		}
	}
	if ours*10 < len(recipes)*9 {
		t.Errorf("the own reader read %d recipes of %d, want nine in ten", ours, len(recipes))
	}
}

// TestUsualKeys writes every hostile text for every key.
func TestUsualKeys(t *testing.T) {
	plain := make(map[Want]string) // without a unit
	for w := WantText; w < WantKeys; w++ {
		plain[w] = ""
	}
	for _, table := range []KeyTable{RecipeKeys, EpisodeKeys, SiteKeys} {
		for _, line := range linesWith(table, plain, "") {
			for text := range strings.SplitSeq(hostileTexts, "\n") {
				checkNodes(t, []byte(strings.Replace(line, "#", text, 1)))
			}
		}
	}
}

// checkNodes reports whether the own reader read a block. If it did, the
// library has to give the same nodes.
func checkNodes(t *testing.T, block []byte) bool {
	t.Helper()
	block = newSource("a.md", block).data
	got := usual(block)
	if got == nil {
		return false
	}
	var want yaml.Node
	if err := yaml.Load(block, &want, yamlOptions); err != nil {
		t.Fatalf("%q was read, and is no YAML: %v", block, err)
	}
	if at := differing(got, want.Content[0]); at != nil {
		t.Errorf("%q: at line %d, column %d, the library gives another node, %q", block, at.Line, at.Column, at.Value)
	}
	return true
}

// differing gives the first of the library's nodes that is not as ours, but for
// its comments.
func differing(got, want *yaml.Node) *yaml.Node {
	if got.Kind != want.Kind || got.Style != want.Style || got.Tag != want.Tag || got.Value != want.Value ||
		got.Line != want.Line || got.Column != want.Column || len(got.Content) != len(want.Content) ||
		want.Anchor != "" || want.Alias != nil {
		return want
	}
	for i, n := range want.Content {
		if at := differing(got.Content[i], n); at != nil {
			return at
		}
	}
	return nil
}

// blocksOf gives the front matter of files, and of the files in archives; of
// what has none the whole.
func blocksOf(t testing.TB, patterns ...string) (blocks []string) {
	for _, pattern := range patterns {
		files, err := filepath.Glob(pattern)
		if err != nil || len(files) == 0 {
			t.Fatalf("no files %s: %v", pattern, err)
		}
		for _, file := range files {
			data, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			if !strings.HasSuffix(file, ".txtar") {
				blocks = append(blocks, blockOf(data))
				continue
			}
			for _, f := range txtar.Parse(data).Files {
				blocks = append(blocks, blockOf(f.Data))
			}
		}
	}
	return blocks
}

func blockOf(data []byte) string {
	_, matter, ok := strings.Cut(string(data), "---\n")
	if !ok {
		return string(data)
	}
	block, _, _ := strings.Cut(matter, "\n---")
	return block + "\n"
}

// hostileBlocks gives every hostile text in every place where a text may stand,
// and every hostile block.
func hostileBlocks() []string {
	blocks := strings.Split(hostileMatter, "\n===\n")
	for _, text := range strings.Split(hostileTexts, "\n") {
		for _, place := range []string{
			"a: %s\n", "a: %s # b\n", "- %s\n", "- a: %s\n", "a:\n- %s\nb: c\n", "a:\n  %s\n", "a: {b: %s}\n", "a: [%s, b]\n", "a: [%s",
			"%s: a\n", "- %s: a\n", "a: {%s: b, %[1]s}\n", "a: [{%s}, {%[1]s, %[1]s: }]\n", "%s",
		} {
			blocks = append(blocks, fmt.Sprintf(place, text))
		}
	}
	return blocks
}

// hostileTexts are those that YAML does not take for a text, or that some
// reader of YAML does not (libyaml's resolver; the types of YAML 1.1).
const hostileTexts = `a
010
0
00
08
0.5
1_0
0b101
0o17
0x1F
0x1p-2
1e1
1e-1
1.
1.5
1.5.5
.5
.inf
.nan
-1
- 1
+1
-0
--- a
... a
1:30
1,000
0-1,000 ft
0-1
000 ft
9223372036854775808
99999999999999999999999999
2026-11-25
2026-2-3
2026-02-30
2026-11-25T10:00:00Z
2026-11-25 10:00:00
2026-1
2026-
12 h
6 half-pint jars
½ cup
“quoted”
é: ü
yes
No
on
y
~
null
Null
NULL
nUll
true
True
FALSE
tRUE
<<
=
a:b
a: b
a :b
a : b
a:
:a
: a
::
?a
? a
a#b
a #b
# a
#
&a b
*a
!a b
!!str a
|
>-
@a
%a
a,b
a, b
[a
a]
{a}
[a]
[a, [b], {c: d}]
[a]: b
[a]#
[]
[ ]
[,]
[a,]
[a b]
[a: b]
{}
{a, b: c}
{a:b}
{a: }
{a: [}
{"a":b}
{"a": b}
{'a'}
{: a}
{a:, b}
{a: b}c
"a"
"a" b
"a"b
"a"#
"a" # b
"a\n"
"a'b"
"
""
"a""b"
'a'
'a''b'
'
''
'a': b
"a" : b
' a  b '
  a  b  
a	b
	a
"	"
a\b
it's
5"
`

// hostileMatter are blocks in which indentation, or what stands between lines,
// says more than it seems to.
const hostileMatter = `
===
# a
===
 a: b
===
a: b
 c: d
===
a:
  b
  c
===
a: b
  c
===
a:
 - b
- c
===
a:
- b
 c
===
a:
  - b
  c: d
===
a:
  -
    - b
  -
  - c: d

    e: f
  # g
   # h
  - i:
===
a:
  -
  b: c
===
- - a
===
-   a: b
    c: d
   # e
-
===
a: # b
  # c
c:
===
a:
 b:
  c:
   d:
    e:
     f:
      g:
       h:
        i:
         j:
          k:
           l:
            m:
             n: [[[[o]]]]
===
a: b
a: c
===
a: [b,
  c]
===
a: "b
  c"
===
a: |
  b
===
---
a: b
===
a: b
...
b: c
===
"a": b
? c
===
a: b
b
===
é: [é, ü: {ö: "ä"}, {ö: "ä"}] # ß
===
a: b   
c:   
  d: e  # f
   
g:
===
- a
b
===
%YAML 1.1
a: b
===
a: &b c
d: *b
===
<<: {a: b}
`
