package content_test

import (
	"fmt"
	"testing/fstest"

	"stillroom/content"
)

func ExampleReadRecipe() {
	r, faults := content.ReadRecipe("content/recipes/damson-jam.md", []byte(`---
name: Damson jam
status: draft
produce: [damson plums]
keeping:
  - way: refrigerator
    keeps: 3 weeks
    heaspace: 1/4 in
---
1. Boil the plums with ½ cup water.
2. Add the sugar.
`))
	fmt.Println(r.Slug, r.Name.Pos, r.Name.V)
	for _, s := range r.Body.Method[0].Steps {
		fmt.Println(s.Pos.Line, s.Text)
	}
	for _, f := range faults {
		if f.Kind != content.MissingKey {
			fmt.Println(f.Pos, f.Message, "-", f.Advice)
		}
	}
	// Output:
	// damson-jam content/recipes/damson-jam.md:2:7 Damson jam
	// 10 Boil the plums with ½ cup water.
	// 11 Add the sugar.
	// content/recipes/damson-jam.md:8:5 unknown key heaspace - did you mean headspace?
}

func ExampleRead() {
	folder := fstest.MapFS{
		"content/site.yaml":      {Data: []byte("name: Hollow Lane\naddress: https://example.org/\n")},
		"content/pages/about.md": {Data: []byte("---\nname: About us\n---\nWe keep *everything* in jars.\n")},
	}
	site, faults, err := content.Read(folder, nil)
	if err != nil || len(faults) > 0 {
		fmt.Println(faults, err)
		return
	}
	page := site.Pages[0]
	fmt.Println(site.Settings.Address.V, page.Slug)
	fmt.Printf("%s", page.Body.HTML(page.Body.Doc))
	// Output:
	// https://example.org about
	// <p>We keep <em>everything</em> in jars.</p>
}
