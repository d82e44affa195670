package content

import "testing"

func TestWithAmount(t *testing.T) {
	for _, c := range []struct {
		amount, line               string
		wantAmount, item, wantText string
		taste                      bool
		unread                     string
	}{
		{"1 1/2 cups", "sugar, divided", "1 1/2 cups", "sugar", "1 1/2 cups sugar, divided", false, ""},
		{"2 x 400 g tins", "plums", "2", "plums", "2 x 400 g tins plums", false, ""},
		{"6 large", "eggs", "6", "large eggs", "6 large eggs", false, ""},
		{"1 cup (225 g)", "sugar", "1 cup", "sugar", "1 cup (225 g) sugar", false, ""},
		{"", "salt", "", "salt", "salt", false, ""},
		{"to taste", "salt", "", "salt", "salt, to taste", true, ""},
		{"plenty", "salt", "", "salt", "plenty salt", false, "plenty"},
	} {
		i := withAmount(c.amount, c.line)
		if i.Amount.Text != c.wantAmount || i.Item != c.item || i.Text != c.wantText || i.ToTaste != c.taste || i.Unread != c.unread {
			t.Errorf("withAmount(%q, %q) = %q of %q, text %q, to taste %t, unread %q",
				c.amount, c.line, i.Amount.Text, i.Item, i.Text, i.ToTaste, i.Unread)
		}
	}
}
