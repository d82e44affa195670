package validate

import "stillroom/content"

// UnsealedJar tells what to do with a jar that did not seal, in the order in
// which it is to be read. It is empty for a way that has no sealed jars, or
// whose process is not known.
func UnsealedJar(k *content.Keeping) []Remark {
	if !k.Way.V.Canned() {
		return nil
	}
	m := match(k, nil)
	again, ok := m.processAgain()
	if !ok {
		return nil
	}
	return []Remark{
		again,
		remark("unsealed-freeze", "room", inches(LimitRat("unsealed-freeze-headspace"))),
		remark("unsealed-fridge", "days", limitText("unsealed-fridge", "days")),
		remark("unsealed-right"),
	}
}

// processAgain tells whether the jar may be processed again: only by a process
// for food that is hot, since it has to be heated first.
func (m *Match) processAgain() (Remark, bool) {
	window := limitText("reprocess-window", "hours")
	switch {
	case m.Keeping.TestedBy != nil:
		return remark("unsealed-letter"), true
	case m.Process == nil:
		return Remark{}, false
	case m.Process.Pack != content.Raw:
		return remark("unsealed-hot", "window", window), true
	case len(sameFood(m.Process.Food, m.Process.Method, content.Hot)) > 0:
		return remark("unsealed-raw-as-hot", "window", window), true
	}
	return remark("unsealed-raw"), true
}
