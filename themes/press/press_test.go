package press

import (
	"bytes"
	"fmt"
	"html/template"
	"strings"
	"testing"
)

// A shelf is a page with a field of each sort.
type shelf struct {
	label
	Name    string
	Place   vessel
	Address string
	Trusted template.HTML
	Link    template.URL
	Data    template.JS
	Set     string
	Count   int
	Open    bool
	Ratio   float64
	Spoken  spoken
	First   *jar
	None    *jar
	Jars    []jar
	Empty   []jar
	Lids    []*jar
	Words   []string
	ByName  map[string]int
	Any     any
}

type (
	label  struct{ Author string }
	vessel string // a text of a type of its own
	spoken string // a text that says itself otherwise
	jar    struct {
		Name  string
		Holds int
		Lid   *jar
	}
)

func (s spoken) String() string { return "said: <" + string(s) + ">" }

func (shelf) Method() string { return "by a method" }

func filled(text string) *shelf {
	j := jar{Name: text, Holds: 3}
	return &shelf{
		label: label{text}, Name: text, Place: vessel(text), Address: text, Trusted: template.HTML(text), Link: template.URL(text),
		Data: template.JS(`{"a":"b"}`), Set: text, Count: -7, Open: text != "", Ratio: 0.5, Spoken: spoken(text), First: &j,
		Jars: []jar{j, {}, {Name: "pint", Lid: &j}}, Lids: []*jar{&j}, Words: []string{text, "", "b"}, ByName: map[string]int{"a": 1}, Any: text,
	}
}

// set are templates that the press prints itself.
var set = []string{
	`<p>{{.Name}}</p><p>{{.Author}}{{.Place}}{{.Count}}{{.Trusted}}</p>`,
	`<title>{{.Name}}{{.Count}}</title><p title="{{.Name}} {{.Trusted}} {{.Place}} {{.Count}}">`,
	`<a href="{{.Address}}">{{.Spoken}}</a><a href="{{.Link}}"></a><a href="{{.Place}}">{{.Ratio}}</a><a href="/?q={{.Name}}"></a>`,
	`<img srcset="{{.Set}}" alt=""><script type="application/ld+json">{{.Data}}</script>`,
	`<script type="application/ld+json">{{.Name}}</script>`,
	`{{if .Open}}<b>{{.Name}}</b>{{else}}<i>{{.Name}}</i>{{end}}{{if .Count}}a{{end}}{{if .None}}b{{else if .First}}c{{end}}{{if .Jars}}d{{end}}`,
	`{{with .First}}{{.Name}} {{.Holds}} {{$.Name}}{{end}}{{with .None}}a{{else}}b{{end}}{{with $x := .Name}}{{$x}}{{.}}{{else}}none{{end}}`,
	`{{range .Jars}}<li>{{.Name}}{{with .Lid}}{{.Name}}{{end}}</li>{{else}}none{{end}}{{range .Empty}}a{{else}}none{{end}}{{range .Lids}}{{.Name}}{{end}}`,
	`{{range $i, $j := .Jars}}{{if $i}}, {{end}}{{$j.Name}}{{$i}}{{end}}{{range $w := .Words}}{{$w}}{{.}}{{end}}`,
	`{{$f := "a"}}{{if .Open}}{{$f = "b"}}{{$g := .Name}}{{$g}}{{end}}<p class="{{$f}}">`,
	`{{if or .None .Open}}a{{end}}{{if and .Open .Jars}}b{{end}}{{if not .None}}c{{end}}{{if not (or .Open .None)}}d{{end}}`,
	`{{if eq .Name "pint"}}a{{end}}{{if ne .Name "x"}}b{{end}}{{if gt (len .Jars) 2}}c{{end}}{{if le .Count 3}}d{{end}}{{if and (lt .Count 1) (ge .Count -7)}}e{{end}}`,
	`{{len .Jars}}{{len .Name}}{{index .Words 0}}{{(index .Jars 2).Name}}{{(.First).Name}}`,
	`{{template "part" .First}}{{template "bare"}}<img alt="{{template "bare"}}">{{define "part"}}<b>{{.Name}}</b>{{$.Holds}}{{end}}{{define "bare"}}46rem, 92vw{{end}}`,
}

// left are templates that it leaves to html/template.
var left = []string{
	`{{.Method}}`, `{{range $k, $v := .ByName}}{{$k}}{{$v}}{{end}}`, `{{printf "%05d" .Count}}`, `{{.Any}}{{if .Any}}a{{end}}{{with .Any}}{{.}}{{end}}`,
	`{{range 3}}{{.}}{{end}}`, `{{range .Jars}}{{if .Name}}{{break}}{{end}}{{end}}`, `{{if .Ratio}}a{{end}}`, `<p {{.Name}}>`, `<p title={{.Name}}>`,
	`{{.Name | len}}`, `{{slice .Name 0 0}}`, `<a href="{{template "address" .}}"></a>{{define "address"}}/{{.Name}}{{end}}`, `<style>{{.Name}}</style>`,
	`{{template "lid" .First}}{{define "lid"}}{{.Name}}{{with .Lid}}{{template "lid" .}}{{end}}{{end}}`,
}

// wrong are templates that both give up with this page.
var wrong = []string{
	`{{.None.Name}}`, `{{index .Words 9}}`, `{{.Nothing}}`, `{{template "a" .}}{{define "a"}}{{template "a" .}}{{end}}`, `<a href="{{if .Open}}/{{else}}"{{end}}>`,
	`{{range .Jars}}{{.Lid.Name}}{{end}}`, `{{eq .Name 1}}`,
}

// hostile are texts that want to be more than texts.
var hostile = []string{
	"", "plain", "/recipes/damson-jam/#keeping", "https://example.com/a_b?c=d&e=f#g", "http://example.com", "javascript:alert(1)", "JaVaScRiPt:x", "mailto:a@b.c",
	"<script>alert(1)</script>", `"'><img src=x onerror=y>`, "a+b & c &amp; d", "\x00\x01\u2028\ufeff\ufdd0", "\xff\xfe broken", "½ cup ’ µ 日本", "]]>", "</script", "</title>",
	"a b%20%zz", "//example.com", "http://example.com/?a=b&c+d(e)'", "http:https:x", "HTTP:a", "data:text/html,x", "a.jpg 320w, b.jpg 640w", "x, javascript:y 2x", "/:a", "a:b/c", "#", "?", "{{.}}",
}

func pressed(t testing.TB, text string) *Press {
	t.Helper()
	tmpl, err := template.New("page").Option("missingkey=error").Parse(text)
	if err != nil {
		t.Fatal(text, err)
	}
	return New(tmpl, 1<<20)
}

// The reference is html/template itself, of the same Go.
func sameBytes(t *testing.T, p *Press, page any) {
	t.Helper()
	var own, theirs bytes.Buffer
	err, other := p.Print(&own, page), p.from.Execute(&theirs, page)
	if own.String() != theirs.String() || fmt.Sprint(err) != fmt.Sprint(other) {
		t.Errorf("%q, %v; html/template: %q, %v", &own, err, &theirs, other)
	}
}

func TestSameBytes(t *testing.T) {
	for _, text := range set {
		p := pressed(t, text)
		if err := p.Sets(filled("")); err != nil {
			t.Errorf("%s: %v", text, err)
		}
		for _, h := range hostile {
			sameBytes(t, p, filled(h))
		}
	}
}

func TestLeftToTheLibrary(t *testing.T) {
	for _, text := range left {
		p := pressed(t, text)
		if p.Sets(filled("")) == nil {
			t.Errorf("%s: is set", text)
		}
		for _, h := range hostile {
			sameBytes(t, p, filled(h))
		}
	}
}

func TestErrorsAreTheLibrarys(t *testing.T) {
	for _, text := range wrong {
		p := pressed(t, text)
		if err := p.Print(new(bytes.Buffer), filled("a")); err == nil {
			t.Errorf("%s: no error", text)
		}
		sameBytes(t, p, filled("a"))
	}
}

func TestOtherPages(t *testing.T) {
	p := pressed(t, `<p>{{.Name}}</p>`)
	for _, page := range []any{jar{Name: "<a>"}, &jar{Name: "b"}, (*jar)(nil), map[string]string{"Name": "c"}, nil, "d"} {
		sameBytes(t, p, page)
	}
}

func TestPageEnds(t *testing.T) {
	jars := make([]jar, 1<<17)
	p := pressed(t, `{{range .Jars}}0123456789{{end}}`)
	var b bytes.Buffer
	if err := p.Print(&b, &shelf{Jars: jars}); err == nil || !strings.Contains(err.Error(), "beyond all measure") || b.Len() > 1<<20 {
		t.Errorf("%d bytes, %v", b.Len(), err)
	}
}

func FuzzPrint(f *testing.F) {
	var all []*Press
	for _, text := range set {
		all = append(all, pressed(f, text))
	}
	for _, h := range hostile {
		f.Add(h)
	}
	f.Fuzz(func(t *testing.T, text string) {
		for _, p := range all {
			sameBytes(t, p, filled(text))
		}
	})
}

func BenchmarkPrint(b *testing.B) {
	p, page := pressed(b, strings.Join(set[:len(set)-1], "\n")), filled("½ cup of <b>damsons</b>")
	var out bytes.Buffer
	for name, print := range map[string]func() error{
		"press":    func() error { return p.Print(&out, page) },
		"template": func() error { return p.from.Execute(&out, page) },
	} {
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				out.Reset()
				if err := print(); err != nil {
					b.Fatal(err)
				}
			}
			b.SetBytes(int64(out.Len()))
		})
	}
}
