package validate

import "testing"

func TestPhraseBookTakesTheLongest(t *testing.T) {
	b := newPhraseBook()
	b.add("sweet potato", meaning{produce: 1})
	b.add("potato", meaning{produce: 2})
	b.add("mashed potato=", meaning{produce: 3})
	if b.add("potato", meaning{produce: 4}) {
		t.Error("a phrase was taken twice")
	}
	tests := []struct {
		text string
		want int
	}{
		{"potatoes", 2}, {"SWEET POTATOES", 1}, {"sweet, ripe potatoes", 2}, {"sweet small potatoes", 2},
		{"potatoes, sweet potatoes", 2}, {"sweet potatoes and potatoes", 1}, {"mashed potato", 3},
		{"mashed potatoes", 2}, {"sweet", 0}, {"", 0}, {"with potatoes", 2},
	}
	for _, tt := range tests {
		if m, _ := b.head(b.cut(tt.text, nil)); m.produce != tt.want {
			t.Errorf("%q means %d, want %d", tt.text, m.produce, tt.want)
		}
	}
}
