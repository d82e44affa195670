package build

import "testing"

func TestTypeset(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"1/4 in", "¼\u00a0in"},
		{"1 1/2 cups", "1½\u00a0cups"},
		{"2½ cups", "2½\u00a0cups"},
		{"1 h 30 min", "1\u00a0h 30\u00a0min"},
		{"4-5 lb", "4–5\u00a0lb"},
		{"0-1,000 ft", "0–1,000\u00a0ft"},
		{"3 to 4 cups", "3 to 4\u00a0cups"},
		{"1/3 cup", "1/3\u00a0cup"},
		{"⅔ cup", "2/3\u00a0cup"},
		{"1 1/3 cups", "1 1/3\u00a0cups"},
		{"11/2 cups", "11/2\u00a0cups"},
		{"140 °F", "140\u00a0°F"},
		{"6 half-pint jars", "6\u00a0half-pint jars"},
		{"3 tbsp to 1/4 cup", "3\u00a0tbsp to ¼\u00a0cup"},
		{"1/2 cup + 1 tbsp", "½\u00a0cup + 1\u00a0tbsp"},
		{"1 1/2 to 2 1/4 lb", "1½ to 2¼\u00a0lb"},
		{"hot", "hot"},
		{"", ""},
	} {
		if got := typeset(c.text); got != c.want {
			t.Errorf("typeset(%q) = %q, want %q", c.text, got, c.want)
		}
	}
}

func TestList(t *testing.T) {
	for _, c := range []struct {
		words []string
		want  string
	}{
		{nil, ""},
		{[]string{"pints"}, "pints"},
		{[]string{"pints", "quarts"}, "pints and quarts"},
		{[]string{"half-pints", "pints", "quarts"}, "half-pints, pints and quarts"},
	} {
		if got := list(c.words); got != c.want {
			t.Errorf("list(%q) = %q, want %q", c.words, got, c.want)
		}
	}
}
