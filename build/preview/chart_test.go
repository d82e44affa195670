package preview

import (
	"bytes"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/rogpeppe/go-internal/txtar"

	"stillroom/content"
)

var update = flag.Bool("update", false, "write the charts into testdata")

// Each file of testdata/charts holds a text and, under want, the part of its
// page that shows the value in each line.
func TestCharts(t *testing.T) {
	names, err := filepath.Glob("testdata/charts/*.txtar")
	if err != nil || len(names) < 3 {
		t.Fatal("no testdata", err)
	}
	for _, name := range names {
		ar, err := txtar.ParseFile(name)
		if err != nil {
			t.Fatal(err)
		}
		file := ar.Files[0]
		c := chartOf(newText(file.Name, content.SortOf(file.Name), file.Data))
		var got strings.Builder
		for i, text := range bytes.Split(bytes.TrimSuffix(file.Data, []byte("\n")), []byte("\n")) {
			col := len(text) - len(bytes.TrimLeft(text, " -")) + 1
			if key := bytes.Index(text, []byte(": ")); key > 0 {
				col = key + 3 // the value
			}
			found := c.find(content.Pos{File: file.Name, Line: i + 1, Col: col})
			fmt.Fprintf(&got, "%-60s %s\n", text[:min(len(text), 60)], found)
		}
		if *update {
			ar.Files = []txtar.File{file, {Name: "want", Data: []byte(got.String())}}
			if err := os.WriteFile(name, txtar.Format(ar), 0o666); err != nil {
				t.Fatal(err)
			}
			continue
		}
		if diff := cmp.Diff(string(ar.Files[1].Data), got.String()); diff != "" {
			t.Errorf("%s (-want +got):\n%s", name, diff)
		}
	}
}

// String gives the steps as a selector of CSS, more or less.
func (s spot) String() string {
	var steps []string
	for _, st := range s {
		steps = append(steps, strings.TrimSuffix(fmt.Sprintf("%s#%d %s", st.sel, st.nth, st.text), " "))
	}
	return strings.Join(steps, " / ")
}

// Of several values in one line each has its own place.
func TestChartInOneLine(t *testing.T) {
	const text = "---\nname: Plum\nkeeping: [{way: freezer, headspace: 1/2 in, keeps: 12 months}]\n---\n"
	c := chartOf(newText(plumFile, content.ARecipe, []byte(text)))
	for key, want := range map[string]string{"headspace": "Headspace", "1/2": "Headspace", "keeps": "Keeps", "way": ""} {
		col := strings.Index(strings.Split(text, "\n")[2], key) + 1
		if got := c.find(content.Pos{File: plumFile, Line: 3, Col: col}); got[len(got)-1].text != want {
			t.Errorf("%s is at %s", key, got)
		}
	}
	if got := c.find(content.Pos{File: plumFile, Line: 1, Col: 1}); got != nil {
		t.Errorf("the beginning of the file is at %s", got)
	}
	if got := c.find(content.Pos{File: plumFile}); got != nil {
		t.Errorf("the whole file is at %s", got)
	}
}
