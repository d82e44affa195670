package content

import (
	"unicode/utf8"

	"go.yaml.in/yaml/v4"
)

// joinThousands joins the numbers that YAML cuts at the comma inside brackets:
// of {0-1,000 ft: 10 psi} it makes a key 0-1 with nothing and a key 000 ft, of
// [4,500 ft] two entries. A comma between a digit and three digits, without a
// space, is the comma of a number and nothing else.
func joinThousands(n *yaml.Node) {
	if n.Style&yaml.FlowStyle == 0 {
		return
	}
	if n.Kind == yaml.SequenceNode {
		joinEntries(n)
	} else {
		joinKeys(n)
	}
}

func joinEntries(n *yaml.Node) {
	joined := n.Content[:0]
	for _, e := range n.Content {
		if last := len(joined) - 1; last >= 0 && isCutNumber(joined[last], e) {
			joinNodes(joined[last], e)
			continue
		}
		joined = append(joined, e)
	}
	n.Content = joined
}

func joinKeys(n *yaml.Node) {
	joined := n.Content[:0]
	for i := 0; i < len(n.Content); i += 2 {
		name, v := n.Content[i], n.Content[i+1]
		last := len(joined) - 2
		switch {
		case last >= 0 && isNothing(joined[last+1]) && isCutNumber(joined[last], name):
			joinNodes(joined[last], name)
			joined[last+1] = v
		case last >= 0 && isNothing(v) && isCutNumber(joined[last+1], name):
			joinNodes(joined[last+1], name)
		default:
			joined = append(joined, name, v)
		}
	}
	n.Content = joined
}

// isNothing reports whether not a letter was written for n.
func isNothing(n *yaml.Node) bool {
	return isPlainScalar(n) && n.Value == ""
}

func isPlainScalar(n *yaml.Node) bool { return n.Kind == yaml.ScalarNode && n.Style == 0 }

// isCutNumber reports whether b goes on with the number at the end of a, with
// nothing but a comma between them.
func isCutNumber(a, b *yaml.Node) bool {
	return isPlainScalar(a) && isPlainScalar(b) && a.Value != "" &&
		a.Line == b.Line && a.Column+utf8.RuneCountInString(a.Value)+1 == b.Column &&
		isDigit(a.Value[len(a.Value)-1]) && len(leadingDigits(b.Value)) == 3
}

func joinNodes(a, b *yaml.Node) {
	a.Value += "," + b.Value
	a.Tag = "!!str"
}
