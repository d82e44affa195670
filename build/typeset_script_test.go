package build

import (
	"encoding/json"
	"os/exec"
	"testing"
)

// The script of a page sets the amounts that it writes as this package does.
func TestScriptSetsType(t *testing.T) {
	node, err := exec.LookPath("node")
	if err != nil {
		t.Skip("Node is missing: apt-get install nodejs, or bash .ci/run")
	}
	texts := []string{
		"1/2 cup", "1 1/2 cups", "2 1/4 lb", "1/3 cup", "1 2/3 cups", "3/8 cup + 1 tbsp", "2 tbsp + 2 tsp", "1 lb 5 oz",
		"4-5 cups", "1 1/2 to 2 cups", "3 tbsp to 1/4 cup", "1/2-3/4 cup", "900 g", "1.575 kg", "0.5 g", "a pinch", "12",
		"about 3 1/2 quart jars", "6-8 pint jars", "11/2", "",
	}
	var script []byte
	for _, f := range theme(t).Files {
		if f.Name == "amount.js" {
			script = f.Data
		}
	}
	given, err := json.Marshal(texts)
	if err != nil {
		t.Fatal(err)
	}
	run := string(script) + "\nconsole.log(JSON.stringify(" + string(given) + ".map(stillroom.amount.typeset)))"
	out, err := exec.CommandContext(t.Context(), node, "-e", run).Output()
	if err != nil {
		t.Fatal(err)
	}
	var got []string
	if err := json.Unmarshal(out, &got); err != nil {
		t.Fatal(err)
	}
	for i, text := range texts {
		if want := typeset(text); got[i] != want {
			t.Errorf("%q: the script sets %q, we set %q", text, got[i], want)
		}
	}
}
