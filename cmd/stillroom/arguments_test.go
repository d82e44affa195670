package main

import (
	"reflect"
	"slices"
	"strings"
	"testing"

	"github.com/alecthomas/kong"
)

func TestSpread(t *testing.T) {
	tests := []struct{ in, want string }{
		{"check larder --strict", "check larder --strict"},
		{"check --only a", "check --only=a"},
		{"check larder --only a b --strict", "check larder --only=a --only=b --strict"},
		{"check --only a --only b c", "check --only=a --only=b --only=c"},
		{"check --only=a b", "check --only=a b"},
		{"check --strict larder", "check --strict larder"},
		{"check --only", "check --only"},
		{"check --only --strict", "check --only --strict"},
		{"scale jam.md --by -1", "scale jam.md --by=-1"},
		{"scale jam.md --measures=us -1", "scale jam.md --measures=us -1"},
	}
	for _, test := range tests {
		if got := spread(strings.Fields(test.in)); !slices.Equal(got, strings.Fields(test.want)) {
			t.Errorf("spread(%q) = %q, want %q", test.in, got, test.want)
		}
	}
}

// Every command stands on the page of usage and has a page of its own, with an
// example that may be typed.
func TestHelp(t *testing.T) {
	parser := kong.Must(&commands{}, kong.NoDefaultHelp())
	names := make(map[string]bool)
	for _, node := range parser.Model.Leaves(false) {
		names[node.Name] = true
		page := pages[node.Name]
		if !strings.Contains(usage, "\n    "+node.Name+" ") {
			t.Errorf("usage does not list %s", node.Name)
		}
		for _, f := range node.Flags {
			if !strings.Contains(page, "--"+f.Name) {
				t.Errorf("the page of %s does not tell of --%s", node.Name, f.Name)
			}
		}
		_, example, ok := strings.Cut(strings.ToLower(page), "or example")
		_, line, _ := strings.Cut(strings.ReplaceAll(example, "\\\n", ""), "\n    stillroom ")
		line, _, _ = strings.Cut(line, "\n")
		if _, err := parse(strings.Fields(line)); !ok || err != nil {
			t.Errorf("the page of %s has the example %q: %v", node.Name, line, err)
		}
	}
	for name := range pages {
		if !names[name] {
			t.Errorf("a page tells of %s, which is no command", name)
		}
	}
}

func TestParse(t *testing.T) {
	tests := []struct {
		args string
		want command
	}{
		{"check", &checkCommand{Site: ".", Format: "text"}},
		{"check --strict larder --format=json", &checkCommand{Site: "larder", Format: "json", Strict: true}},
		{"check --only a,b c", &checkCommand{Site: ".", Format: "text", Only: []string{"a,b", "c"}}},
		{"publish larder --to out", &publishCommand{Site: "larder", To: "out"}},
		{"processes green beans", &processesCommand{Words: []string{"green", "beans"}}},
		{"rules", &rulesCommand{}},
	}
	for _, test := range tests {
		got, err := parse(strings.Fields(test.args))
		if err != nil || !reflect.DeepEqual(got, test.want) {
			t.Errorf("parse(%q) = %+v, %v; want %+v", test.args, got, err, test.want)
		}
	}
}
