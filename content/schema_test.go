package content

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/txtar"
	"github.com/santhosh-tekuri/jsonschema/v6"
	"go.yaml.in/yaml/v4"
)

// compiled makes the program of a schema, which must be one by the meta-schema
// of JSON Schema 2020-12.
func compiled(t testing.TB, text []byte) *jsonschema.Schema {
	t.Helper()
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	c := jsonschema.NewCompiler()
	c.AssertFormat()
	if err := c.AddResource("schema.json", doc); err != nil {
		t.Fatal(err)
	}
	s, err := c.Compile("schema.json")
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// sorts are the sorts of file, each with its schema and how it is read.
func sorts(t testing.TB) map[string]struct {
	schema *jsonschema.Schema
	read   func(name string, data []byte) []Fault
} {
	type sort = struct {
		schema *jsonschema.Schema
		read   func(name string, data []byte) []Fault
	}
	return map[string]sort{
		"recipe":  {compiled(t, RecipeSchema(Vocabulary{})), func(n string, d []byte) []Fault { _, f := ReadRecipe(n, d); return f }},
		"episode": {compiled(t, EpisodeSchema()), func(n string, d []byte) []Fault { _, f := ReadEpisode(n, d); return f }},
		"page":    {compiled(t, PageSchema()), func(n string, d []byte) []Fault { _, f := ReadPage(n, d); return f }},
		"site":    {compiled(t, SiteSchema()), func(n string, d []byte) []Fault { _, f := ReadSettings(n, d); return f }},
	}
}

// instance gives front matter as an editor reads it: without joined, by the
// letter of YAML, which cuts numbers in brackets at their comma.
func instance(t testing.TB, name string, data []byte, joined bool) any {
	t.Helper()
	s := newSource(name, data)
	m := s.settingsMatter()
	if !strings.HasSuffix(name, ".yaml") {
		m = s.cut()
	}
	if m.root == nil {
		t.Fatalf("%s: %v", name, s.sorted())
	}
	return plainValue(m.root, joined)
}

func plainValue(n *yaml.Node, joined bool) any {
	if joined && n.Kind != yaml.ScalarNode {
		joinThousands(n)
	}
	switch n.Kind {
	case yaml.MappingNode:
		m := map[string]any{}
		for i := 0; i < len(n.Content); i += 2 {
			m[n.Content[i].Value] = plainValue(n.Content[i+1], joined)
		}
		return m
	case yaml.SequenceNode:
		list := []any{}
		for _, e := range n.Content {
			list = append(list, plainValue(e, joined))
		}
		return list
	}
	if n.Style == 0 {
		switch n.Tag {
		case "!!null":
			return nil
		case "!!bool":
			return n.Value == "true"
		case "!!int", "!!float":
			if f, err := strconv.ParseFloat(n.Value, 64); err == nil {
				return f
			}
		}
	}
	return n.Value
}

func TestSchemaAcceptsTheExample(t *testing.T) {
	all := sorts(t)
	for sort, pattern := range map[string]string{"recipe": "recipes/*.md", "episode": "episodes/*.md", "page": "pages/*.md", "site": "site.yaml"} {
		names, _ := filepath.Glob(pattern)
		if len(names) == 0 {
			t.Errorf("the example has no %s", sort)
		}
		for _, name := range names {
			data, err := os.ReadFile(name)
			if err != nil {
				t.Fatal(err)
			}
			for _, joined := range []bool{true, false} {
				if err := all[sort].schema.Validate(instance(t, name, data, joined)); err != nil {
					t.Errorf("%s, joined %v: %v", name, joined, err)
				}
			}
		}
	}
}

// sortOf tells the sort of a case by its name.
func sortOf(name string) string {
	switch {
	case strings.HasSuffix(name, ".yaml"):
		return "site"
	case strings.Contains(name, "episodes/"):
		return "episode"
	case strings.Contains(name, "pages/"):
		return "page"
	}
	return "recipe"
}

// What is read without a fault passes, in every case of testdata; what is
// unknown, missing or of the wrong type does not.
func TestSchemaAgreesWithReading(t *testing.T) {
	all := sorts(t)
	archives, _ := filepath.Glob("testdata/*/*.txtar")
	passed, refused := 0, 0
	for _, archive := range archives {
		ar, err := txtar.ParseFile(archive)
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range ar.Files {
			if f.Name == "want" || f.Name == "html" {
				continue
			}
			sort := all[caseSort(archive, f.Name)]
			faults := sort.read(f.Name, f.Data)
			has := func(kinds ...FaultKind) bool {
				return slices.ContainsFunc(faults, func(f Fault) bool { return slices.Contains(kinds, f.Kind) })
			}
			if has(FrontMatter, BadText) {
				continue
			}
			err := sort.schema.Validate(instance(t, f.Name, f.Data, true))
			switch {
			case len(faults) == 0:
				passed++
				if err != nil {
					t.Errorf("%s, %s is read and refused: %v", archive, f.Name, err)
				}
			case has(UnknownKey, MissingKey, WrongType):
				refused++
				if err == nil {
					t.Errorf("%s, %s is let pass, in spite of %v", archive, f.Name, faults)
				}
			}
		}
	}
	if passed < 2 || refused < 60 {
		t.Errorf("%d cases pass, %d are refused", passed, refused)
	}
}

func caseSort(archive, name string) string {
	if s := strings.TrimSuffix(filepath.Base(archive), ".txtar"); s == "episode" {
		return s
	}
	return sortOf(name)
}

// Every way of writing a value is defined, and no definition is for nothing.
func TestSchemaDefinitions(t *testing.T) {
	text := string(RecipeSchema(Vocabulary{})) + string(EpisodeSchema()) + string(SiteSchema())
	for w := WantText; w <= WantReasons; w++ {
		name, defined := definitionNames[w]
		switch w {
		case WantWord, WantKeys, WantTextOrKeys, WantReasons:
			if defined {
				t.Errorf("%s is written out where it stands, and defined", name)
			}
			continue
		}
		if !strings.Contains(text, fmt.Sprintf(`"#/$defs/%s"`, name)) {
			t.Errorf("%v is not defined, or the definition %q is never used", w, name)
		}
	}
}

// The words that this package does not know are offered if they are given.
func TestSchemaVocabulary(t *testing.T) {
	s := compiled(t, RecipeSchema(Vocabulary{Processes: []string{"plums-hot"}, Rules: []string{"gear"}}))
	for text, ok := range map[string]bool{
		"process: plums-hot": true, "process: plum-hot": false,
		"accept: {gear: mine}": true, "accept: {gera: mine}": false,
	} {
		matter := "name: A\nsummary: B\nstatus: draft\nkind: jam\nproduce: [plum]\nyield: 2 cups\ningredients: [plums]\nkeeping: [{way: refrigerator, keeps: 1 week}]\n"
		if strings.HasPrefix(text, "process") {
			matter = strings.Replace(matter, "keeps", text+", keeps", 1)
		} else {
			matter += text + "\n"
		}
		err := s.Validate(instance(t, "a.md", []byte("---\n"+matter+"---\n"), true))
		if (err == nil) != ok {
			t.Errorf("%s: %v", text, err)
		}
	}
}

// parsers read what patterns let pass.
var parsers = map[Want]func(string) error{
	WantDate:        func(s string) error { _, err := ParseDate(s); return err },
	WantMonth:       func(s string) error { _, err := ParseMonth(s); return err },
	WantLength:      func(s string) error { _, err := ParseLength(s); return err },
	WantTemperature: func(s string) error { _, err := ParseTemperature(s); return err },
	WantDuration:    func(s string) error { _, err := ParseDuration(s); return err },
	WantAltitude:    func(s string) error { _, err := ParseAltitude(s); return err },
	WantPressure:    func(s string) error { _, err := ParsePressure(s); return err },
	WantShare:       func(s string) error { _, err := ParseShare(s); return err },
	WantYield:       func(s string) error { _, err := ParseYield(s); return err },
	WantJar:         func(s string) error { _, err := ParseJar(s); return err },
	WantAcid:        func(s string) error { _, err := ParseAcid(s); return err },
	WantPath:        func(s string) error { _, err := ParseFormerPath(s); return err },
	WantAddress:     func(s string) error { _, err := parseAddress(s); return err },
	WantLanguage:    func(s string) error { _, err := parseLanguage(s); return err },
	WantChapter:     func(s string) error { _, err := parseChapter(s); return err },
}

var wantTexts = []string{
	"1/4 in", "¼ inch", "6 mm", `1/2"`, "1 1/2 cups", "2 qt.", "10 min", "1 h 30 min", "8 Hours", "3-4 weeks", "4,500 ft", "1370 m",
	"220 F", "104 °C", "70-75 degrees f", "11 psi", "76 kPa", "11 lbs. of pressure", "2.5%", "2 per cent", "6 half-pint jars", "about 3 pints",
	"a dozen jars", "half pints", "1 1/2 pint jars", "Three-Quarter-Pint", "500 ml jars", "natural", "In recipe", "2 tbsp bottled lemon juice per quart",
	"2026-07-31", "sept.", "July", "/2019/08/damson/", "https://example.org/a?b", "en-GB", "1:02:30 The brine", "٣ in",
	"above 6,000 ft", "sea level to 1000 feet", "6,001+ m",
}

// patternCheck finds no text that is read and that a pattern refuses.
func patternCheck() func(*testing.T, string) {
	res := map[Want]*regexp.Regexp{}
	for w := range parsers {
		res[w] = regexp.MustCompile(patterns()[w])
	}
	bands := regexp.MustCompile(`\p{N}([\s\S]*[^\p{L}])?(` + unitWords(AltitudeDim) + `)([^\p{L}]|$)`)
	return func(t *testing.T, s string) {
		for w, parse := range parsers {
			if parse(s) == nil && !res[w].MatchString(s) {
				t.Errorf("%q is %v, and the pattern refuses it", s, w)
			}
		}
		if _, _, _, err := ParseBand(s); err == nil && !bands.MatchString(s) {
			t.Errorf("%q is a band, and the pattern refuses it", s)
		}
	}
}

// What cooks get wrong most is refused while they type.
func TestSchemaPatternRefuses(t *testing.T) {
	for w, texts := range map[Want][]string{
		WantLength:      {"1/4", "in", "a finger", "1/4 inn", "10 min"},
		WantTemperature: {"220", "hot", "220 degrees"},
		WantDuration:    {"10", "a while", "10 mn", "6 in"},
		WantAltitude:    {"4500", "high", "4500 miles"},
		WantPressure:    {"11", "11 kilos"},
		WantShare:       {"2.5", "salty"},
		WantYield:       {"6"},
		WantJar:         {"500", "big", "pnt"},
		WantAcid:        {"lemon juice", "2 tbsp lemon juice", "naturally"},
		WantDate:        {"31.7.2026", "2026-13-01", "July 2026", "26-07-31"},
		WantMonth:       {"7", "summer"},
		WantPath:        {"2019/08/damson/", "https://example.org/", "/a?b"},
		WantAddress:     {"example.org", "ftp://example.org"},
		WantSlug:        {"Damson jam", "damson-jam.md"},
		WantLanguage:    {"English language", "e"},
		WantChapter:     {"Welcome", "0:00", "12 Welcome"},
	} {
		re := regexp.MustCompile(patterns()[w])
		for _, s := range texts {
			if re.MatchString(s) {
				t.Errorf("%q passes for %v", s, w)
			}
		}
	}
}
