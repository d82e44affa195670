package build

import (
	"testing"

	"github.com/google/go-cmp/cmp"
)

func TestTranscript(t *testing.T) {
	for _, c := range []struct {
		name, text string
		want       []Turn
	}{
		{"WebVTT with voices, a header, a note, and lines of one speaker", `WEBVTT - The Cold Shelf
Kind: captions

NOTE not for
readers

00:00.400 --> 00:01.124 align:start
<v Ines Calloway>We're
back &amp; <i>ready</i>.</v>

first
00:01.174 --> 00:02.673
<v Ines Calloway>Second series.

00:03.300 --> 00:08.092
<v Ines Calloway>New paragraph.

01:00:09.000 --> 01:00:10.000
<v.loud Abel>I don't like pickles.
`, []Turn{
			{"Ines Calloway", "0:00", "", []Spoken{{"0.4", "We're back & ready."}, {"1.174", "Second series."}}},
			{"", "0:03", "", []Spoken{{"3.3", "New paragraph."}}},
			{"Abel", "1:00:09", "", []Spoken{{"3609", "I don't like pickles."}}},
		}},
		{"SubRip with names first", "\ufeff1\r\n00:00:00,000 --> 00:00:02,000\r\nAda: Good morning.\r\n\r\n2\r\n00:00:02,000 --> 00:00:04,000\r\nThree things: salt, time.\r\n",
			[]Turn{{"Ada", "0:00", "", []Spoken{{"0", "Good morning."}}}, {"", "0:02", "", []Spoken{{"2", "Three things: salt, time."}}}}},
		{"no names", "WEBVTT\n\n00:00.000 --> 00:01.000\nOne.\n\n00:01.000 --> 00:02.000\nTwo.\n",
			[]Turn{{"", "0:00", "", []Spoken{{"0", "One."}, {"1", "Two."}}}}},
		{"nothing in it", "WEBVTT\n", nil},
	} {
		if diff := cmp.Diff(c.want, turns(cues(c.text))); diff != "" {
			t.Errorf("%s (-want +got):\n%s", c.name, diff)
		}
	}
}
