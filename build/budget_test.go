package build

import (
	"bytes"
	"compress/gzip"
	"path"
	"testing"
)

// budget is what the scripts of a page, and its styles, may weigh at most:
// in bytes, compressed as a host sends them.
const budget = 12 << 10

// TestBudgetsOfEveryPage adds up the files of each kind that a page asks for.
func TestBudgetsOfEveryPage(t *testing.T) {
	weights := map[string]int{}
	for _, f := range published(t) {
		if ext := path.Ext(f.Path); ext == ".js" || ext == ".css" {
			weights["/"+f.Path] = compressed(bytesOf(t, f))
		}
	}
	every(t, func(t *testing.T, name string, all []element) {
		script, style := 0, 0
		for _, e := range all {
			switch {
			case e.name == "script" && e.attrs["src"] != "":
				script += weights[e.attrs["src"]]
			case e.name == "link" && e.attrs["rel"] == "stylesheet":
				style += weights[e.attrs["href"]]
			}
		}
		if script == 0 || script >= budget || style == 0 || style >= budget {
			t.Errorf("%s: %d bytes of script and %d of style, compressed; want less than %d of each", name, script, style, budget)
		}
	})
}

func compressed(data []byte) int {
	var b bytes.Buffer
	w, _ := gzip.NewWriterLevel(&b, gzip.BestCompression)
	w.Write(data)
	w.Close()
	return b.Len()
}
