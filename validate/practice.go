package validate

// A Practice is something that a text must not tell its readers to do.
type Practice struct {
	Phrases string                           // ways of saying it, one a line or parted by ";", in the notation of phrase.go
	Left    bool                             // what is wrong is to leave out what the phrases speak of: "no need to process"
	Where   func(*Text, *sentence, hit) bool // whether it is a fault there; nil for anywhere
	Grade   func(*Text, *sentence) Severity  // how much it weighs there; nil for as the rule says
	Message string
	Advice  string

	owner int32 // its number in the lexicon that knows its phrases
}

// checkPractice finds where the text tells its readers to do it, each sentence
// once.
func (r *Rule) checkPractice(t *Text) []Finding {
	owner := r.Practice.owner
	var fs []Finding
	for _, s := range t.speaking() {
		if h, ok := r.Practice.in(t, s, owner); ok {
			fs = append(fs, r.Practice.finding(t, s, h))
		}
	}
	return fs
}

// in gives the first hit in a sentence that is a fault.
func (p *Practice) in(t *Text, s *sentence, owner int32) (hit, bool) {
	for _, h := range s.hits {
		if h.owner != owner {
			continue
		}
		if is := s.stance(h); is != told && !p.Left || p.Left && is != denied {
			continue
		}
		if p.Where == nil || p.Where(t, s, h) {
			return h, true
		}
	}
	return hit{}, false
}

func (p *Practice) finding(t *Text, s *sentence, h hit) Finding {
	f := Finding{Pos: s.pos(h.from), Message: p.Message, Advice: p.Advice}
	if p.Grade != nil {
		f.Severity = p.Grade(t, s)
	}
	if s.place == placePicture && p.Grade == nil {
		f.Severity = Warning // pictures are copied too, but show no order
	}
	return f
}
