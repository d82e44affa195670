package build

import "testing"

// FuzzBytes takes bytes for what authors' files bring as far as here: a name, a
// transcript, the colour profile of a picture.
func FuzzBytes(f *testing.F) {
	for _, text := range []string{"jalapeño peppers", "\xff/..", "WEBVTT\n\n00:00.000 --> 00:01.000\n<v Ada>One.\n"} {
		f.Add([]byte(text))
	}
	f.Add(profile(p3, srgbCurve))
	f.Add(profile(adobe, gamma(2.2)))
	f.Fuzz(func(t *testing.T, data []byte) {
		text := string(data)
		for _, c := range slug(text) {
			if (c < 'a' || c > 'z') && (c < '0' || c > '9') && c != '-' {
				t.Errorf("slug(%q) = %q", text, slug(text))
			}
		}
		for _, turn := range turns(cues(text)) {
			if len(turn.Lines) == 0 || turn.Lines[0].Text == "" {
				t.Errorf("a turn without words in %q", text)
			}
		}
		if c := colouringOf(data); c != nil {
			c.turn(1, 2, 3)
		}
	})
}
