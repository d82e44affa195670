package intake

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"maps"
	"slices"
	"strings"

	"golang.org/x/net/html"
)

// readJSONLD reads the things of one script of JSON-LD. Its contexts are not
// looked up: a recipe is told by the name Recipe.
//
// The error of a script that is no JSON is a *brokenJSON.
func readJSONLD(script string) ([]*thing, error) {
	text := unwrapped(script)
	doc, err := decodeJSON(text)
	for _, mend := range []func(string) string{escapeControls, html.UnescapeString} {
		if err == nil {
			break
		}
		if mended, failed := decodeJSON(mend(text)); failed == nil {
			doc, err = mended, nil
		}
	}
	if err != nil {
		var syntax *json.SyntaxError
		at := int64(len(text))
		if errors.As(err, &syntax) {
			at = syntax.Offset
		}
		return nil, &brokenJSON{offset: strings.Index(script, text) + int(min(at, int64(len(text)))), err: err}
	}
	var things []*thing
	for _, v := range valuesOf(doc, 0) {
		if v.thing != nil {
			things = append(things, v.thing)
		}
	}
	link(things)
	return things, nil
}

// A brokenJSON is a script that is no JSON.
type brokenJSON struct {
	offset int // of what is wrong in the script, in bytes from 1
	err    error
}

func (e *brokenJSON) Error() string { return e.err.Error() }

// unwrapped takes away the marks of a comment that old pages put around
// scripts.
func unwrapped(script string) string {
	s := strings.TrimSpace(script)
	for _, pair := range [][2]string{{"<!--", "-->"}, {"//<![CDATA[", "//]]>"}, {"/*<![CDATA[*/", "/*]]>*/"}, {"<![CDATA[", "]]>"}} {
		if strings.HasPrefix(s, pair[0]) && strings.HasSuffix(s, pair[1]) && len(s) >= len(pair[0])+len(pair[1]) {
			s = strings.TrimSpace(s[len(pair[0]) : len(s)-len(pair[1])])
		}
	}
	return strings.TrimSuffix(s, ";")
}

func decodeJSON(text string) (any, error) {
	d := json.NewDecoder(strings.NewReader(text))
	d.UseNumber()
	var doc any
	if err := d.Decode(&doc); err != nil {
		return nil, err
	}
	if _, err := d.Token(); err != io.EOF {
		return nil, fmt.Errorf("there is text after its end")
	}
	return doc, nil
}

// escapeControls writes the line ends and tabs inside quotation marks as JSON
// wants them, which many pages do not.
func escapeControls(text string) string {
	var b bytes.Buffer
	quoted, escaped := false, false
	for i := range len(text) {
		c := text[i]
		switch {
		case quoted && c < ' ' && !escaped:
			fmt.Fprintf(&b, `\u%04x`, c)
			continue
		case escaped:
			escaped = false
		case quoted && c == '\\':
			escaped = true
		case c == '"':
			quoted = !quoted
		}
		b.WriteByte(c)
	}
	return b.String()
}

// valuesOf gives what a part of a document says; lists in lists are one list.
func valuesOf(doc any, depth int) []value {
	if depth > maxDepth {
		return nil
	}
	switch v := doc.(type) {
	case string:
		return []value{{text: v}}
	case json.Number:
		return []value{{text: v.String()}}
	case bool:
		return []value{{text: fmt.Sprint(v)}}
	case []any:
		var all []value
		for _, e := range v {
			all = append(all, valuesOf(e, depth+1)...)
		}
		return all
	case map[string]any:
		return objectOf(v, depth)
	}
	return nil
}

func objectOf(o map[string]any, depth int) []value {
	for _, wrapper := range []string{"@value", "@list", "@set"} {
		if inner, ok := o[wrapper]; ok {
			return valuesOf(inner, depth+1)
		}
	}
	t := new(thing)
	for _, key := range sortedKeys(o) {
		vs := valuesOf(o[key], depth+1)
		switch key {
		case "@type":
			for _, v := range vs {
				t.types = append(t.types, shortType(v.text))
			}
		case "@id":
			t.id, _ = o[key].(string)
		default:
			t.add(shortType(key), vs...)
		}
	}
	return []value{{thing: t}}
}

// link puts in the place of every bare reference the thing that it refers to.
// From then on things may lie in one another in rings.
func link(things []*thing) {
	named := make(map[string]*thing)
	all := flat(things)
	for _, t := range all {
		if t.id != "" && len(t.props) > 0 {
			named[t.id] = t
		}
	}
	for _, t := range all {
		for _, vs := range t.props {
			for i, v := range vs {
				if v.thing != nil && len(v.thing.props) == 0 && named[v.thing.id] != nil {
					vs[i].thing = named[v.thing.id]
				}
			}
		}
	}
}

// flat gives things and all that lie in them, which is a tree as yet.
func flat(things []*thing) []*thing {
	all := slices.Clone(things)
	for i := 0; i < len(all); i++ {
		for _, name := range sortedKeys(all[i].props) {
			for _, v := range all[i].props[name] {
				if v.thing != nil {
					all = append(all, v.thing)
				}
			}
		}
	}
	return all
}

func sortedKeys[T any](m map[string]T) []string { return slices.Sorted(maps.Keys(m)) }
