package content

import "testing"

func TestSlug(t *testing.T) {
	for _, c := range []struct{ name, want string }{
		{"damson-jam", "damson-jam"},
		{"Damson Jam", "damson-jam"},
		{"damson_jam (2)", "damson-jam-2"},
		{"  --Damson--  jam!", "damson-jam"},
		{"Aunt's jam", "aunts-jam"},
		{"Aunt’s jam", "aunts-jam"},
		{"crème fraîche", "creme-fraiche"},
		{"cre\u0300me", "creme"}, // as some systems write names: a letter, then its accent
		{"Zwetschgenröster", "zwetschgenroester"},
		{"Süßmost", "suessmost"},
		{"syltetøj", "syltetoej"},
		{"ćwikła", "cwikla"},
		{"½ batch", "batch"},
		{"Con", "con-1"},
		{"LPT 9", "lpt-9"},
		{"lpt9", "lpt9-1"},
		{"com10", "com10"},
		{"nul-free", "nul-free"},
		{"漬物", ""},
		{"", ""},
	} {
		got := Slug(c.name)
		if got != c.want {
			t.Errorf("Slug(%q) = %q, want %q", c.name, got, c.want)
		}
		if got != "" && !isSlug(got) {
			t.Errorf("Slug(%q) = %q, which is none", c.name, got)
		}
	}
}

func TestIsSlug(t *testing.T) {
	for s, want := range map[string]bool{
		"damson-jam": true, "7": true, "a--b": true, "-a": true,
		"": false, "-": false, "Damson": false, "a b": false, "a_b": false, "crème": false, "a/b": false, "a.b": false,
	} {
		if got := isSlug(s); got != want {
			t.Errorf("isSlug(%q) = %t, want %t", s, got, want)
		}
	}
}
