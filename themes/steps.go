package themes

import (
	"fmt"
	"html/template"
	"slices"
	tree "text/template/parse"
)

// mostSteps is how many steps a page may take by the numbers that stand in its
// templates; what a site holds is not counted, for it is as long as it is.
const mostSteps = 1_000_000

// ends refuses a page that would not be written to its end in a sitting: one
// whose parts call themselves or double at every step, or that counts to a
// thousand million.
func ends(page *template.Template) error {
	s := steps{page: page, taken: make(map[string]float64)}
	for _, t := range page.Templates() {
		if t.Tree != nil {
			s.largest = max(s.largest, largestNumber(t.Tree.Root))
		}
	}
	n, err := s.template("shell")
	if err == nil && n > mostSteps {
		err = fmt.Errorf("its templates take %.0f steps, and no more than %d may be", n, mostSteps)
	}
	return err
}

type steps struct {
	page    *template.Template
	taken   map[string]float64
	within  []string // the templates in which we are
	largest float64  // number that is written anywhere: what a variable may hold
}

func (s *steps) template(name string) (float64, error) {
	if slices.Contains(s.within, name) {
		return 0, fmt.Errorf("the template %q calls itself and would never end", name)
	}
	t := s.page.Lookup(name)
	if n, ok := s.taken[name]; ok || t == nil || t.Tree == nil {
		return n, nil
	}
	s.within = append(s.within, name)
	n, err := s.node(t.Tree.Root)
	s.within = s.within[:len(s.within)-1]
	s.taken[name] = n
	return n, err
}

// node counts the steps of a part of a template, every branch as taken.
func (s *steps) node(n tree.Node) (float64, error) {
	switch n := n.(type) {
	case *tree.ListNode:
		return s.list(n)
	case *tree.RangeNode:
		return s.lists(s.turns(n.Pipe), n.List, n.ElseList)
	case *tree.TemplateNode:
		return s.template(n.Name)
	}
	if b := branch(n); b != nil {
		return s.lists(1, b.List, b.ElseList)
	}
	return 1, nil
}

// branch gives what if, with and range have in common; nil for other nodes.
func branch(n tree.Node) *tree.BranchNode {
	switch n := n.(type) {
	case *tree.IfNode:
		return &n.BranchNode
	case *tree.WithNode:
		return &n.BranchNode
	case *tree.RangeNode:
		return &n.BranchNode
	}
	return nil
}

func (s *steps) lists(times float64, first, otherwise *tree.ListNode) (float64, error) {
	a, err := s.list(first)
	if err != nil {
		return 0, err
	}
	b, err := s.list(otherwise)
	return times*(a+1) + b, err
}

func (s *steps) list(l *tree.ListNode) (sum float64, err error) {
	if l == nil {
		return 0, nil
	}
	for _, n := range l.Nodes {
		steps, err := s.node(n)
		if err != nil {
			return 0, err
		}
		sum += steps
	}
	return sum, nil
}

// turns is how often a range goes round by a number that is written in it, or
// that the variable in it may hold.
func (s *steps) turns(p *tree.PipeNode) float64 {
	for _, c := range p.Cmds {
		for _, a := range c.Args {
			if v, ok := a.(*tree.VariableNode); ok && len(v.Ident) == 1 {
				return max(1, s.largest)
			}
		}
	}
	return max(1, largestNumber(p))
}

// largestNumber finds the largest number that is written in a part of a
// template.
func largestNumber(n tree.Node) (most float64) {
	for _, part := range partsOf(n) {
		most = max(most, largestNumber(part))
	}
	if n, ok := n.(*tree.NumberNode); ok {
		return max(most, n.Float64)
	}
	return most
}

// partsOf gives the nodes that lie directly in a node.
func partsOf(n tree.Node) (parts []tree.Node) {
	switch n := n.(type) {
	case *tree.ListNode:
		if n != nil {
			return n.Nodes
		}
	case *tree.ActionNode:
		return []tree.Node{n.Pipe}
	case *tree.TemplateNode:
		if n.Pipe != nil {
			return []tree.Node{n.Pipe}
		}
	case *tree.PipeNode:
		for _, c := range n.Cmds {
			parts = append(parts, c.Args...)
		}
		return parts
	}
	if b := branch(n); b != nil {
		return []tree.Node{b.Pipe, b.List, b.ElseList}
	}
	return nil
}
