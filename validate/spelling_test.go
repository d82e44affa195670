package validate

import "testing"

func TestPlural(t *testing.T) {
	tests := []struct{ one, many string }{
		{"plum", "plums"}, {"cherry", "cherries"}, {"peach", "peaches"}, {"radish", "radishes"},
		{"tomato", "tomatoes"}, {"sweet potato", "sweet potatoes"}, {"mango", "mangoes"}, {"leaf", "leaves"},
		{"tray", "trays"}, {"box", "boxes"}, {"watercress", "watercresses"}, {"avocado", "avocados"},
	}
	for _, tt := range tests {
		if got := plural(tt.one); got != tt.many {
			t.Errorf("plural(%q) = %q, want %q", tt.one, got, tt.many)
		}
		if got := singular(tt.many); got != tt.one && tt.one != "leaf" {
			t.Errorf("singular(%q) = %q, want %q", tt.many, got, tt.one)
		}
	}
}

func TestPlain(t *testing.T) {
	for text, want := range map[string]string{
		"plum": "plum", "Jalapeño PURÉE": "jalapeno puree", "5 %": "5 %", "½ crème fraîche": "  creme fraiche",
	} {
		if got := plain(text); got != want {
			t.Errorf("plain(%q) = %q, want %q", text, got, want)
		}
	}
}
