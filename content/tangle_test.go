package content

import (
	"strings"
	"testing"
)

// Marks that Markdown looks at again and again: a long body of any of them is
// read or refused in a blink. Without limits some took minutes.
func TestTangles(t *testing.T) {
	for _, mark := range []string{
		"[", "![", "[a](", "[a](<", "[a](b \"", "[a][b]", "*a ", "**a ", "*a _b ", "a**b", "`", "` `` ", "<", "<a ", "<!--", "<![CDATA[", "<?", "&",
		"&#1", "[^", "[^1]", "> ", ">", "- ", "1. ", "* * ", "~~a ", "|", "\\", "\t", "# ", "#\n", "a\n=\n", "a\n-\n", "---\n", "'a \"b ", "\"", "'",
		"--", "...", "a  \n", "- [ ] a\n", "[a]\n", "[a]: /b\n", "[a]: /b\n\n", "[^a]: x\n\n", "](", "![[]()", "http://a", "```\n", "~~~\n", "<div>\n",
		"| a |\n", "a\n\n", "1. a\n", "1. a\n   - b\n", "[a]: <b>\n\n[a]\n\n",
	} {
		paragraph := strings.Repeat(mark, maxMarks/len(mark)) + "\n\n"
		for _, body := range []string{
			strings.Repeat(mark, maxFile/8/len(mark)), "a\n" + strings.Repeat(mark, maxFile/8/len(mark)),
			strings.Repeat(paragraph, maxFile/16/len(paragraph)),
		} {
			text := "---\nstatus: draft\n---\n" + body
			if r, faults := ReadRecipe("a.md", []byte(text)); len(faults) == 0 && r == nil {
				t.Errorf("%q is neither read nor refused", mark)
			}
		}
	}
}

// What is too tangled is refused at its place, and what is just not is read.
func TestTangleLimits(t *testing.T) {
	const begin = "---\nstatus: draft\n---\n"
	for _, c := range []struct{ name, body, want string }{
		{"marks", strings.Repeat("\"", maxMarks), ""},
		{"marks", "a\n" + strings.Repeat("\"", maxMarks+1), "a.md:5:1001: this paragraph holds more than 1000 times \""},
		{"marks of two paragraphs", strings.Repeat("\"", maxMarks) + "\n\n" + strings.Repeat("\"", maxMarks), ""},
		{"headings", strings.Repeat("# a\n", maxHeadings), ""},
		{"headings", strings.Repeat("# a\n", maxHeadings+1), "a.md:1004:1: the text has more than 1000 headings and rules"},
		{"quotations", strings.Repeat(">", maxNesting) + " a", ""},
		{"quotations", strings.Repeat(">", maxNesting+1) + " a", "a.md:4:1: more than 40 lists and quotations begin in one another on this line"},
		{"lists over lines", stairs(30), ""},
		{"lists over lines", stairs(70), "a.md:62:119: lists, quotations or emphasis stand more than 40 deep in one another"},
		{"addresses", "[a]: /" + strings.Repeat("b", 2000) + strings.Repeat("\n\n[a]", 500), ""},
		{"addresses", "[a]: /" + strings.Repeat("b", 2000) + strings.Repeat("\n\n[a]", 600), "a.md:1054:1: the addresses of all links together hold more than 1024 kB"},
		{"a reference", "a &#252; &amp; &#x2019; &# &#x; &#notone;", ""},
		{"a reference", "a &#27;[31m", "a.md:4:3: &#27 stands for a control character"},
		{"a reference", "a\n&#x202e;", "a.md:5:1: &#x202e stands for a hidden character"},
		{"a reference", "&#0;", "a.md:4:1: &#0 stands for no character"},
		{"a reference", "&#xD800;", "a.md:4:1: &#xD800 stands for no character"},
		{"a reference", "&#99999999999;", "a.md:4:1: &#99999999999 stands for no character"},
	} {
		_, faults := ReadRecipe("a.md", []byte(begin+c.body))
		got := ""
		for _, f := range faults {
			if f.Kind == BadText {
				got = f.Pos.String() + ": " + f.Message
			}
		}
		if got != c.want {
			t.Errorf("%s: got %q, want %q", c.name, got, c.want)
		}
	}
}

// stairs are lists, each an item of the one before.
func stairs(n int) string {
	var b strings.Builder
	for i := range n {
		b.WriteString(strings.Repeat("  ", i) + "- a\n")
	}
	return b.String()
}
