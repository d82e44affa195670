package content

import (
	"strings"
	"testing"
	"testing/fstest"
)

// Names that are obeyed where they are printed, that hide what they are or that
// no other system can hold are told of, and never printed as they are.
func TestHostileNames(t *testing.T) {
	const hidden = "the name of this file holds a character that is not seen"
	const page = "---\nname: A\nsummary: B.\n---\n"
	for file, want := range map[string]string{
		"pages/a\nb.md": hidden, "pages/a\rb.md": hidden, "pages/a\tb.md": hidden, "pages/\x1b[31m.md": hidden, "pages/a\u202edm.md": hidden,
		"pages/a\u2066b.md": hidden, "pages/a\u2028b.md": hidden, "pages/a\u0085b.md": hidden, "pages/\ufeffa.md": hidden,
		"pages/x\n/a.md": hidden, "pictures/a\nb.jpg": hidden, "pictures/a\u202egpj.jpg": hidden, "episodes/a\nb.mp3": hidden, "episodes/a\x07.vtt": hidden,
		"pages/a\xff.md": "the name of this file is not UTF-8", "pictures/\xc0\xaf.jpg": "the name of this file is not UTF-8",
		"pages/con.md": `Windows keeps the name "con" for itself`, "pages/NUL.md": `Windows keeps the name "NUL" for itself`, "pages/aux.x.md": `Windows keeps the name "aux.x" for itself`,
		"pages/com1.md": `Windows keeps the name "com1" for itself`, "pages/Lpt9.md": `Windows keeps the name "Lpt9" for itself`,
		"pages/a.md": "", "pages/console.md": "", "pages/com10.md": "", "pages/com.md": "", "pictures/Was? Süß!.jpg": "", "pictures/aux.jpg": "",
		"pages/а.md": `no address can be made of the name "а"`, // the Cyrillic letter
		"pages/A.md": `no address can be made of the name "A"`, "pages/a .md": `no address can be made of the name "a "`, "pages/a..md": `no address can be made of the name "a."`,
		"pages/e\u0301.md": "no address can be made of the name \"e\u0301\"", "pages/\u00e9.md": `no address can be made of the name "é"`, `pages/a\..\b.md`: `no address can be made of the name "a\\..\\b"`,
		"pages/%2e%2e.md": `no address can be made of the name "%2e%2e"`, "pages/C:a.md": `no address can be made of the name "C:a"`,
	} {
		_, faults, err := Read(fstest.MapFS{"content/site.yaml": {Data: []byte("name: N\n")}, "content/" + file: {Data: []byte(page)}}, nil)
		if err != nil {
			t.Errorf("%q: %v", file, err)
			continue
		}
		got := ""
		for _, f := range faults {
			if f.Kind == BadFileName {
				got = f.Message
			}
			if strings.ContainsFunc(f.Pos.File+f.Message+f.Advice, isUnwritten) {
				t.Errorf("%q is printed as it is: %q %q %q", file, f.Pos.File, f.Message, f.Advice)
			}
		}
		if got != want {
			t.Errorf("%q: %q, want %q", file, got, want)
		}
	}
}
