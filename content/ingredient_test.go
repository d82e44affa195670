package content

import (
	"bytes"
	"fmt"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

const ingredientTable = "testdata/ingredients.txt"

// TestParseIngredient reads the lines of the table, and compares what was read
// with what stands under each.
func TestParseIngredient(t *testing.T) {
	want, err := os.ReadFile(ingredientTable)
	if err != nil {
		t.Fatal(err)
	}
	var got bytes.Buffer
	count := 0
	for text := range strings.Lines(string(want)) {
		if strings.HasPrefix(text, "\t") {
			continue
		}
		got.WriteString(text)
		if line := tableLine(t, text); line != "" {
			fmt.Fprintf(&got, "\t%s\n", readingOf(ParseIngredient(line)))
			count++
		}
	}
	if *update {
		want = got.Bytes()
		if err := os.WriteFile(ingredientTable, want, 0o666); err != nil {
			t.Fatal(err)
		}
	}
	if diff := cmp.Diff(strings.Split(string(want), "\n"), strings.Split(got.String(), "\n")); diff != "" {
		t.Errorf("-want +got:\n%s", diff)
	}
	t.Logf("%d lines read", count)
}

// tableLine gives the ingredient line of a line of the table, nothing for a
// heading. A backslash stands for a character that no editor shows.
func tableLine(t testing.TB, text string) string {
	t.Helper()
	text = strings.TrimSuffix(text, "\n")
	if strings.HasPrefix(text, "%") || strings.HasPrefix(text, "\t") {
		return ""
	}
	if !strings.Contains(text, `\`) {
		return text
	}
	line, err := strconv.Unquote(`"` + text + `"`)
	if err != nil {
		t.Fatalf("%s: %v", text, err)
	}
	return line
}

// readingOf writes down what was read of a line. Numbers are exact fractions.
func readingOf(i Ingredient) string {
	var parts []string
	add := func(name, text string) {
		if text != "" {
			parts = append(parts, name+" "+text)
		}
	}
	add("amount", exactly(i.Amount))
	add("manner", i.Manner)
	add("each", exactly(i.Each))
	for _, q := range i.Same {
		add("same", exactly(q))
	}
	add("item", i.Item)
	add("note", i.Note)
	if i.Optional {
		parts = append(parts, "optional")
	}
	if i.ToTaste {
		parts = append(parts, "to taste")
	}
	add("unread", i.Unread)
	return strings.Join(parts, " | ")
}

// exactly writes down a quantity, nothing if there is none.
func exactly(q Quantity) string {
	if q.IsZero() {
		return ""
	}
	s := q.Low.RatString()
	if q.IsRange() {
		s += " to " + q.High.RatString()
	}
	return strings.TrimSpace(s + " " + string(q.Unit))
}

// ingredientLines gives every line of the table.
func ingredientLines(t testing.TB) (lines []string) {
	data, err := os.ReadFile(ingredientTable)
	if err != nil {
		t.Fatal(err)
	}
	for text := range strings.Lines(string(data)) {
		if line := tableLine(t, text); line != "" {
			lines = append(lines, line)
		}
	}
	return lines
}

func TestParseIngredientKeepsText(t *testing.T) {
	for _, line := range ingredientLines(t) {
		checkIngredient(t, line)
	}
}

// checkIngredient checks what holds of every line.
func checkIngredient(t *testing.T, line string) {
	t.Helper()
	i := ParseIngredient(line)
	if (i.Item == "") != (i.Text == "") {
		t.Errorf("%q: item %q", line, i.Item)
	}
	if !strings.Contains(i.Text, i.Unread) && len(line) <= longestLine {
		t.Errorf("%q: unread %q is no piece of it", line, i.Unread)
	}
	for _, q := range append(i.Same, i.Amount, i.Each) {
		switch {
		case q.IsZero():
			continue
		case !strings.Contains(i.Text, q.Text):
			t.Errorf("%q: amount %q is no piece of it", line, q.Text)
		case q.Low.Cmp(q.High) > 0 || q.Low.Sign() < 0 || q.High.Sign() == 0:
			t.Errorf("%q: amount %s", line, exactly(q))
		}
	}
	if !i.Amount.IsZero() && i.ToTaste {
		t.Errorf("%q: both an amount and to taste", line)
	}
}

// A line that was read once reads the same with other spaces.
func TestParseIngredientSpaces(t *testing.T) {
	for _, line := range ingredientLines(t) {
		want := readingOf(ParseIngredient(line))
		for _, space := range []string{"  ", "\u00a0", "\t", "\u2009"} {
			spaced := strings.ReplaceAll(line, " ", space)
			if got := readingOf(ParseIngredient(spaced)); got != want {
				t.Errorf("%q:\n got %s\nwant %s", spaced, got, want)
			}
		}
	}
}

func BenchmarkParseIngredient(b *testing.B) {
	for _, line := range []string{
		"6 cups damson plums, halved",
		"1 1/2 cups (225 g) sugar, divided",
		"2 x 400 g tins chopped tomatoes",
		"4 large apples, peeled and cored",
		"juice of 2 lemons",
	} {
		b.Run(line, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				ParseIngredient(line)
			}
		})
	}
}

func ExampleParseIngredient() {
	i := ParseIngredient("1 1/2 cups (340 g) sugar, divided")
	fmt.Println("amount:", i.Amount)
	fmt.Println("same:", i.Same[0])
	fmt.Println("item:", i.Item)
	fmt.Println("note:", i.Note)

	i = ParseIngredient("1,5 kg damsons")
	fmt.Println("item:", i.Item)
	fmt.Println("unread:", i.Unread)
	// Output:
	// amount: 1 1/2 cups
	// same: 340 g
	// item: sugar
	// note: divided
	// item: damsons
	// unread: 1,5 kg
}
