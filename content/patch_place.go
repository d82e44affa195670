package content

import (
	"bytes"

	"go.yaml.in/yaml/v4"
)

// A Place is a map in the front matter: what a Patch can change keys of.
type Place struct {
	p    *Patch
	node *yaml.Node
	keys KeyTable // in the order in which they are best written; nil for bands of altitude
	end  int      // the first line that is no longer of it; for keys in curly brackets not used
}

// Top gives the outermost map.
func (p *Patch) Top() Place {
	return Place{p, p.root, p.keys, p.closing}.join()
}

// Pos is where the map begins.
func (t Place) Pos() Pos { return t.p.place(t.node) }

// Len counts the keys of the map.
func (t Place) Len() int { return len(t.node.Content) / 2 }

// Empty reports whether the map lacks a key, or nothing was written for it.
func (t Place) Empty(key string) bool {
	i := t.find(key)
	return i < 0 || isEmpty(t.node.Content[i+1])
}

// Under gives the map that stands under a key. It reports false if there is
// none.
func (t Place) Under(key string) (below Place, ok bool) {
	i := t.find(key)
	if i < 0 || t.node.Content[i+1].Kind != yaml.MappingNode {
		return Place{}, false
	}
	below = Place{t.p, t.node.Content[i+1], nil, t.after(i)}
	if k := t.keys.Find(key); k != nil {
		below.keys = k.Keys
	}
	return below.join(), true
}

// Entries gives the maps of the list that stands under a key.
func (t Place) Entries(key string) []Place {
	i := t.find(key)
	if i < 0 || t.node.Content[i+1].Kind != yaml.SequenceNode {
		return nil
	}
	list := t.node.Content[i+1]
	var keys KeyTable
	if k := t.keys.Find(key); k != nil {
		keys = k.Keys
	}
	var entries []Place
	for j, n := range list.Content {
		if n.Kind != yaml.MappingNode {
			continue
		}
		end := t.after(i)
		if j+1 < len(list.Content) && list.Style&yaml.FlowStyle == 0 {
			end = t.p.hyphenOf(list.Content[j+1])
		}
		entries = append(entries, Place{t.p, n, keys, end}.join())
	}
	return entries
}

// join puts together the numbers that YAML has cut at their comma.
func (t Place) join() Place {
	joinThousands(t.node)
	return t
}

// find gives the index of a key in the node's content, or -1.
func (t Place) find(key string) int {
	for i := 0; i < len(t.node.Content); i += 2 {
		if t.node.Content[i].Value == key {
			return i
		}
	}
	return -1
}

func (t Place) flow() bool { return t.node.Style&yaml.FlowStyle != 0 }

// after gives the first line that no longer belongs to the key at an index:
// neither to what stands under it nor to a comment that is indented as deep.
func (t Place) after(i int) int {
	end := t.end
	if i+2 < len(t.node.Content) {
		end = t.p.lineOf(t.node.Content[i+2])
	}
	for end-1 > t.p.lineOf(t.node.Content[i]) {
		line := t.p.line(end - 1)
		text := bytes.TrimLeft(line, " \t")
		if len(text) > 0 && (text[0] != '#' || len(line)-len(text) >= t.node.Column) {
			break
		}
		end--
	}
	return end
}

// hyphenOf gives the line of the hyphen that begins an entry of a list.
func (p *Patch) hyphenOf(entry *yaml.Node) int {
	line := p.lineOf(entry)
	if bytes.IndexByte(p.data[p.lines[line-1]:p.offset(entry)], '-') >= 0 {
		return line
	}
	for n := line - 1; n >= p.first; n-- {
		if text := bytes.TrimLeft(p.line(n), " \t"); len(text) > 0 && text[0] == '-' {
			return n
		}
	}
	return line
}
