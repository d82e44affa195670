package validate

import (
	"bytes"
	"slices"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"go.yaml.in/yaml/v4"

	"stillroom/content"
)

// wholeWays are ways of keeping that lack nothing, one key a line.
var wholeWays = map[content.Way]string{
	content.BoilingWater:     "process: applesauce-hot\npack: hot\nacid: natural\nheadspace: 1/2 in\nprocessing: [{jar: pint, altitude: {\"0-1,000 ft\": 15 min, \"1,001-6,000 ft\": 20 min, \"above 6,000 ft\": 25 min}}]",
	content.AtmosphericSteam: "process: applesauce-hot\npack: hot\nacid: natural\nheadspace: 1/2 in\nprocessing: [{jar: pint, altitude: {\"0-1,000 ft\": 15 min, \"1,001-6,000 ft\": 20 min, \"above 6,000 ft\": 25 min}}]",
	content.PressureCanner:   "process: applesauce-hot\npack: hot\nheadspace: 1/2 in\nprocessing: [{jar: pint, time: 8 min, dial: {0-2000 ft: 6 psi, 2001-4000 ft: 7 psi, 4001-6000 ft: 8 psi, 6001-8000 ft: 9 psi}, weighted: {0-1000 ft: 5 psi, above 1000 ft: 10 psi}}]",
	content.Refrigerator:     "container: jars",
	content.Freezer:          "container: bags", // boxes need a headspace, which no schema can tell
	content.Drying:           "temperature: 140 F\nduration: 6-12 h",
	content.Fermenting:       "salt: 2.4%\ntemperature: 70-75 F\nduration: 3-4 weeks",
	content.CoolStore:        "container: crates",
}

// otherValues are values that can be read for every key.
var otherValues = map[string]string{
	"process": "applesauce-hot", "tested_by": "{authority: a, reference: b, date: 2024-05-03}", "pack": "hot", "headspace": "1/2 in",
	"acid": "natural", "jars_sterilised": "true", "processing": "[{jar: pint, time: 8 min}]", "salt": "2%", "temperature": "70 F",
	"duration": "3 weeks", "blanch": "3 min", "container": "bags",
}

// The schema and the rules want the same keys of each way of keeping, and find
// the same ones out of place.
func TestSchemaWantsWhatTheRulesWant(t *testing.T) {
	schema := recipeSchema(t)
	wrong := 0
	agree := func(say string, way content.Way, lines []string) {
		t.Helper()
		text := wayText(way, lines)
		bySchema, byRules := schema.Validate(yamlValue(t, text)) == nil, len(keyErrors(text)) == 0
		if bySchema != byRules {
			t.Errorf("%s %s is right by the schema: %v, by the rules: %v %v", way, say, bySchema, byRules, keyErrors(text))
		}
		if !byRules {
			wrong++
		}
	}
	for _, word := range content.RecipeKeys.Find("keeping").Keys.Find("way").Words {
		way := content.Way(word)
		whole := strings.Split(wholeWays[way], "\n")
		agree("as a whole", way, whole)
		if fs := keyErrors(wayText(way, whole)); len(fs) > 0 {
			t.Errorf("%s as a whole: %v", way, fs)
		}
		for i, line := range whole {
			agree("without "+line, way, slices.Delete(slices.Clone(whole), i, i+1))
		}
		for name, value := range otherValues {
			if !slices.ContainsFunc(whole, func(line string) bool { return strings.HasPrefix(line, name+":") }) {
				agree("with "+name, way, append(slices.Clone(whole), name+": "+value))
			}
		}
	}
	boiled := strings.Split(wholeWays[content.BoilingWater], "\n")
	agree("by a letter", content.BoilingWater, append([]string{"tested_by: " + otherValues["tested_by"]}, boiled[1:]...))
	for _, processing := range []string{"[]", "[{jar: pint}]", "[{altitude: {0-9000 ft: 35 min}}]", "[{jar: pint, time: 20 min}]", "[{jar: pint, altitude: {0-9000 ft: 35 min}, time: 20 min}]"} {
		agree("with processing "+processing, content.BoilingWater, append(slices.Clone(boiled[:4]), "processing: "+processing))
	}
	pressed := strings.Split(wholeWays[content.PressureCanner], "\n")
	for _, processing := range []string{"[{jar: pint, dial: {0-8000 ft: 9 psi}}]", "[{jar: pint, time: 8 min}]", "[{jar: pint, time: 8 min, dial: {0-8000 ft: 9 psi}}]",
		"[{jar: pint, time: 8 min, weighted: {0-8000 ft: 10 psi}, altitude: {0-8000 ft: 20 min}}]"} {
		agree("with processing "+processing, content.PressureCanner, append(slices.Clone(pressed[:3]), "processing: "+processing))
	}
	if wrong < 70 {
		t.Errorf("only %d ways of going wrong were looked at", wrong)
	}
}

func wayText(way content.Way, lines []string) string {
	return "---\nname: Applesauce\nsummary: Apples.\npublished: 2026-01-01\nkind: sauce\nproduce: [apples]\nyield: 9 pint jars\ningredients: [apples]\n" +
		"keeping:\n  - way: " + string(way) + "\n    keeps: 12 months\n    " + strings.Join(lines, "\n    ") + "\n---\n\n1. Wash your hands.\n"
}

// keyErrors are the errors of the rules on which keys a recipe has.
func keyErrors(text string) []Finding {
	r, faults := content.ReadRecipe("a.md", []byte(text))
	rules := []*Rule{outOfPlace, processMissing, packMissing, headspaceMissing, acidMissing, jarMissing, altitudeMissing, timeMissing, gaugeMissing,
		fermentIncomplete, dryingIncomplete, freezerIncomplete}
	fs := append(findingsOfFaults(faults), checkRecipe(r, rules)...)
	return slices.DeleteFunc(fs, func(f Finding) bool { return f.Severity != Error })
}

func recipeSchema(t *testing.T) *jsonschema.Schema {
	t.Helper()
	var v content.Vocabulary
	for _, p := range Processes() {
		v.Processes = append(v.Processes, p.ID)
	}
	v.Processes = slices.Compact(v.Processes)
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(content.RecipeSchema(v)))
	if err != nil {
		t.Fatal(err)
	}
	c := jsonschema.NewCompiler()
	if err := c.AddResource("recipe.json", doc); err != nil {
		t.Fatal(err)
	}
	s, err := c.Compile("recipe.json")
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// yamlValue reads the front matter of a recipe by the letter of YAML.
func yamlValue(t *testing.T, text string) any {
	t.Helper()
	matter, _, _ := strings.Cut(strings.TrimPrefix(text, "---\n"), "\n---\n")
	var n yaml.Node
	if err := yaml.Load([]byte(matter), &n); err != nil {
		t.Fatalf("%v in %s", err, text)
	}
	return valueOf(n.Content[0])
}

func valueOf(n *yaml.Node) any {
	switch n.Kind {
	case yaml.MappingNode:
		m := map[string]any{}
		for i := 0; i < len(n.Content); i += 2 {
			m[n.Content[i].Value] = valueOf(n.Content[i+1])
		}
		return m
	case yaml.SequenceNode:
		list := []any{}
		for _, e := range n.Content {
			list = append(list, valueOf(e))
		}
		return list
	}
	switch n.Tag {
	case "!!null":
		return nil
	case "!!bool":
		return n.Value == "true"
	}
	return n.Value
}

// Every recipe that fill writes passes.
func TestSchemaAcceptsWhatFillWrites(t *testing.T) {
	schema := recipeSchema(t)
	for _, p := range Processes() {
		if !p.Method.Canned() {
			continue
		}
		text := wayText(p.Method, []string{"process: " + p.ID})
		f, refused := Fill("a.md", []byte(text), fillDay)
		if refused != nil {
			continue // several headspaces, or pressures
		}
		if strings.Contains(string(f.Data), "pack:") && !strings.Contains(string(f.Data), "acid:") && p.Method == content.BoilingWater {
			continue // the acid is among ingredients that this recipe does not have
		}
		if p.Pack == "" {
			continue // which pack it is the cook has to say
		}
		if err := schema.Validate(yamlValue(t, string(f.Data))); err != nil {
			t.Errorf("%s %s: %v\n%s", p.ID, p.Method, err, f.Data)
		}
	}
}
