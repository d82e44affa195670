package content

import (
	"bytes"
	"regexp"
	"strings"
)

// marks gives what somebody wrote down to be checked, in order: comments of
// the front matter that begin with "check:", and of the body,
//
//	# check: the kind is guessed from the name
//	#   and goes on with more space
//	<!-- check: write the steps -->
func (d *decoder) marks() []Field[string] {
	var all []Field[string]
	for n := d.first; n < d.closing; n++ {
		at, says := d.mark(n)
		if at < 0 {
			continue
		}
		f := Field[string]{says, Pos{d.file, n, at + 1}}
		for ; n+1 < d.closing && bytes.HasPrefix(bytes.TrimLeft(d.line(n+1), " \t"), []byte("#  ")); n++ {
			f.V += " " + string(bytes.Trim(d.line(n+1), "# \t"))
		}
		all = append(all, f)
	}
	begin := d.matter.body
	for _, m := range markInBody.FindAllSubmatchIndex(d.data[begin:], -1) {
		says := strings.Join(strings.Fields(string(d.data[begin+m[2]:begin+m[3]])), " ")
		all = append(all, Field[string]{says, d.at(begin + m[0])})
	}
	return all
}

var markInBody = regexp.MustCompile(`(?s)<!--\s*check:(.*?)-->`)

// mark gives the place of a mark in a line of the front matter, from 0, and
// what it says; -1 if there is none.
func (d *decoder) mark(n int) (at int, says string) {
	line := d.line(n)
	if !bytes.Contains(line, []byte("check:")) {
		return -1, "" // of most lines
	}
	at = commentIn(line)
	if at < 0 {
		return -1, ""
	}
	text, ok := bytes.CutPrefix(bytes.TrimLeft(line[at:], "# \t"), []byte("check:"))
	if !ok {
		return -1, ""
	}
	return at, string(bytes.TrimSpace(text))
}
