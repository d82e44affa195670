package content

import (
	"bytes"
	"encoding/json"
	"slices"
)

// A Vocabulary holds words that this package does not know, for a schema to
// offer: where it is empty, any word will do.
type Vocabulary struct {
	Processes []string // the ids of published tested processes
	Rules     []string // the ids of the rules that can be accepted
}

// RecipeSchema gives the JSON Schema (2020-12) of a recipe's front matter, for
// editors. It lets everything pass that ReadRecipe reads without a fault, and
// refuses most of what it does not: unknown keys, missing ones, wrong types,
// words that are not on a list, measures without a unit.
func RecipeSchema(v Vocabulary) []byte {
	s := schema{v}
	doc := s.document("recipe", "the front matter of a recipe", RecipeKeys)
	return encode(append(doc, member{"anyOf", publishedOrDraft}))
}

// EpisodeSchema gives the JSON Schema of an episode's front matter.
func EpisodeSchema() []byte {
	doc := schema{}.document("episode", "the front matter of an episode's show notes", EpisodeKeys)
	return encode(append(doc, member{"anyOf", publishedOrDraft}))
}

// PageSchema gives the JSON Schema of a page's front matter.
func PageSchema() []byte {
	return encode(schema{}.document("page", "the front matter of a page", PageKeys))
}

// SiteSchema gives the JSON Schema of site.yaml.
func SiteSchema() []byte {
	return encode(schema{}.document("site", "content/site.yaml", SiteKeys))
}

// An object is a JSON object that keeps its order.
type object []member

type member struct {
	name  string
	value any
}

// MarshalJSON writes the members in their order.
func (o object) MarshalJSON() ([]byte, error) {
	var b bytes.Buffer
	b.WriteByte('{')
	for i, m := range o {
		if i > 0 {
			b.WriteByte(',')
		}
		name, _ := json.Marshal(m.name)
		value, err := json.Marshal(m.value)
		if err != nil {
			return nil, err
		}
		b.Write(name)
		b.WriteByte(':')
		b.Write(value)
	}
	b.WriteByte('}')
	return b.Bytes(), nil
}

// encode writes a document with indentation. A schema holds nothing that
// cannot be written.
func encode(doc object) []byte {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	if err := e.Encode(doc); err != nil {
		panic(err)
	}
	return b.Bytes()
}

// A schema makes schemas of key tables.
type schema struct{ Vocabulary }

func (s schema) document(name, what string, t KeyTable) object {
	doc := object{
		{"$schema", "https://json-schema.org/draft/2020-12/schema"},
		{"$id", "urn:stillroom:schema:" + name},
		{"title", "Stillroom: " + what},
	}
	doc = append(doc, s.table(t)...)
	return append(doc, member{"$defs", definitions()})
}

// publishedOrDraft wants a day of publication of whatever is no draft.
var publishedOrDraft = []object{
	{{"required", []string{"published"}}},
	{{"properties", object{{"status", object{{"const", Draft}}}}}, {"required", []string{"status"}}},
}

// table gives what a map with these keys must be.
func (s schema) table(t KeyTable) object {
	var properties object
	var required []string
	for _, k := range t {
		properties = append(properties, member{k.Name, s.key(k)})
		if k.Required {
			required = append(required, k.Name)
		}
	}
	o := object{{"type", "object"}, {"properties", properties}}
	if required != nil {
		o = append(o, member{"required", required})
	}
	if ways := wayRules(t); ways != nil {
		o = append(o, member{"allOf", ways})
	}
	return append(o, member{"unevaluatedProperties", false})
}

// key gives what may be written for a key.
func (s schema) key(k Key) object {
	o := object{{"description", k.Doc}}
	if !k.List {
		return append(o, s.value(k)...)
	}
	o = append(o, member{"type", "array"}, member{"items", s.value(k)})
	if k.Required {
		o = append(o, member{"minItems", 1})
	}
	return o
}

// value gives what may be written for a key, or for an entry of its list.
func (s schema) value(k Key) object {
	switch k.Want {
	case WantWord:
		return object{{"enum", k.Words}}
	case WantKeys:
		return s.table(k.Keys)
	case WantTextOrKeys:
		return either(reference(WantText), s.table(k.Keys))
	case WantChapter:
		return either(reference(WantChapter), s.table(k.Keys))
	case WantIngredient:
		kinds := []object{reference(WantIngredient), s.table(k.Keys)}
		if k.Or != nil {
			kinds = append(kinds, s.table(k.Or))
		}
		return either(kinds...)
	case WantReasons:
		return s.reasons()
	}
	switch {
	case k.Name == "process" && s.Processes != nil:
		return object{{"enum", s.Processes}}
	case k.Name == "summary":
		// a folded text ends with the end of a line, which is not counted
		return object{{"$ref", ref(WantText)}, {"type", scalar}, {"maxLength", maxSummary + 1}}
	}
	return reference(k.Want)
}

func either(kinds ...object) object { return object{{"anyOf", kinds}} }

func reference(w Want) object { return object{{"$ref", ref(w)}} }

func ref(w Want) string { return "#/$defs/" + definitionNames[w] }

// reasons gives the map of rules that are taken as read.
func (s schema) reasons() object {
	o := object{{"type", "object"}}
	if s.Rules != nil {
		o = append(o, member{"propertyNames", object{{"enum", s.Rules}}})
	}
	return append(o, member{"additionalProperties", reference(WantText)})
}

// wayRules gives, for each way of keeping, the keys that it must have and those
// that mean nothing for it; nil for a table of other keys.
func wayRules(t KeyTable) []object {
	if t.Find("way") == nil {
		return nil
	}
	var rules []object
	for _, word := range t.Find("way").Words {
		then := wayKeys(t, Way(word))
		if p := t.Find("processing"); p != nil {
			then = withProcessing(then, wayKeys(p.Keys, Way(word)))
		}
		rules = append(rules, object{
			{"if", object{{"type", "object"}, {"properties", object{{"way", object{{"const", word}}}}}, {"required", []string{"way"}}}},
			{"then", then},
		})
	}
	return rules
}

// wayKeys gives what a way of keeping asks of a table: keys that must be there,
// and keys that may not.
func wayKeys(t KeyTable, w Way) object {
	var required []string
	var choices []object
	var properties object
	for _, k := range t {
		switch {
		case k.For != nil && !slices.Contains(k.For, w):
			properties = append(properties, member{k.Name, false})
		case !slices.Contains(k.Needed, w):
		case k.Instead != "":
			choices = append(choices, either(object{{"required", []string{k.Name}}}, object{{"required", []string{k.Instead}}}))
		default:
			required = append(required, k.Name)
		}
	}
	o := object{{"type", "object"}}
	if properties != nil {
		o = append(o, member{"properties", properties})
	}
	if required != nil {
		o = append(o, member{"required", required})
	}
	if choices != nil {
		o = append(o, member{"allOf", choices})
	}
	return o
}

// withProcessing adds what a way asks of each entry of processing.
func withProcessing(then, entry object) object {
	list := object{{"type", "array"}, {"minItems", 1}, {"items", entry}}
	for i, m := range then {
		if m.name != "properties" {
			continue
		}
		properties := m.value.(object)
		if !slices.ContainsFunc(properties, func(p member) bool { return p.name == "processing" }) {
			then[i].value = append(properties, member{"processing", list})
		}
	}
	return then
}
