package build

import "encoding/json"

// A node is a thing of the schema.org vocabulary. It says nothing that a reader
// of the page cannot see there.
type node any

// graph writes the nodes of a page as JSON-LD, ready to stand in a script
// element: encoding/json writes < and > and & so that nothing in a recipe can
// end that element. It gives nothing if the site has no address, since the
// vocabulary's consumers want absolute ones.
func (e *edition) graph(nodes ...node) []byte {
	if e.settings.Address.V == "" || len(nodes) == 0 {
		return nil
	}
	data := []byte(inSchemaOrg + `"@graph":[`)
	for i, n := range nodes {
		if i > 0 {
			data = append(data, ',')
		}
		if w, ok := n.(inJSON); ok {
			data = append(data, w...)
		} else {
			data = append(data, mustJSON(n)...)
		}
	}
	return append(data, "]}"...)
}

// inSchemaOrg begins what is said in the vocabulary.
const inSchemaOrg = `{"@context":"https://schema.org",`

// An inJSON is a node that is written already.
type inJSON []byte

// mustJSON is for values of our own types, which can always be written.
func mustJSON(v any) []byte {
	data, err := json.Marshal(v)
	if err != nil {
		panic(err)
	}
	return data
}

// absolute makes an address of the site one that stands anywhere.
func (e *edition) absolute(address string) string { return e.settings.Address.V + address }

type personNode struct {
	Type string `json:"@type"`
	Name string `json:"name"`
	URL  string `json:"url,omitempty"`
}

// author is the site's author, with the page about them if there is one.
func (e *edition) author() *personNode {
	name := e.settings.Author.Name.V
	if name == "" {
		return nil
	}
	p := &personNode{Type: "Person", Name: name}
	for _, page := range e.pages {
		if page.Slug == "about" {
			p.URL = e.absolute(pageAddress(page))
		}
	}
	return p
}

type websiteNode struct {
	Type        string      `json:"@type"`
	Name        string      `json:"name"`
	URL         string      `json:"url"`
	Description string      `json:"description,omitempty"`
	InLanguage  string      `json:"inLanguage"`
	Author      *personNode `json:"author,omitempty"`
}

// website is for the home page.
func (e *edition) website() node {
	return websiteNode{
		Type:        "WebSite",
		Name:        e.settings.Name.V,
		URL:         e.absolute(homeAddress),
		Description: e.settings.Tagline.V,
		InLanguage:  e.language(),
		Author:      e.author(),
	}
}
