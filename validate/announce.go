package validate

// announcesDenied reports whether a paragraph before a list says that what it
// lists is not to be done: "Never do any of these:".
func (p *passage) announcesDenied() bool {
	n := len(p.sentences)
	if n == 0 {
		return false
	}
	s := &p.sentences[n-1]
	if s.len() == 0 || s.at(s.len()-1).after != ':' {
		return false
	}
	if s.condemns() || s.hasCue(cueAway) && !s.hasCue(cueDeny) {
		return true
	}
	return s.hasCue(cueDeny) && !s.hasCue(cueCondemn)
}

var (
	deniedHeads = fewOf("don'ts donts nots myths myth mistakes mistake unsafe dangerous outdated never avoid misconceptions")
	denials     = fewOf("not don't")
)

// headsDenied reports whether a heading stands over what is not to be done:
// "What not to do", "Myths", "Common mistakes".
func (p *passage) headsDenied() bool {
	for i := range p.sentences {
		s := &p.sentences[i]
		if s.holds(&deniedHeads) {
			return true
		}
		if !s.holds(&denials) {
			continue
		}
		for k := range s.len() {
			if s.isOne(k, &denials) && s.find(famOrder, k, s.len()) < 0 || s.isAny(k, "not") && s.isAny(k+1, "to") {
				return true
			}
		}
	}
	return false
}
