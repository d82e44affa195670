package build

import "stillroom/content"

type listNode struct {
	Type  string     `json:"@type"`
	Items []itemNode `json:"itemListElement"`
}

type itemNode struct {
	Type     string `json:"@type"`
	Position int    `json:"position"`
	Name     string `json:"name,omitempty"`
	URL      string `json:"url,omitempty"`
	Item     string `json:"item,omitempty"`
}

// trail is the way from the home page to a page, as the page shows it. The page
// itself needs no address there.
// https://developers.google.com/search/docs/appearance/structured-data/breadcrumb
func (e *edition) trail(links []Link) node {
	list := listNode{Type: "BreadcrumbList"}
	for i, l := range links {
		item := itemNode{Type: "ListItem", Position: i + 1, Name: l.Name}
		if !l.Here {
			item.Item = e.absolute(l.Address)
		}
		list.Items = append(list.Items, item)
	}
	return list
}

// recipeList is for a page that lists recipes, in the order in which it does.
// https://developers.google.com/search/docs/appearance/structured-data/carousel
func (e *edition) recipeList(recipes []*content.Recipe) node {
	list := listNode{Type: "ItemList", Items: []itemNode{}}
	for i, r := range recipes {
		list.Items = append(list.Items, itemNode{Type: "ListItem", Position: i + 1, URL: e.absolute(recipeAddress(r))})
	}
	return list
}
