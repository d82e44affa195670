// Package themes holds the look of a published site: templates, styles,
// scripts, fonts and drawings.
//
// The built-in theme is called enamel. Its folder has three parts: pages, one
// template for each kind of page; parts, the templates that pages share; and
// files, which are published under addresses of their own. Templates place the
// values that they are given, and decide nothing.
package themes

import (
	"embed"
	"fmt"
	"html/template"
	"io"
	"io/fs"
	"path"
	"strings"

	"stillroom/themes/press"
)

// BuiltIn is the name of the theme that is part of the program.
const BuiltIn = "enamel"

//go:embed enamel/pages enamel/parts enamel/files
var builtIn embed.FS

// A Theme is ready to write pages. It may be used by several goroutines.
type Theme struct {
	Files []File // in order of name
	pages map[string]*press.Press
}

// A File is published as it is, under a name that says what is in it. A style
// refers to another file of the theme as url(NAME), which is replaced by the
// address at which that file is published.
type File struct {
	Name string // style.css
	Data []byte // minified, if it is a style, a script or a drawing
}

// Load makes the built-in theme. A file in overrides stands in for the built-in
// theme's file of the same name, or is added to it; overrides may be nil.
func Load(overrides fs.FS) (*Theme, error) {
	base, err := fs.Sub(builtIn, BuiltIn)
	if err != nil {
		return nil, err
	}
	sources, err := layer(base, overrides)
	if err != nil {
		return nil, err
	}
	t := &Theme{}
	if t.Files, err = minifyFiles(drawMark(sources["files"])); err != nil {
		return nil, err
	}
	t.pages, err = parse(sources["parts"], sources["pages"])
	return t, err
}

// Write writes a page of the given kind: recipe, episode, home.
func (t *Theme) Write(w io.Writer, kind string, page any) error {
	p, err := t.press(kind)
	if err != nil {
		return err
	}
	return p.Print(w, page)
}

// Sets tells why pages of a kind are printed slowly, by html/template alone: a
// theme may use more of its language than press knows. It is nil if they are not.
func (t *Theme) Sets(kind string, page any) error {
	p, err := t.press(kind)
	if err != nil {
		return err
	}
	return p.Sets(page)
}

func (t *Theme) press(kind string) (*press.Press, error) {
	p, ok := t.pages[kind]
	if !ok {
		return nil, fmt.Errorf("the theme has no page for %q", kind)
	}
	return p, nil
}

// maxPage is the most bytes that a page may have. A list of 50,000 recipes has a
// fifth of it; a template that goes round in circles would fill the memory.
const maxPage = 100 << 20

// parse reads the shared parts once, and gives each page a copy of them in
// which its own "main" stands.
func parse(parts, pages []File) (map[string]*press.Press, error) {
	shared := template.New("").Option("missingkey=error")
	for _, p := range parts {
		if err := parseInto(shared, "parts", p); err != nil {
			return nil, err
		}
	}
	parsed := make(map[string]*press.Press, len(pages))
	for _, p := range pages {
		own := template.Must(shared.Clone())
		if err := parseInto(own, "pages", p); err != nil {
			return nil, err
		}
		shell := own.Lookup("shell")
		if shell == nil {
			return nil, fmt.Errorf("the theme has no part that defines %q", "shell")
		}
		if err := ends(own); err != nil {
			return nil, fmt.Errorf("read pages/%s of the theme: %w", p.Name, err)
		}
		parsed[strings.TrimSuffix(p.Name, path.Ext(p.Name))] = press.New(shell, maxPage)
	}
	return parsed, nil
}

func parseInto(t *template.Template, folder string, f File) error {
	text, err := minifyTemplate(f.Data)
	if err == nil {
		_, err = t.Parse(string(text))
	}
	if err != nil {
		return fmt.Errorf("read %s/%s of the theme: %w", folder, f.Name, err)
	}
	return nil
}
