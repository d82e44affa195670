package validate

var brimWords = fewOf("brim rim lip")

// toTheBrim reports jars that are filled up, with no headspace at all.
func (t *Text) toTheBrim(s *sentence) []Finding {
	if !s.has(famFill) || len(s.headspaces()) > 0 || s.anyOf("almost nearly within below short crock") {
		return nil
	}
	for i := range s.len() {
		if !s.isOne(i, &brimWords) || !s.anyIn("to", i-3, i) && !s.anyIn("full", i-2, i) || s.isAny(i, "rim lip") && !s.anyIn("up", i-4, i) {
			continue
		}
		right := t.headspacesFor(s)
		if from := max(0, s.find(famFill, 0, s.len())); len(right) > 0 && s.stance(hit{from: from, to: i + 1}) == told {
			return []Finding{{
				Pos:     s.pos(i),
				Message: "no headspace here, where the front matter has " + lengths(right),
				Advice:  "Write the same in both places.",
				Notes:   []Note{{Pos: right[0].Pos, Message: "given here"}},
			}}
		}
	}
	return nil
}
