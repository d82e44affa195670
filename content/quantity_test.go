package content

import (
	"fmt"
	"math/big"
	"strings"
	"testing"
)

func TestParseQuantity(t *testing.T) {
	for _, tt := range []struct{ text, want string }{
		{"6", "6"},
		{"0", "0"},
		{"1.5", "3/2"},
		{"0.5", "1/2"},
		{".5", "1/2"},
		{"4,500", "4500"},
		{"1,234,567", "1234567"},
		{"999999999999", "999999999999"},
		{"3.00000000001", "300000000001/100000000000"},
		{"1/2", "1/2"},
		{"½", "1/2"},
		{"⅓", "1/3"},
		{"1 1/2", "3/2"},
		{"1½", "3/2"},
		{"1 ½", "3/2"},
		{"1-1/2", "3/2"},
		{"1-½", "3/2"},
		{"1⁄3", "1/3"},
		{"1 and 1/2", "3/2"},
		{" 6 ", "6"},
		{"6\u00a0cups", "6 cup"},
		{"1 1/2 cups", "3/2 cup"},
		{"350 g", "350 g"},
		{"350g", "350 g"},
		{"2 qt", "2 quart"},
		{"4-5 cups", "4 to 5 cup"},
		{"4 to 5 cups", "4 to 5 cup"},
		{"4–5", "4 to 5"},
		{"4 — 5", "4 to 5"},
		{"4-4 cups", "4 cup"},
		{"1/4-1/2 in", "1/4 to 1/2 in"},
		{"1-1 1/2 in", "1 to 3/2 in"},
		{"1-1/2-2 cups", "3/2 to 2 cup"},
		{"3- to 4-inch", "3 to 4 in"},
		{"500 g-1 kg", "500 to 1000 g"},
		{"45 min to 1 h 15 min", "45 to 75 min"},
		{"1 h 30 min", "90 min"},
		{"1 hour and 30 minutes", "90 min"},
		{"1 hr, 30 mins", "90 min"},
		{"1 week 2 days 3 h 30 min", "13170 min"},
		{"1 lb 4 oz", "20 oz"},
		{"1 cup + 2 tbsp", "18 tbsp"},
		{"1 tbsp plus 4 tsp", "7 tsp"},
		{"2 tins", "2 tin"},
	} {
		q, err := ParseQuantity(tt.text)
		if got := exactly(q); err != nil || got != tt.want {
			t.Errorf("ParseQuantity(%q) = %q, %v, want %q", tt.text, got, err, tt.want)
		}
		if q.Text != strings.TrimSpace(tt.text) {
			t.Errorf("ParseQuantity(%q).Text = %q", tt.text, q.Text)
		}
	}
}

// Equal numbers share their memory. Numbers that would lie in one place of it
// do not become each other.
func TestNumbersShared(t *testing.T) {
	read := func(s string) *big.Rat {
		q, err := ParseQuantity(s)
		if err != nil {
			t.Fatal(err)
		}
		return q.Low
	}
	if read("2 1/4 cups") != read("2 1/4 lb") {
		t.Error("2 1/4 is held twice")
	}
	for n := range int64(3 * len(lately)) {
		if got, want := read(fmt.Sprint(n, " cups")), big.NewRat(n, 1); got.Cmp(want) != 0 {
			t.Fatalf("%v is read as %v", want, got)
		}
		if got, want := read(fmt.Sprint(n, " 1/2 cups")), big.NewRat(2*n+1, 2); got.Cmp(want) != 0 {
			t.Fatalf("%v is read as %v", want, got)
		}
	}
}

func TestParseQuantityRefuses(t *testing.T) {
	const as = "an amount is written in cups, lb or g, as in 6, 1 1/2 cups or 350 g"
	for _, tt := range []struct{ text, want string }{
		{"", "nothing is written: an amount is written as in 6, 1 1/2 cups or 350 g"},
		{" ", "nothing is written: an amount is written as in 6, 1 1/2 cups or 350 g"},
		{"010", `"010" cannot be read: a number does not begin with 0 unless a point follows, as in 0.5`},
		{"00.5", `"00.5" cannot be read: a number does not begin with 0 unless a point follows, as in 0.5`},
		{"1e1", `"1e1" cannot be read: a number is written in the digits 0 to 9, as in 10 or 1.5`},
		{"0x1f", `"0x1f" cannot be read: a number is written in the digits 0 to 9, as in 10 or 1.5`},
		{"0b101", `"0b101" cannot be read: a number is written in the digits 0 to 9, as in 10 or 1.5`},
		{"1_0", `"_0" is no part of an amount: it is written as in 6, 1 1/2 cups or 350 g`},
		{"１０", `"１０" cannot be read: a number is written in the digits 0 to 9, as in 10 or 1.5`},
		{".5.", `".5." cannot be read: a number has one point at most, with digits after it, as in 1.5`},
		{"1.2.3", `"1.2.3" cannot be read: a number has one point at most, with digits after it, as in 1.5`},
		{"5.", `"5." cannot be read: a number has one point at most, with digits after it, as in 1.5`},
		{"5/0", `"5/0" cannot be read: nothing is divided by 0`},
		{"3/2", `"3/2" cannot be read: a fraction is less than one, as in 3/4 or 1 3/4`},
		{"1 3/2", `"1 3/2" cannot be read: a fraction is less than one, as in 3/4 or 1 3/4`},
		{"1/1000", `"1/1000" cannot be read: a fraction has small whole numbers, as in 3/4`},
		{"01/2", `"01/2" cannot be read: a fraction has small whole numbers, as in 3/4`},
		{"-5", `"-5" cannot be read: a measure is never below zero`},
		{"−5 cups", `"−5 cups" cannot be read: a measure is never below zero`},
		{"NaN", `"NaN" cannot be read: a number comes first, as in 1/2 or 1.5`},
		{"Inf", `"Inf" cannot be read: a number comes first, as in 1/2 or 1.5`},
		{"one cup", `"one cup" cannot be read: a number comes first, as in 1/2 or 1.5`},
		{"1,5 kg", `"1,5 kg" cannot be read: a comma stands only before three digits, as in 4,500; write 1.5 with a point`},
		{"12,34", `"12,34" cannot be read: a comma stands only before three digits, as in 4,500; write 1.5 with a point`},
		{"0,500", `"0,500" cannot be read: a comma stands only before three digits, as in 4,500; write 1.5 with a point`},
		{"1000,000", `"1000,000" cannot be read: a comma stands only before three digits, as in 4,500; write 1.5 with a point`},
		{"1000000000000", `"1000000000000" cannot be read: a number has at most 12 digits`},
		{"1,000,000,000,000", `"1,000,000,000,000" cannot be read: a number has at most 12 digits`},
		{"0.0000000000001", `"0.0000000000001" cannot be read: a number has at most 12 digits`},
		{"5-4 cups", `"5-4 cups" cannot be read: a range rises, as in 4-5; for one and a half write 1 1/2`},
		{"1–1/2", `"1–1/2" cannot be read: a range rises, as in 4-5; for one and a half write 1 1/2`},
		{"4-05 cups", `"4-05 cups" cannot be read: a number does not begin with 0 unless a point follows, as in 0.5`},
		{"1 h 90 min", `"90 min" is no part of an amount: it is written as in 6, 1 1/2 cups or 350 g`},
		{"2 cups sugar", `"sugar" is no part of an amount: it is written as in 6, 1 1/2 cups or 350 g`},
		{"6 apples", `there is no unit "apples": ` + as},
		{"10 minits", `there is no unit "minits": did you mean min?`},
		{"2 tabelspoons", `there is no unit "tabelspoons": did you mean tbsp?`},
		{"1 cup to 2 lb", `"to 2 lb" is no part of an amount: it is written as in 6, 1 1/2 cups or 350 g`},
	} {
		q, err := ParseQuantity(tt.text)
		if err == nil || err.Error() != tt.want {
			t.Errorf("ParseQuantity(%q) = %q, %v\nwant error %s", tt.text, exactly(q), err, tt.want)
		}
		if !q.IsZero() {
			t.Errorf("ParseQuantity(%q) = %q beside its error", tt.text, exactly(q))
		}
	}
}

func TestQuantityString(t *testing.T) {
	for _, tt := range []struct{ text, want string }{
		{"1.5 cups", "1 1/2 cups"},
		{"1 cup", "1 cup"},
		{"0.75 cup", "3/4 cup"},
		{"0 cups", "0 cups"},
		{"4-5 cups", "4-5 cups"},
		{"1/2-1 cup", "1/2 to 1 cup"},
		{"1-1 1/2 cups", "1 to 1 1/2 cups"},
		{"1/3 tsp", "1/3 tsp"},
		{"0.2 tsp", "0.2 tsp"},
		{"1 1/2 lb", "1 1/2 lb"},
		{"1 1/2 kg", "1.5 kg"},
		{"1/3 kg", "0.33 kg"},
		{"1/30 kg", "0.033 kg"},
		{"0.00500000001 kg", "0.005 kg"},
		{"1/3 ml", "0.33 ml"},
		{"0.125 kg", "0.125 kg"},
		{"4500 ft", "4,500 ft"},
		{"1370 m", "1,370 m"},
		{"1234567 g", "1,234,567 g"},
		{"220 F", "220 °F"},
		{"5 per cent", "5%"},
		{"2.5%", "2.5%"},
		{"10 minutes", "10 min"},
		{"1 1/2 hours", "1 1/2 h"},
		{"3 weeks", "3 weeks"},
		{"1 week", "1 week"},
		{"2 leaves", "2 leaves"},
		{"1 leaf", "1 leaf"},
		{"1/2", "1/2"},
		{"3.5", "3.5"}, // a pH
		{"1.4", "1.4"},
		{"0.0001 g", "0.0001 g"},
		{"0.000012 kg", "0.000012 kg"},
		{"0.00006 kg", "0.00006 kg"},
	} {
		q, err := ParseQuantity(tt.text)
		if got := q.String(); err != nil || got != tt.want {
			t.Errorf("%q prints as %q, %v, want %q", tt.text, got, err, tt.want)
		}
	}
	if got := (Quantity{}).String(); got != "" {
		t.Errorf("no quantity prints as %q", got)
	}
}

// What was converted prints rounded to two decimals.
func TestQuantityStringConverted(t *testing.T) {
	for _, tt := range []struct {
		text string
		unit Unit
		want string
	}{
		{"305 m", Foot, "1,000.66 ft"},
		{"1/4 in", Millimetre, "6.35 mm"},
		{"1 cup", Millilitre, "236.59 ml"},
		{"2-4 cups", Quart, "1/2 to 1 quart"},
		{"220 F", Celsius, "104.44 °C"},
		{"10 psi", Kilopascal, "68.95 kPa"},
	} {
		q, err := ParseQuantity(tt.text)
		if err != nil {
			t.Fatal(err)
		}
		c, _ := q.In(tt.unit)
		if got := c.String(); got != tt.want {
			t.Errorf("%q in %s prints as %q, want %q", tt.text, tt.unit, got, tt.want)
		}
	}
}

func TestQuantityIn(t *testing.T) {
	none := Quantity{}
	if _, ok := none.In(Cup); ok || !none.IsZero() || none.IsRange() {
		t.Error("no quantity is something")
	}
	for _, tt := range []struct {
		text string
		unit Unit
		ok   bool
	}{
		{"2 tins", "tin", true},
		{"2 tins", "can", false},
		{"6", "", true},
		{"6", Cup, false},
		{"2 cups", Gram, false},
		{"2 in", Foot, false}, // an altitude is never given in inches
		{"2 cups", "no such unit", false},
	} {
		q, err := ParseQuantity(tt.text)
		if err != nil {
			t.Fatal(err)
		}
		if c, ok := q.In(tt.unit); ok != tt.ok || ok == c.IsZero() {
			t.Errorf("%q in %q = %q, %v, want %v", tt.text, tt.unit, exactly(c), ok, tt.ok)
		}
	}
}

// checkQuantity checks what holds of every text: what is read prints as
// something that is read again as the same, if it prints exactly.
func checkQuantity(t *testing.T, text string) {
	t.Helper()
	q, err := ParseQuantity(text)
	if err != nil {
		if message := err.Error(); !strings.Contains(message, ": ") || len(message) > 400 {
			t.Errorf("ParseQuantity(%q): %v", text, err)
		}
		return
	}
	if q.Low.Sign() < 0 || q.Low.Cmp(q.High) > 0 || !strings.Contains(text, q.Text) {
		t.Errorf("ParseQuantity(%q) = %q, text %q", text, exactly(q), q.Text)
	}
	printed := q.String()
	again, err := ParseQuantity(printed)
	if err != nil {
		t.Errorf("ParseQuantity(%q) prints as %q: %v", text, printed, err)
		return
	}
	if again.Unit != q.Unit || !about(again.Low, q.Low) || !about(again.High, q.High) {
		t.Errorf("ParseQuantity(%q) = %q prints as %q, which is %q", text, exactly(q), printed, exactly(again))
	}
}

// about reports whether a and b differ by no more than a hundredth, or by half
// where both are small.
func about(a, b *big.Rat) bool {
	off := new(big.Rat).Sub(a, b)
	off.Abs(off)
	half := new(big.Rat).Mul(b, big.NewRat(1, 2))
	return off.Cmp(big.NewRat(1, 100)) <= 0 && off.Cmp(half) <= 0
}

var quantityTexts = []string{
	"6", "1 1/2 cups", "4-5 lb", "1 h 30 min", "1 lb 4 oz", "¼ in", "4,500 ft", "010", "1e1", "1,5 kg",
	"220 F", "5 per cent", "1 week 2 days 3 h 30 min", "3- to 4-inch", "10 minits", "0.0001 g", "2 cups to 1 l",
}

func BenchmarkParseQuantity(b *testing.B) {
	for _, text := range []string{"10 min", "1 1/2 cups", "4-5 lb", "1 h 30 min"} {
		b.Run(text, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				ParseQuantity(text)
			}
		})
	}
}

func ExampleParseQuantity() {
	q, err := ParseQuantity("1 1/2 cups")
	ml, _ := q.In(Millilitre)
	fmt.Println(q, "=", ml, err)

	_, err = ParseQuantity("1,5 kg")
	fmt.Println(err)
	// Output:
	// 1 1/2 cups = 354.88 ml <nil>
	// "1,5 kg" cannot be read: a comma stands only before three digits, as in 4,500; write 1.5 with a point
}
