package validate

import (
	"bytes"
	"image"
	"image/png"
	"testing"
	"testing/fstest"

	"stillroom/content"
)

func TestCoverSmall(t *testing.T) {
	for size, want := range map[image.Point]string{
		{X: 1400, Y: 1400}: "",
		{X: 3200, Y: 1400}: "",
		{X: 1399, Y: 1400}: "content/site.yaml:3:34: warning: the programme's picture has 1399 by 1400 pixels, and directories want 1400 or more on each side [cover-small]",
		{X: 3000, Y: 1399}: "content/site.yaml:3:34: warning: the programme's picture has 3000 by 1399 pixels, and directories want 1400 or more on each side [cover-small]",
	} {
		var b bytes.Buffer
		if err := png.Encode(&b, image.NewGray(image.Rectangle{Max: size})); err != nil {
			t.Fatal(err)
		}
		s, _, err := content.Read(fstest.MapFS{
			"content/site.yaml":          {Data: []byte("name: Larder\nauthor: Ada Sloe\nprogramme: {name: Talk, picture: cover.png}\n")},
			"content/pictures/cover.png": {Data: b.Bytes()},
		}, nil)
		if err != nil {
			t.Fatal(err)
		}
		got := ""
		for _, f := range coverSmall.stamp(coverSmall.CheckSite(s)) {
			got += f.String()
		}
		if got != want {
			t.Errorf("%v: %q, want %q", size, got, want)
		}
	}
}
