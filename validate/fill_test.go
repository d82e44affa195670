package validate

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/txtar"

	"stillroom/content"
)

var fillDay = content.Date{Year: 2026, Month: 11, Day: 30}

// TestFill fills in the recipe before.md of each testdata/fill/NAME.txtar. It
// wants what stands in after.md, or before.md itself if there is none, and what
// is told of it in told.
func TestFill(t *testing.T) {
	names, _ := filepath.Glob("testdata/fill/*.txtar")
	if len(names) < 10 {
		t.Fatalf("%d cases", len(names))
	}
	for _, name := range names {
		t.Run(strings.TrimSuffix(filepath.Base(name), ".txtar"), func(t *testing.T) {
			ar, err := txtar.ParseFile(name)
			if err != nil {
				t.Fatal(err)
			}
			before := fileOf(ar, "before.md")
			after, told := fillAndTell(before)
			if *update {
				ar.Files = []txtar.File{{Name: "before.md", Data: before}, {Name: "after.md", Data: after}, {Name: "told", Data: []byte(told)}}
				if bytes.Equal(before, after) {
					ar.Files = slices.Delete(ar.Files, 1, 2)
				}
				if err := os.WriteFile(name, txtar.Format(ar), 0o666); err != nil {
					t.Fatal(err)
				}
				return
			}
			want := before
			if fileOf(ar, "after.md") != nil {
				want = fileOf(ar, "after.md")
			}
			if !bytes.Equal(after, want) {
				t.Errorf("got\n%s\nwant\n%s", after, want)
			}
			if want := string(fileOf(ar, "told")); told != want {
				t.Errorf("told\n%s\nwant\n%s", told, want)
			}
			if again, _ := fillAndTell(after); !bytes.Equal(again, after) {
				t.Errorf("filled in twice it became\n%s", again)
			}
			marked := append([]byte("\uFEFF"), bytes.ReplaceAll(before, []byte("\n"), []byte("\r\n"))...)
			if got, _ := fillAndTell(marked); !bytes.Equal(got, append([]byte("\uFEFF"), bytes.ReplaceAll(want, []byte("\n"), []byte("\r\n"))...)) {
				t.Errorf("with a byte order mark and CRLF it became\n%q", got)
			}
		})
	}
}

func fileOf(ar *txtar.Archive, name string) []byte {
	for _, f := range ar.Files {
		if f.Name == name {
			return f.Data
		}
	}
	return nil
}

// fillAndTell gives the file as it is afterwards, and a line for each thing
// that is told.
func fillAndTell(before []byte) (after []byte, told string) {
	f, refused := Fill("before.md", before, fillDay)
	var b strings.Builder
	for _, r := range refused {
		fmt.Fprintf(&b, "refused: %s\n    %s\n", r, r.Advice)
	}
	for _, w := range f.Written {
		fmt.Fprintf(&b, "wrote: %s\n", w)
	}
	for _, l := range f.Left {
		fmt.Fprintf(&b, "left: %s\n", l)
	}
	for _, r := range f.Remarks {
		fmt.Fprintf(&b, "remark: %s\n", r)
	}
	if refused != nil {
		return before, b.String()
	}
	return f.Data, b.String()
}

// The figures that fill writes are taken from each canned recipe of the
// example, one at a time, or made too low, or made into what cannot be read. It
// puts back every byte.
func TestFillExample(t *testing.T) {
	names, _ := filepath.Glob("../content/recipes/*.md")
	mutations := 0
	for _, name := range names {
		original, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		if r, _ := content.ReadRecipe("content/recipes/a.md", original); r.Withdrawn != nil {
			continue // its figures were wrong
		}
		t.Run(strings.TrimSuffix(filepath.Base(name), ".md"), func(t *testing.T) {
			wantFilled(t, "as it is", original, original)
			full := fillEmptied(t, original)
			for _, m := range mutationsOf(full) {
				wantFilled(t, m.say, m.text, full)
				mutations++
			}
		})
	}
	if mutations < 300 {
		t.Errorf("only %d figures were looked at", mutations)
	}
}

func wantFilled(t *testing.T, say string, text, want []byte) {
	t.Helper()
	f, refused := Fill("content/recipes/a.md", text, fillDay)
	if refused != nil {
		t.Errorf("%s: refused %v", say, refused)
		return
	}
	if !bytes.Equal(f.Data, want) {
		t.Errorf("%s: got\n%s\nwant\n%s", say, matterOf(f.Data), matterOf(want))
	}
}

func matterOf(text []byte) []byte { return text[:bytes.LastIndex(text, []byte("\n---"))] }

// fillable are the keys that fill writes without a choice, and what may not be
// read in their place.
var fillable = []string{"pack", "headspace", "processing", "altitude", "time", "dial", "weighted"}

// fillEmptied takes every figure out of a recipe and fills in, so that all of it
// is written as fill writes it.
func fillEmptied(t *testing.T, text []byte) []byte {
	r, _ := content.ReadRecipe("content/recipes/a.md", text)
	for i := len(r.Keeping) - 1; i >= 0; i-- {
		if k := &r.Keeping[i]; k.Way.V.Canned() {
			for _, key := range []string{"processing", "headspace", "pack"} {
				text = withoutKey(text, k.Keys[key])
			}
		}
	}
	f, refused := Fill("content/recipes/a.md", text, fillDay)
	if refused != nil || len(f.Left) > 0 {
		t.Fatalf("refused %v, left %v", refused, f.Left)
	}
	return f.Data
}

// withoutKey takes away the lines of a key that stands on a line of its own.
func withoutKey(text []byte, at content.Pos) []byte {
	lines := bytes.SplitAfter(text, []byte("\n"))
	end := at.Line
	for len(lines[end]) > at.Col-1 && len(bytes.TrimLeft(lines[end][:at.Col], " ")) == 0 {
		end++
	}
	return bytes.Join(slices.Delete(lines, at.Line-1, end), nil)
}

type mutation struct {
	say  string
	text []byte
}

// mutationsOf takes away or spoils one figure after the other.
func mutationsOf(text []byte) []mutation {
	var all []mutation
	r, _ := content.ReadRecipe("content/recipes/a.md", text)
	add := func(say string, text []byte) { all = append(all, mutation{say, text}) }
	for i := range r.Keeping {
		k := &r.Keeping[i]
		if !k.Way.V.Canned() {
			continue
		}
		for _, key := range fillable {
			if at, ok := k.Keys[key]; ok {
				add(fmt.Sprintf("without %s of %s", key, k.Way.V), withoutKey(text, at))
			}
		}
		add("unreadable headspace", replaceValue(text, k.Headspace.Pos, k.Headspace.V.Text, "a finger"))
		add("another headspace", replaceValue(text, k.Headspace.Pos, k.Headspace.V.Text, "3/4 in"))
		for _, p := range k.Processing {
			for key, at := range p.Keys {
				if key != "jar" {
					add(fmt.Sprintf("without %s of %s", key, p.Jar.V), withoutKey(text, at))
				}
			}
			for _, b := range p.Altitude {
				add(fmt.Sprintf("%s jars, without %s", p.Jar.V, b.Text), withoutKey(text, b.Pos))
				add(fmt.Sprintf("%s jars, too short at %s", p.Jar.V, b.Text), replaceValue(text, b.Value.Pos, b.Value.V.Text, "4 min"))
				add(fmt.Sprintf("%s jars, no unit at %s", p.Jar.V, b.Text), replaceValue(text, b.Value.Pos, b.Value.V.Text, "4"))
			}
			for _, b := range slices.Concat(p.Dial, p.Weighted) {
				add(fmt.Sprintf("%s jars, without %s", p.Jar.V, b.Text), withoutKey(text, b.Pos))
				add(fmt.Sprintf("%s jars, too low at %s", p.Jar.V, b.Text), replaceValue(text, b.Value.Pos, b.Value.V.Text, "4 psi"))
			}
			if p.Time.Set() {
				add(fmt.Sprintf("%s jars, too short", p.Jar.V), replaceValue(text, p.Time.Pos, p.Time.V.Text, "4 min"))
			}
		}
	}
	return all
}

func replaceValue(text []byte, at content.Pos, old, by string) []byte {
	lines := bytes.SplitAfter(text, []byte("\n"))
	line := lines[at.Line-1]
	lines[at.Line-1] = slices.Concat(line[:at.Col-1], []byte(by), line[at.Col-1+len(old):])
	return bytes.Join(lines, nil)
}
