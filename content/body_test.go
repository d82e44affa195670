package content

import (
	"bytes"
	"strings"
	"testing"

	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/renderer"
	"github.com/yuin/goldmark/util"
)

func readBody(markdown string) Body {
	p, _ := ReadPage("content/pages/a.md", []byte("---\nname: A\n---\n"+markdown))
	return p.Body
}

func TestHTML(t *testing.T) {
	for _, c := range []struct{ markdown, want string }{
		{"*Hot* **jars**.", "<p><em>Hot</em> <strong>jars</strong>.</p>\n"},
		{"## The brine\n\n## The brine", "<h2>The brine</h2>\n<h2>The brine</h2>\n"},
		{"~~old~~", "<p><del>old</del></p>\n"},
		{"- [x] done", "<ul>\n<li><input checked=\"\" disabled=\"\" type=\"checkbox\"> done</li>\n</ul>\n"},
		{"| a |\n| - |\n| b |", "<table>\n<thead>\n<tr>\n<th>a</th>\n</tr>\n</thead>\n<tbody>\n<tr>\n<td>b</td>\n</tr>\n</tbody>\n</table>\n"},
		{`"quoted" -- it's...`, "<p>&ldquo;quoted&rdquo; &ndash; it&rsquo;s&hellip;</p>\n"},
		{"https://example.org is no link", "<p>https://example.org is no link</p>\n"},
		{"<script>alert(1)</script>", "<!-- raw HTML omitted -->\n"},
		{"a <b>c</b>", "<p>a <!-- raw HTML omitted -->c<!-- raw HTML omitted --></p>\n"},
		{"[a](javascript:alert(1))", "<p><a href=\"\">a</a></p>\n"},
	} {
		b := readBody(c.markdown)
		if got := string(b.HTML(b.Doc)); got != c.want {
			t.Errorf("HTML of %q:\n got %q\nwant %q", c.markdown, got, c.want)
		}
	}
}

// One node of a body can be written by itself, and a footnote leads to its
// text.
func TestHTMLOfNode(t *testing.T) {
	b := readBody("1. Boil *hard*.\n2. Fill.[^1]\n\n[^1]: Leave room.\n")
	want := "<li>Boil <em>hard</em>.</li>\n"
	if got := string(b.HTML(b.Method[0].Steps[0].Node)); got != want {
		t.Errorf("HTML of a step = %q, want %q", got, want)
	}
	if got := b.HTML(b.Doc); !bytes.Contains(got, []byte(`href="#fn:1"`)) || !bytes.Contains(got, []byte("Leave room.")) {
		t.Errorf("the footnote is lost: %s", got)
	}
}

// Texts that touch are one node.
func TestTextNodes(t *testing.T) {
	for _, c := range []struct{ markdown, want string }{
		{"Boil, stir. Skim -well-.", "Boil, stir. Skim -well-."},
		{"A *b.c*, d. Then [e. f](/g/).", "A |b.c|, d. Then |e. f|."},
		{"Hot. Jars.\nCold. Lids.  \nDone.", "Hot. Jars.|Cold. Lids.|Done."},
		{"a\\\nb_c ![d.] \\*e. &frac14; f.", "a|b_c ![d.] \\*e. &frac14; f."},
		{"\\\n.", "|."},
		{"", ""},
	} {
		b := readBody(c.markdown)
		var texts []string
		ast.Walk(b.Doc, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
			if text, ok := n.(*ast.Text); ok && entering {
				texts = append(texts, string(text.Value(b.Source)))
			}
			return ast.WalkContinue, nil
		})
		if got := strings.Join(texts, "|"); got != c.want {
			t.Errorf("texts of %q:\n got %q\nwant %q", c.markdown, got, c.want)
		}
	}
}

// loudHeadings writes headings in its own way.
type loudHeadings struct{}

func (loudHeadings) RegisterFuncs(r renderer.NodeRendererFuncRegisterer) {
	r.Register(ast.KindHeading, func(w util.BufWriter, _ []byte, _ ast.Node, entering bool) (ast.WalkStatus, error) {
		if entering {
			w.WriteString("<loud>")
		} else {
			w.WriteString("</loud>\n")
		}
		return ast.WalkContinue, nil
	})
}

func TestNewRenderer(t *testing.T) {
	b := readBody("# Hot\n\n~~cold~~\n")
	var buf bytes.Buffer
	if err := NewRenderer(loudHeadings{}).Render(&buf, b.Source, b.Doc); err != nil {
		t.Fatal(err)
	}
	if got, want := buf.String(), "<loud>Hot</loud>\n<p><del>cold</del></p>\n"; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}

// A body is read whatever is wrong with the front matter above it.
func TestBodyBelowBrokenMatter(t *testing.T) {
	r, faults := ReadRecipe("a.md", []byte("---\nname: @\n---\n1. Boil.\n"))
	if len(faults) != 1 || faults[0].Kind != FrontMatter {
		t.Errorf("faults %v, want one of the front matter", faults)
	}
	if len(r.Body.Method) != 1 || r.Body.Method[0].Steps[0].Pos != (Pos{"a.md", 4, 4}) {
		t.Errorf("the method is lost: %v", r.Body.Method)
	}
}
