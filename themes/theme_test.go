package themes

import (
	"bytes"
	"io"
	"io/fs"
	"path"
	"regexp"
	"slices"
	"strings"
	"testing"
	"testing/fstest"
)

func load(t *testing.T, overrides fs.FS) *Theme {
	t.Helper()
	theme, err := Load(overrides)
	if err != nil {
		t.Fatal(err)
	}
	return theme
}

// shell is as little as a page can be.
const shell = `{{define "shell"}}<p>  {{template "main" .}}  </p>{{end}}`

func TestOverridesStandIn(t *testing.T) {
	theme := load(t, fstest.MapFS{
		"parts/shell.html":   {Data: []byte(shell)},
		"pages/page.html":    {Data: []byte(`{{define "main"}}<b title="{{.}}">  {{.}}</b>{{end}}`)},
		"pages/.page.html~":  {Data: []byte(`{{define "main"}}{{`)},
		"files/style.css":    {Data: []byte("p { color: red }\n")},
		"files/own/deep.css": {Data: []byte("p { color: red }\n")},
		"files/own.svg":      {Data: []byte("<svg xmlns=\"http://www.w3.org/2000/svg\">\n</svg>")},
	})
	var b bytes.Buffer
	if err := theme.Write(&b, "page", `plum & "pear" <jam>`); err != nil {
		t.Fatal(err)
	}
	if got, want := b.String(), `<p><b title="plum &amp; &#34;pear&#34; &lt;jam&gt;"> plum &amp; &#34;pear&#34; &lt;jam&gt;</b></p>`; got != want {
		t.Errorf("page = %s, want %s", got, want)
	}
	if got, want := string(file(theme, "style.css")), "p{color:red}"; got != want {
		t.Errorf("style.css = %q, want %q", got, want)
	}
	if file(theme, "own.svg") == nil {
		t.Error("a file that the built-in theme does not have was not added")
	}
	if file(theme, "besley.woff2") == nil {
		t.Error("a file of the built-in theme was lost")
	}
}

func TestLoadSaysWhichFileIsBroken(t *testing.T) {
	for name, want := range map[string]string{
		"pages/recipe.html": "read pages/recipe.html of the theme: ",
		"parts/shell.html":  "read parts/shell.html of the theme: ",
	} {
		_, err := Load(fstest.MapFS{name: {Data: []byte("{{define \"main\"}}{{if}}")}})
		if err == nil || !strings.HasPrefix(err.Error(), want) {
			t.Errorf("Load with a broken %s: error %v, want one that begins with %q", name, err, want)
		}
	}
}

// What text editors keep beside a file is no part of the theme: an old version
// of a page would otherwise stand in for the new one.
func TestLoadPassesOver(t *testing.T) {
	over := fstest.MapFS{
		"parts/shell.html":     {Data: []byte(shell)},
		"pages/page.html":      {Data: []byte(`{{define "main"}}new{{end}}`)},
		"pages/page.html~":     {Data: []byte(`{{define "main"}}old{{end}}`)},
		"pages/page.html.orig": {Data: []byte(`{{define "main"}}older{{end}}`)},
		"files/own.min.css":    {Data: []byte("p{color:red}")},
	}
	passing := []string{".own.css.swp", "own.css~", "#own.css#", ".#own.css", "own.css.swp", "own.css.tmp123", "own.css.part", "4913"}
	for _, name := range passing {
		over["files/"+name] = &fstest.MapFile{Data: []byte("{{")}
		over["parts/"+name] = &fstest.MapFile{Data: []byte("{{")}
	}
	theme := load(t, over)
	for _, name := range passing {
		if file(theme, name) != nil {
			t.Errorf("%s is a file of the theme", name)
		}
	}
	if file(theme, "own.min.css") == nil {
		t.Error("own.min.css is none")
	}
	var b bytes.Buffer
	if err := theme.Write(&b, "page", struct{ Title string }{}); err != nil || !strings.Contains(b.String(), "new") {
		t.Errorf("the page is %q, %v", &b, err)
	}
}

// A theme that is no theme is refused, and names the file at fault.
func TestLoadRefuses(t *testing.T) {
	for want, overrides := range map[string]fstest.MapFS{
		"files/a.js of the theme is no regular file":                                {"files/a.js": {Mode: fs.ModeNamedPipe}},
		"files/a.js of the theme holds 21 MB, and no more than 20 MB are read":      {"files/a.js": {Data: make([]byte, maxFile+1<<20)}},
		"open files/a.js: file does not exist":                                      {"files/a.js": {Data: []byte("nowhere.js"), Mode: fs.ModeSymlink}},
		"read pages/page.html of the theme: template: :1: unclosed action":          {"pages/page.html": {Data: []byte("{{")}},
		"read parts/own.html of the theme: template: :1: function \"exec\" not def": {"parts/own.html": {Data: []byte(`{{exec "rm"}}`)}},
	} {
		if _, err := Load(overrides); err == nil || !strings.HasPrefix(err.Error(), want) {
			t.Errorf("error %v, want one that begins with %q", err, want)
		}
	}
}

// A template that never comes to an end does not fill the memory.
func TestWriteEnds(t *testing.T) {
	for text, want := range map[string]string{
		`{{range 1000}}{{printf "%999999d" 1}}{{end}}`: "beyond all measure",
	} {
		theme := load(t, fstest.MapFS{"parts/shell.html": {Data: []byte(shell)}, "pages/page.html": {Data: []byte(`{{define "main"}}` + text + `{{end}}`)}})
		if err := theme.Write(io.Discard, "page", nil); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%s: error %v, want one with %q", text, err, want)
		}
	}
}

func TestWriteUnknownKind(t *testing.T) {
	if err := load(t, nil).Write(&bytes.Buffer{}, "poem", nil); err == nil {
		t.Error("a page of a kind that the theme does not have was written")
	}
}

// A published page forbids inline styles and scripts, so no template may hold
// one. https://www.w3.org/TR/CSP3/
func TestNothingInline(t *testing.T) {
	inline := regexp.MustCompile(`(?i)\sstyle=|\son[a-z]+=|<style|<script>|javascript:`)
	err := fs.WalkDir(builtIn, ".", func(name string, _ fs.DirEntry, err error) error {
		if err != nil || path.Ext(name) != ".html" {
			return err
		}
		text, err := fs.ReadFile(builtIn, name)
		if m := inline.Find(text); m != nil {
			t.Errorf("%s holds %q", name, m)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
}

func TestStyleNamesFiles(t *testing.T) {
	theme := load(t, nil)
	var named []string
	for _, m := range regexp.MustCompile(`url\(([^)]+)\)`).FindAllSubmatch(file(theme, "style.css"), -1) {
		named = append(named, string(m[1]))
		if file(theme, string(m[1])) == nil {
			t.Errorf("style.css refers to %s, which is no file of the theme", m[1])
		}
	}
	for _, f := range theme.Files {
		ext := path.Ext(f.Name)
		if (ext == ".svg" || ext == ".woff2") && f.Name != "icon.svg" && !slices.Contains(named, f.Name) {
			t.Errorf("no style refers to %s", f.Name)
		}
	}
}

func file(t *Theme, name string) []byte {
	for _, f := range t.Files {
		if f.Name == name {
			return f.Data
		}
	}
	return nil
}
