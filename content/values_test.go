package content

import (
	"bytes"
	"fmt"
	"path/filepath"
	"reflect"
	"sort"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/txtar"
)

// TestValues reads every file of every archive in testdata/values, and
// compares what was read, and where it stood, with those of its last file,
// want. None of them may hold a fault.
func TestValues(t *testing.T) {
	archives, err := filepath.Glob("testdata/values/*.txtar")
	if err != nil || len(archives) == 0 {
		t.Fatalf("no archives in testdata/values: %v", err)
	}
	for _, file := range archives {
		t.Run(strings.TrimSuffix(filepath.Base(file), ".txtar"), func(t *testing.T) {
			a, err := txtar.ParseFile(file)
			if err != nil {
				t.Fatal(err)
			}
			var got bytes.Buffer
			for _, f := range a.Files[:len(a.Files)-1] {
				name, data := unescape(t, f)
				v, faults := readAs(name, data)
				var told bytes.Buffer
				writeFaults(&told, faults, false)
				if told.Len() > 0 {
					t.Errorf("faults where none are wanted:\n%s", &told)
				}
				fmt.Fprintf(&got, "# %s\n", name)
				writeValues(&got, "", reflect.ValueOf(v).Elem())
			}
			compareLast(t, file, a, got.Bytes())
		})
	}
}

// readAs reads a file as what its folder says it is.
func readAs(name string, data []byte) (v any, faults []Fault) {
	switch folder, _, _ := strings.Cut(name, "/"); folder {
	case "episodes":
		return ReadEpisode(name, data)
	case "pages":
		return ReadPage(name, data)
	case "site.yaml":
		s, faults := ReadSettings(name, data)
		return &s, faults
	}
	return ReadRecipe(name, data)
}

// writeValues writes every value that was set, a line each: its path, its
// place, and what it is.
func writeValues(b *bytes.Buffer, path string, v reflect.Value) {
	switch v.Kind() {
	case reflect.Pointer:
		if !v.IsNil() {
			writeValues(b, path, v.Elem())
		}
	case reflect.Slice:
		for i := range v.Len() {
			writeValues(b, fmt.Sprintf("%s[%d]", path, i), v.Index(i))
		}
	case reflect.Map:
		writePlaces(b, path, v.Interface().(map[string]Pos))
	case reflect.Struct:
		writeStruct(b, path, v)
	}
}

func writeStruct(b *bytes.Buffer, path string, v reflect.Value) {
	switch s := v.Interface().(type) {
	case Pos:
		if s.Line > 0 {
			fmt.Fprintf(b, "%s %d:%d\n", path, s.Line, s.Col)
		}
		return
	case Body:
		writeMethod(b, s)
		return
	case Ingredient:
		fmt.Fprintf(b, "%s %d:%d %q item %q note %q optional %t\n", path, s.Pos.Line, s.Pos.Col, s.Text, s.Item, s.Note, s.Optional)
		return
	}
	if v.FieldByName("Low").IsValid() { // a Quantity, or made of one
		if text := show(v); text != `""` {
			fmt.Fprintf(b, "%s %s\n", path, text)
		}
		return
	}
	if v.NumField() == 2 && v.Type().Field(0).Name == "V" {
		if p := v.Field(1).Interface().(Pos); p.Line > 0 {
			fmt.Fprintf(b, "%s %d:%d %s\n", path, p.Line, p.Col, show(v.Field(0)))
		}
		return
	}
	for i := range v.NumField() {
		if f := v.Field(i); f.Kind() == reflect.String && f.Len() > 0 {
			fmt.Fprintf(b, "%s.%s %q\n", path, v.Type().Field(i).Name, f)
		}
		writeValues(b, strings.TrimPrefix(path+"."+v.Type().Field(i).Name, "."), v.Field(i))
	}
}

// show gives a value as its type tells it: the text of a measure, the word, the
// day.
func show(v reflect.Value) string {
	if v.Kind() == reflect.Struct {
		if text := v.FieldByName("Text"); text.IsValid() {
			return fmt.Sprintf("%q", text)
		}
	}
	if v.Kind() == reflect.String {
		return fmt.Sprintf("%q", v)
	}
	return fmt.Sprint(v)
}

func writePlaces(b *bytes.Buffer, path string, places map[string]Pos) {
	var list []string
	for key, p := range places {
		list = append(list, fmt.Sprintf("%s=%d:%d", key, p.Line, p.Col))
	}
	sort.Strings(list)
	fmt.Fprintf(b, "%s %s\n", path, strings.Join(list, " "))
}

func writeMethod(b *bytes.Buffer, body Body) {
	fmt.Fprintf(b, "Body %d:%d\n", body.Pos.Line, body.Pos.Col)
	for _, p := range body.Method {
		fmt.Fprintf(b, "part %d:%d %q\n", p.Pos.Line, p.Pos.Col, p.Heading)
		for _, s := range p.Steps {
			fmt.Fprintf(b, "step %d:%d %s\n", s.Pos.Line, s.Pos.Col, s.Text)
		}
	}
}
