package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math/big"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"stillroom/build/amount"
	"stillroom/content"
	"stillroom/themes"
)

// A reader's browser and this program must write the same amounts. The script that pages load is given many thousands
// of cases by Node, and its texts are compared with ours to the letter.

// A scriptCase is a question to the script.
type scriptCase struct {
	Do      string `json:"do"`
	Amount  string `json:"amount,omitempty"`
	Making  string `json:"making,omitempty"`
	Factor  string `json:"factor,omitempty"`
	System  string `json:"system,omitempty"`
	Text    string `json:"text"`
	Jar     int    `json:"jar"`
	Minutes int64  `json:"minutes"`
	want    string
}

func TestScriptAgrees(t *testing.T) {
	if _, err := exec.LookPath("node"); err != nil {
		need(t) // it asks for no package, but for Node itself
	}
	cases := slices.Concat(amountCases(20_000), planCases(t, 4_000), numberCases())
	script := amountScript(t)
	t.Run("accepts", func(t *testing.T) {
		differ := disagreements(t, script, cases)
		for _, d := range differ[:min(len(differ), 20)] {
			t.Error(d)
		}
	})
	for _, d := range []struct{ name, old, new string }{
		{"spoons of 15 ml", "14.78676478125", "15"},
		{"cups without thirds", `"1/3",`, ""},
		{"a canner that holds anything", "canner load", "load"},
	} {
		t.Run("refuses "+d.name, func(t *testing.T) {
			damaged := bytes.Replace(script, []byte(d.old), []byte(d.new), 1)
			if bytes.Equal(damaged, script) || len(disagreements(t, damaged, cases)) == 0 {
				t.Error("the script was accepted")
			}
		})
	}
}

// disagreements lists the cases in which a script writes another text than we do.
func disagreements(t *testing.T, script []byte, cases []scriptCase) []string {
	t.Helper()
	name := filepath.Join(t.TempDir(), "amount.js")
	if err := os.WriteFile(name, script, 0o666); err != nil {
		t.Fatal(err)
	}
	var all []string
	for i, got := range askScript(t, name, cases) {
		if c := cases[i]; got != c.want {
			all = append(all, fmt.Sprintf("%s %s%s%s times %s in %s: the script writes %q, we write %q",
				c.Do, c.Amount, c.Making, c.Text, c.Factor, c.System, got, c.want))
		}
	}
	return all
}

// amountScript is the script as it is published, minified.
func amountScript(t *testing.T) []byte {
	theme, err := themes.Load(nil)
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range theme.Files {
		if f.Name == "amount.js" {
			return f.Data
		}
	}
	t.Fatal("the theme has no amount.js")
	return nil
}

func askScript(t *testing.T, script string, cases []scriptCase) []string {
	t.Helper()
	var in bytes.Buffer
	for _, c := range cases {
		line, err := json.Marshal(c)
		if err != nil {
			t.Fatal(err)
		}
		in.Write(append(line, '\n'))
	}
	cmd := exec.CommandContext(t.Context(), "node", filepath.Join(tools, "amount.mjs"), script)
	cmd.Stdin, cmd.Stderr = &in, os.Stderr
	out, err := cmd.Output()
	if err != nil {
		t.Fatal(err)
	}
	var texts []string
	for line := range strings.Lines(string(out)) {
		var text string
		if err := json.Unmarshal([]byte(line), &text); err != nil {
			t.Fatal(err)
		}
		texts = append(texts, text)
	}
	if len(texts) != len(cases) {
		t.Fatalf("%d answers to %d cases", len(texts), len(cases))
	}
	return texts
}

// dice are seeded: a case that fails once fails again.
var dice = func() *rand.Rand { return rand.New(rand.NewPCG(1, 2)) }

// amountCases pairs amounts with factors and systems.
func amountCases(n int) []scriptCase {
	d := dice()
	var cases []scriptCase
	for range n {
		a := randomAmount(d)
		f := randomFactor(d)
		s := amount.Systems[d.IntN(len(amount.Systems))]
		c := scriptCase{Do: "write", Amount: a.Data(), Factor: f.RatString(), System: string(s), Text: a.Ways[0].Text}
		c.want = a.In(f, s)
		if d.IntN(4) == 0 {
			c.Do, c.System, c.want = "also", "", a.Also(f)
		}
		cases = append(cases, c)
	}
	return cases
}

// writtenUnits are those that a line of ingredients may have.
var writtenUnits = []content.Unit{
	"tsp", "tsp", "tbsp", "tbsp", "cup", "cup", "cup", "pint", "quart", "gallon", "fl oz", "peck", "bushel",
	"oz", "lb", "lb", "mg", "g", "kg", "ml", "cl", "dl", "l", "", "head", "leaf", "box", "clove", "in",
}

func randomAmount(d *rand.Rand) amount.Amount {
	a := amount.Amount{Round: amount.Rounding(d.IntN(3)), Pours: d.IntN(3) == 0, Spoons: d.IntN(3) == 0}
	for range 1 + d.IntN(4)/3 {
		q := content.Quantity{Low: randomNumber(d), Unit: writtenUnits[d.IntN(len(writtenUnits))], Text: "as written"}
		q.High = q.Low
		if d.IntN(8) == 0 {
			q.High = new(big.Rat).Add(q.Low, randomNumber(d))
		}
		a.Ways = append(a.Ways, q)
	}
	if d.IntN(2) == 0 {
		a.Grams = big.NewRat(int64(d.IntN(3000)+100), 10)
	}
	return a
}

// randomNumber is one that a cook may write: a whole number, a fraction of a
// cup, a decimal.
func randomNumber(d *rand.Rand) *big.Rat {
	switch d.IntN(4) {
	case 0:
		return big.NewRat(int64(d.IntN(20)+1), 1)
	case 1:
		below := []int64{2, 3, 4, 8, 16}[d.IntN(5)]
		return big.NewRat(int64(d.IntN(60)+1), below)
	case 2:
		return big.NewRat(int64(d.IntN(2000)+1), 100)
	}
	return big.NewRat(int64(d.IntN(1200)+1), 1)
}

func randomFactor(d *rand.Rand) *big.Rat {
	switch d.IntN(3) {
	case 0:
		return []*big.Rat{big.NewRat(1, 1), big.NewRat(2, 1), big.NewRat(3, 1), big.NewRat(1, 2), big.NewRat(1, 4), big.NewRat(1, 3)}[d.IntN(6)]
	case 1:
		return big.NewRat(int64(d.IntN(24)+1), int64(d.IntN(12)+1))
	}
	return big.NewRat(int64(d.IntN(4000)+1), int64(d.IntN(4000)+1))
}

// planCases works out batches of the example's recipes, and of one with a
// yield that is a range.
func planCases(t *testing.T, n int) []scriptCase {
	site, _, err := content.Read(content.Starter, nil)
	if err != nil {
		t.Fatal(err)
	}
	var makings []amount.Making
	for _, r := range site.Recipes {
		makings = append(makings, amount.Makings(r)...)
	}
	d := dice()
	var cases []scriptCase
	for range n {
		m := makings[d.IntN(len(makings))]
		c := scriptCase{Do: "plan", Making: m.Data(), Jar: d.IntN(max(len(m.Jars), 1)), Minutes: int64(d.IntN(3) * 25)}
		batches := randomFactor(d)
		if len(m.Jars) > 0 && d.IntN(2) == 0 {
			batches = m.ForJars(big.NewRat(int64(d.IntN(30)+1), 1), c.Jar)
		}
		c.Factor = batches.RatString()
		c.want = strings.Join(m.Plan(batches, c.Jar, c.Minutes).Says(), " ")
		cases = append(cases, c)
	}
	return cases
}

// numberCases are what a reader may type into a field, read as content reads it.
func numberCases() []scriptCase {
	texts := []string{
		"1", "7", "12", "1.5", "0.25", "22", "1/2", "3/4", "1 1/2", "2 2/3", "½", "1½", "1 ½", "⅔", "3⅛", "7/8",
		"", "0", "0/4", "1/0", "a", "-1", "1,5", "1 2", "1/2/3", "1.2.3", "½½", "1e3",
	}
	var cases []scriptCase
	for _, text := range texts {
		c := scriptCase{Do: "number", Text: text, want: "none"}
		if q, err := content.ParseQuantity(text); err == nil && q.Unit == "" && !q.IsRange() && q.Low.Sign() > 0 {
			c.want = fmt.Sprintf("%s/%s", q.Low.Num(), q.Low.Denom())
		}
		cases = append(cases, c)
	}
	return cases
}
