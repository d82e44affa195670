package content

import (
	"fmt"
	"slices"
	"testing"
)

func TestBodyPictures(t *testing.T) {
	const page = `---
name: About
summary: Who we are.
---
Here is ![the kitchen](kitchen.jpg) and, in a list,

- one thing
- ![a crock](../pictures/deep/crock.png "In October")

| a | b |
| - | - |
| x | ![a jar](/pictures/jar.svg) |

![elsewhere](https://example.com/x.jpg), ![][ref] and ` + "`![no](picture.jpg)`" + `.

[ref]: content/pictures/last.webp
`
	p, faults := ReadPage("content/pages/about.md", []byte(page))
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	var got []string
	for _, f := range p.Body.Pictures() {
		got = append(got, fmt.Sprint(f.Pos, " ", f.V))
	}
	want := []string{
		"content/pages/about.md:5:24 kitchen.jpg",
		"content/pages/about.md:8:14 deep/crock.png",
		"content/pages/about.md:12:16 jar.svg",
		"content/pages/about.md:16:8 last.webp",
	}
	if !slices.Equal(got, want) {
		t.Errorf("got  %q\nwant %q", got, want)
	}
}

func TestPictureName(t *testing.T) {
	tests := []struct{ dest, want string }{
		{"damsons.jpg", "damsons.jpg"},
		{"deep/damsons.jpg", "deep/damsons.jpg"},
		{"pictures/damsons.jpg", "damsons.jpg"},
		{"../pictures/damsons.jpg", "damsons.jpg"},
		{"/content/pictures/deep/damsons.jpg", "deep/damsons.jpg"},
		{"../../../damsons.jpg", "damsons.jpg"},
		{"two%20damsons.jpg", "two damsons.jpg"},
		{"100%.jpg", "100%.jpg"},
		{"", ""},
	}
	for _, test := range tests {
		if got := PictureName(test.dest); got != test.want {
			t.Errorf("PictureName(%q) = %q, want %q", test.dest, got, test.want)
		}
	}
}
