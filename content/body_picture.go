package content

import (
	"bytes"
	"net/url"
	"path"
	"strings"

	"github.com/yuin/goldmark/ast"
)

// Pictures gives the site's own pictures that the body shows, by name relative
// to content/pictures, at the places where they are named.
func (b Body) Pictures() []Field[string] {
	var named []Field[string]
	if b.Doc == nil || !bytes.Contains(b.Source, []byte("![")) {
		return nil
	}
	ast.Walk(b.Doc, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		img, ok := n.(*ast.Image)
		if ok && entering && !bytes.Contains(img.Destination, []byte(":")) {
			named = append(named, Field[string]{PictureName(string(img.Destination)), b.named(img)})
		}
		return ast.WalkContinue, nil
	})
	return named
}

// PictureName turns what a body calls one of the site's pictures into its name
// relative to content/pictures: damsons.jpg, pictures/damsons.jpg and
// ../pictures/damsons.jpg are one. A space may be written as %20.
func PictureName(dest string) string {
	if plain, err := url.PathUnescape(dest); err == nil {
		dest = plain
	}
	name := path.Clean("/" + dest)
	if _, after, ok := strings.Cut(name, "/pictures/"); ok {
		return after
	}
	return name[1:]
}

// named is where the body names a picture: after the block around it begins.
func (b Body) named(img *ast.Image) Pos {
	var block ast.Node = img
	for block != nil && (block.Type() == ast.TypeInline || block.Lines().Len() == 0) {
		block = block.Parent()
	}
	start := 0
	if block != nil {
		start = block.Lines().At(0).Start
	}
	if i := bytes.Index(b.Source[start:], img.Destination); i > 0 {
		start += i
	}
	before := b.Source[:start]
	begin := bytes.LastIndexByte(before, '\n') + 1
	pos := Pos{File: b.Pos.File, Line: b.Pos.Line + bytes.Count(before, []byte("\n")), Col: start - begin + 1}
	if begin == 0 {
		pos.Col += b.Pos.Col - 1
	}
	return pos
}
