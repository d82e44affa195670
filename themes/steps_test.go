package themes

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"
)

// A theme from elsewhere must not keep a site from ever being written.
func TestEndlessThemes(t *testing.T) {
	double := `{{template "d0" .}}`
	for i := range 60 {
		double += fmt.Sprintf(`{{end}}{{define "d%d"}}{{template "d%d" .}}{{template "d%d" .}}`, i, i+1, i+1)
	}
	double += `{{end}}{{define "d60"}}a`
	for main, want := range map[string]string{
		`{{range 1000000000}}a{{end}}`:                                     "steps",
		`{{range 1e9}}{{end}}`:                                             "steps",
		`{{range $i := 1000000000}}{{end}}`:                                "steps",
		`{{$n := 1000000000}}{{range $n}}{{end}}`:                          "steps",
		`{{range 1000}}{{range 1000}}{{range 1000}}{{end}}{{end}}{{end}}`:  "steps",
		`{{if .}}{{else}}{{with 1}}{{range 9999999}}{{end}}{{end}}{{end}}`: "steps",
		`{{template "main" .}}`:                                            "calls itself",
		`{{range .}}{{template "main" .}}{{end}}`:                          "calls itself",
		`{{template "x" .}}{{end}}{{define "x"}}{{template "shell" .}}`:    "calls itself",
		double:                       "steps",
		`{{range 5}}*{{end}}`:        "",
		`{{range .}}{{.}}{{end}}`:    "",
		`{{template "missing" .}}`:   "",
		`{{len "a"}} {{1000000000}}`: "",
	} {
		text := `{{define "main"}}` + main + `{{end}}`
		_, err := Load(fstest.MapFS{"pages/page.html": {Data: []byte(text)}})
		if (err == nil) != (want == "") || err != nil && (!strings.Contains(err.Error(), want) || !strings.Contains(err.Error(), "pages/page.html")) {
			t.Errorf("%.80s: %v, want %q", main, err, want)
		}
	}
}
