package content

import (
	"fmt"
	"strings"

	"go.yaml.in/yaml/v4"
)

// A decoder turns the front matter of one file into typed values. It goes on
// after a fault, so that all of them are found at once.
type decoder struct {
	*source
	matter
	keys KeyTable // of the file's sort
}

// A value is what was written for a key, or one entry of the list that was.
type value struct {
	*yaml.Node
	key   *Key
	entry bool
}

// decode opens a file and gives its front matter to read, if it has any that
// can be read.
func decode(file string, data []byte, keys KeyTable, read func(d *decoder, v value)) *decoder {
	d := &decoder{source: newSource(file, data), keys: keys}
	if d.lost {
		return d
	}
	d.matter = d.cut()
	d.read(read)
	return d
}

func (d *decoder) read(read func(d *decoder, v value)) {
	if d.root != nil {
		read(d, value{Node: d.root, key: &Key{Name: "the file", Want: WantKeys, Keys: d.keys}})
	}
}

// place gives the place of a value.
func (d *decoder) place(n *yaml.Node) Pos {
	return d.letter(d.first+n.Line-1, n.Column)
}

// each reads every known key of the map v, and reports what is unknown,
// repeated, left empty or missing. It gives the places of all keys.
func (d *decoder) each(v value, read func(v value)) map[string]Pos {
	return d.eachOf(v.key.Keys, v, read)
}

// eachOf is each for the keys of t.
func (d *decoder) eachOf(t KeyTable, v value, read func(v value)) map[string]Pos {
	if d.cutLine(t, v) {
		return nil
	}
	places := d.pairs(v, func(name, n *yaml.Node) {
		key := t.Find(name.Value)
		if key == nil {
			d.fault(d.place(name), UnknownKey, "unknown key "+clip(name.Value), unknownKey(name.Value, t, d.keys))
			return
		}
		d.given(value{Node: n, key: key}, d.place(name), read)
	})
	if places != nil {
		d.missing(t, v, places)
	}
	return places
}

// cutLine reports an entry that was meant as a line of text, and of which a
// colon has made a key: 2 cups sugar: white.
func (d *decoder) cutLine(t KeyTable, v value) bool {
	if !v.entry || !v.key.Want.Text() || v.Kind != yaml.MappingNode || v.Style != 0 {
		return false
	}
	for i := 0; i < len(v.Content); i += 2 {
		if t.Find(v.Content[i].Value) != nil {
			return false
		}
	}
	d.fault(d.place(v.Node), UnknownKey, fmt.Sprintf("the colon makes a key of %q", clip(v.Content[0].Value)), "put the whole line in quotation marks, or leave the colon out")
	return true
}

// pairs gives every key of the map v to read, with what was written for it,
// and their places. It reports what is no map, for which it gives nil, and keys
// that are repeated or no words.
func (d *decoder) pairs(v value, read func(name, n *yaml.Node)) map[string]Pos {
	if v.Kind != yaml.MappingNode {
		d.wrong(v)
		return nil
	}
	if !d.untagged(v) {
		return nil
	}
	joinThousands(v.Node)
	places := make(map[string]Pos, len(v.Content)/2)
	for i := 0; i < len(v.Content); i += 2 {
		name := v.Content[i]
		p := d.place(name)
		switch first, ok := places[name.Value]; {
		case name.Kind != yaml.ScalarNode || name.Anchor != "" || name.Value == "" || name.Value == "<<":
			d.fault(p, WrongType, "a key must be a word or a text", "write a word, a colon and a space")
		case ok:
			d.add(Fault{
				Pos: p, Kind: RepeatedKey, Message: clip(name.Value) + " is given twice",
				Advice: "keep one of the two", Also: first, AlsoSay: "first given here",
			})
		default:
			places[name.Value] = p
			read(name, v.Content[i+1])
		}
	}
	return places
}

// given reads v, the value of the key at p, unless nothing was written.
func (d *decoder) given(v value, p Pos, read func(v value)) {
	switch {
	case isEmpty(v.Node):
		advice := "give it " + v.wants() + ", or take the key away"
		if v.entry {
			advice = "write it, or take the hyphen or comma away"
		}
		d.fault(p, BadValue, "nothing was written for "+v.name(), advice)
		d.blanks = append(d.blanks, p)
	case v.Kind == yaml.AliasNode || v.Anchor != "":
		d.fault(d.place(v.Node), WrongType, aliasMessage, aliasAdvice)
	default:
		read(v)
	}
}

// isEmpty reports whether nothing stands in the place of a value. YAML also
// takes ~ and null for nothing.
func isEmpty(n *yaml.Node) bool {
	return n.Kind == yaml.ScalarNode && (n.Tag == "!!null" || strings.TrimSpace(n.Value) == "")
}

// missing reports the required keys of t that the map v does not hold.
func (d *decoder) missing(t KeyTable, v value, places map[string]Pos) {
	for i := range t {
		if k := &t[i]; k.Required && places[k.Name].IsZero() {
			d.miss(k, v)
		}
	}
}

// miss reports that the map v lacks a key.
func (d *decoder) miss(k *Key, v value) {
	p := d.place(v.Node)
	if v.Node == d.root {
		p = d.pos
		if !d.complete {
			return
		}
	}
	d.fault(p, MissingKey, k.Name+" is missing", "write "+k.Name+": "+k.Doc)
}

// list reads every entry of the list v.
func (d *decoder) list(v value, read func(v value)) {
	if v.Kind != yaml.SequenceNode {
		d.wrong(v)
		return
	}
	if !d.untagged(v) {
		return
	}
	joinThousands(v.Node)
	if len(v.Content) == 0 && v.key.Required {
		d.fault(d.place(v.Node), MissingKey, v.key.Name+" has no entry", "write at least one")
	}
	for _, n := range v.Content {
		d.given(value{Node: n, key: v.key, entry: true}, d.place(n), read)
	}
}

// untagged reports a type that was set with an exclamation mark.
func (d *decoder) untagged(v value) bool {
	if v.Style&yaml.TaggedStyle == 0 && v.Tag != "!" {
		return true
	}
	d.fault(d.place(v.Node), WrongType, "a value cannot begin with !", "put a text that begins with ! in quotation marks")
	return false
}

// wrong reports that something else stands in the place of v than what is
// wanted there.
func (d *decoder) wrong(v value) {
	message := fmt.Sprintf("%s wants %s, not %s", v.name(), v.wants(), looks(v.Node))
	advice := ""
	switch {
	case v.Kind == yaml.MappingNode && v.key.List && !v.entry:
		advice = "begin each entry with a hyphen and a space"
	case v.Kind == yaml.MappingNode && v.key.Want.Text():
		advice = "put a text that holds a colon in quotation marks"
	case v.Kind == yaml.ScalarNode && v.key.List && !v.entry:
		advice = fmt.Sprintf("write [%s], or each entry on a line of its own after a hyphen", clip(v.Value))
	case len(v.key.Keys) > 0:
		advice = "the keys are " + strings.Join(v.key.Keys.names(), ", ")
	}
	d.fault(d.place(v.Node), WrongType, message, advice)
}

func (v value) name() string {
	if v.entry {
		return "an entry of " + clip(v.key.Name)
	}
	return clip(v.key.Name)
}

func (v value) wants() string {
	if v.key.List && !v.entry {
		return "a list"
	}
	if v.key.Want == WantWord {
		return "a word such as " + v.key.Words[0]
	}
	return v.key.Want.String()
}

// looks tells what a value looks like.
func looks(n *yaml.Node) string {
	switch n.Kind {
	case yaml.MappingNode:
		return "keys of its own"
	case yaml.SequenceNode:
		return "a list"
	}
	return fmt.Sprintf("%q", clip(n.Value))
}

// texts reads a list of texts.
func (d *decoder) texts(v value) []Field[string] { return fields(d, v, d.text) }

// fields reads a list, and leaves out the entries that could not be read.
func fields[T any](d *decoder, v value, read func(value) Field[T]) []Field[T] {
	var list []Field[T]
	d.list(v, func(v value) {
		if f := read(v); f.Set() {
			list = append(list, f)
		}
	})
	return list
}
