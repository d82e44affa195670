package build

import (
	"strings"
	"testing"
)

func TestSlug(t *testing.T) {
	for _, c := range []struct{ name, want string }{
		{"plums", "plums"},
		{"Damson Plums", "damson-plums"},
		{"  red   onions, small ", "red-onions-small"},
		{"jalapeño peppers", "jalapeno-peppers"},
		{"œufs & crème", "oeufs-creme"},
		{"Weißkohl", "weisskohl"},
		{"Quetschen für Gsälz", "quetschen-fuer-gsaelz"},
		{"bird's eye chilies", "bird-s-eye-chilies"},
		{"梅", "u6885"},
		{"../../etc", "etc"},
		{"", ""},
	} {
		if got := slug(c.name); got != c.want {
			t.Errorf("slug(%q) = %q, want %q", c.name, got, c.want)
		}
	}
	if len([]rune(accented)) != len(unaccented) {
		t.Errorf("%d accented letters, %d for them", len([]rune(accented)), len(unaccented))
	}
}

// Windows has no files of some names, with whatever ending.
func TestPortable(t *testing.T) {
	for name, want := range map[string]string{"Aux.jpg": "aux-1", "nul": "nul-1", "con man.png": "con-man", "plums.jpg": "plums", "com1.mp3": "com1-1", strings.Repeat("梅", 80) + ".jpg": strings.Repeat("u6885", 40)} {
		if got := stem(name); got != want {
			t.Errorf("stem(%q) = %q, want %q", name, got, want)
		}
	}
	if got, want := produceAddress("con"), "/produce/con-1/"; got != want {
		t.Errorf("got %s, want %s", got, want)
	}
}

func TestInternal(t *testing.T) {
	for _, c := range []struct {
		address string
		want    bool
	}{
		{"/recipes/damson-jam/", true},
		{"recipes/damson-jam/#step-2", true},
		{"#step-2", false},
		{"https://a.example/", false},
		{"//a.example/", false},
		{"mailto:ada@a.example", false},
	} {
		if got := internal(c.address); got != c.want {
			t.Errorf("internal(%q) = %v, want %v", c.address, got, c.want)
		}
	}
}
