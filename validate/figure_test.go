package validate

import "testing"

func TestFigures(t *testing.T) {
	l := learnt()
	tests := []struct{ text, want string }{
		{"process 10 minutes", "10 min"}, {"a 10-minute process", "10 min"}, {"for ten minutes", "10 min"},
		{"forty-five minutes", "45 min"}, {"forty five min.", "45 min"}, {"3 to 4 weeks", "3-4 weeks"}, {"3–4 weeks", "3-4 weeks"},
		{"10 minutes to 15 minutes", "10-15 min"}, {"leave ½ inch of headspace", "1/2 in"}, {"half an inch", "1/2 in"},
		{"a quarter of an inch", "1/4 in"}, {"a quarter-inch", "1/4 in"}, {"1/4-inch", "1/4 in"}, {"1 1/4 inches", "1 1/4 in"},
		{"1¼ in. headspace", "1 1/4 in"}, {"an inch", "1 in"}, {"13 mm", "13 mm"}, {`leave 1/2" of headspace`, "1/2 in"},
		{"three quarters of an inch", "3/4 in"}, {"an hour and a half", "1 1/2 h"}, {"1 hour 30 minutes", "90 min"},
		{"1 h 15 min", ""}, {"two and a half hours", "2 1/2 h"}, {"220 °F", "220 °F"}, {"220 degrees", "220 °F"}, {"104°C", "104 °C"},
		{"8 degrees Fahrenheit", "8 °F"}, {"5 per cent", "5%"}, {"5% vinegar", "5%"}, {"five percent", "5%"},
		{"11 psi", "11 psi"}, {"10 pounds of pressure", "10 psi"}, {"10 lb. pressure", ""}, {"15-pound weight", "15 psi"},
		{"5 pounds of cabbage", "5 lb"}, {"1,000 feet", "1,000 ft"}, {"a thousand feet", "1,000 ft"},
		{"thirteen hundred and fifty feet", "1,350 ft"}, {"six thousand feet", "6,000 ft"}, {"two dozen feet", "24 ft"}, {"412 m", "412 m"}, {"300 meters", "300 m"},
		{"2 in each jar", "2"}, {"cut in half", "1/2"}, {"at 10:52, clock from there", ""}, {"a few minutes", ""},
		{"12 to 24 hours", "12-24 h"}, {"a couple of hours", "2 h"}, {"on the second day", ""}, {"1,001-6,000 ft", "1,001-6,000 ft"},
	}
	for _, tt := range tests {
		p := &passage{place: placeHead, text: tt.text}
		(&cutter{lex: l}).cut(p)
		got := ""
		if len(p.sentences) > 0 {
			for _, f := range p.sentences[0].figures() {
				got = f.quantity().String()
				break
			}
		}
		if got != tt.want && tt.want != "" {
			t.Errorf("%q holds %q, want %q", tt.text, got, tt.want)
		}
	}
}

// TestBare reads each word of the lexicon behind an article, alone and before
// others: an article that is passed over begins no figure.
func TestBare(t *testing.T) {
	l := learnt()
	bare := 0
	for _, e := range l.words[1:] {
		for _, behind := range []string{"", " half", " cups", " two cups", ", 5 minutes", "-4"} {
			p := &passage{text: "an " + e.word + behind}
			(&cutter{lex: l}).cut(p)
			s := &p.sentences[0]
			if !s.isBare(0) {
				continue
			}
			bare++
			if f, ok := s.figureAt(0); ok {
				t.Errorf("%q begins a figure: %s", p.text, f.quantity())
			}
		}
	}
	if bare < 1000 {
		t.Errorf("%d articles are bare, want 1,000 at least", bare)
	}
}
