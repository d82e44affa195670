package build

import (
	"slices"
	"strconv"
	"strings"

	"stillroom/content"
)

// A recipeNode holds a recipe in the vocabulary of https://schema.org/Recipe.
// It has no ratings, since no reader has given any here, and no word on
// safety, for which the vocabulary has none.
type recipeNode struct {
	Type          string        `json:"@type"`
	ID            string        `json:"@id"`
	URL           string        `json:"url"`
	Name          string        `json:"name"`
	Description   string        `json:"description,omitempty"`
	Image         []string      `json:"image,omitempty"`
	Author        *personNode   `json:"author,omitempty"`
	DatePublished string        `json:"datePublished,omitempty"`
	DateModified  string        `json:"dateModified,omitempty"`
	InLanguage    string        `json:"inLanguage"`
	PrepTime      string        `json:"prepTime,omitempty"`
	CookTime      string        `json:"cookTime,omitempty"`
	TotalTime     string        `json:"totalTime,omitempty"`
	Yield         []string      `json:"recipeYield,omitempty"`
	Category      string        `json:"recipeCategory,omitempty"`
	Keywords      string        `json:"keywords,omitempty"`
	Tool          []string      `json:"tool,omitempty"`
	Ingredients   []string      `json:"recipeIngredient"`
	Instructions  []node        `json:"recipeInstructions,omitempty"`
	SubjectOf     []mentionNode `json:"subjectOf,omitempty"`
}

type sectionNode struct {
	Type  string     `json:"@type"`
	Name  string     `json:"name"`
	Steps []stepNode `json:"itemListElement"`
}

type stepNode struct {
	Type string `json:"@type"`
	Text string `json:"text"`
	URL  string `json:"url"`
}

// A mentionNode is another page of the site that holds a thing of its own.
type mentionNode struct {
	Type string `json:"@type"`
	ID   string `json:"@id"`
	Name string `json:"name"`
	URL  string `json:"url"`
}

// recipeFiles are the recipes for other programs: /recipes/SLUG/recipe.json.
func (e *edition) recipeFiles() []File {
	if e.settings.Address.V == "" {
		return nil
	}
	var files []File
	for _, r := range e.recipes {
		files = append(files, madeLater(recipeAddress(r)[1:]+"recipe.json", func() ([]byte, error) {
			return append([]byte(inSchemaOrg), e.recipeInJSON(r)[len("{"):]...), nil
		}))
	}
	return files
}

// recipeInJSON is the node of a recipe, for its page and for other programs.
func (e *edition) recipeInJSON(r *content.Recipe) inJSON {
	w, _ := e.nodes.of(r, func() (inJSON, error) { return mustJSON(e.recipeNode(r)), nil })
	return w
}

func (e *edition) recipeNode(r *content.Recipe) recipeNode {
	address := e.absolute(recipeAddress(r))
	n := recipeNode{
		Type:          "Recipe",
		ID:            address + "#recipe",
		URL:           address,
		Name:          r.Name.V,
		Description:   r.Summary.V,
		Image:         e.images(r),
		Author:        e.author(),
		DatePublished: r.Published.V.String(),
		DateModified:  r.Updated.V.String(),
		InLanguage:    e.language(),
		Yield:         yields(r.Yield.V),
		Category:      nameKind(r.Kind.V).one,
		Keywords:      keywords(r),
		Tool:          texts(r.Gear),
		Ingredients:   ingredientLines(r.Ingredients),
		Instructions:  instructions(address, r.Body.Method),
	}
	n.PrepTime, n.CookTime, n.TotalTime = isoTimes(r.Times)
	for _, ep := range e.heard[r.Slug] {
		n.SubjectOf = append(n.SubjectOf, e.mention("PodcastEpisode", episodeAddress(ep), "#episode", ep.Name.V))
	}
	return n
}

func (e *edition) mention(kind, address, anchor, name string) mentionNode {
	address = e.absolute(address)
	return mentionNode{Type: kind, ID: address + anchor, Name: name, URL: address}
}

// images are the addresses of the recipe's pictures: the shapes of the main one
// first, and the others as they are.
func (e *edition) images(r *content.Recipe) []string {
	var addresses []string
	for _, p := range append(picturesOf(r.Picture), r.Pictures...) {
		img, ok := e.assets.Picture(p.File.V)
		if !ok {
			continue
		}
		prints := []Print{img.Print}
		if len(img.Crops) > 0 {
			prints = img.Crops
		}
		for _, p := range prints {
			addresses = append(addresses, e.absolute(p.Src))
		}
	}
	return once(addresses)
}

// yields gives the number by itself as well, where it counts jars or pieces:
// consumers look for a plain number of servings.
func yields(y content.Yield) []string {
	if y.IsZero() {
		return nil
	}
	counted := !y.Jar.IsZero() || y.Unit.Dimension() == content.Count
	if !counted || y.IsRange() || !y.Low.IsInt() {
		return []string{y.Text}
	}
	return []string{y.Low.Num().String(), y.Text}
}

// keywords are the tags and the produce. They repeat no category.
func keywords(r *content.Recipe) string {
	kind := nameKind(r.Kind.V).one
	words := once(slices.Concat([]string{kind}, texts(r.Tags), texts(r.Produce)))
	return strings.Join(words[1:], ", ")
}

// once leaves out words that stood before, in whatever case.
func once(words []string) []string {
	seen := make(map[string]bool)
	return slices.DeleteFunc(words, func(w string) bool {
		key := strings.ToLower(w)
		again := seen[key]
		seen[key] = true
		return again
	})
}

func ingredientLines(groups []content.Group) []string {
	lines := []string{}
	for _, g := range groups {
		for _, i := range g.Items {
			lines = append(lines, i.Text)
		}
	}
	return lines
}

// instructions are the steps, in sections where the page has headings. Their
// numbers run through all sections, as they do on the page.
func instructions(address string, parts []content.Part) []node {
	var all []node
	number := 0
	for i, p := range parts {
		var steps []stepNode
		for _, s := range p.Steps {
			number++
			steps = append(steps, stepNode{Type: "HowToStep", Text: s.Text, URL: address + "#step-" + strconv.Itoa(number)})
		}
		if name := heading(p, i); name != "" {
			all = append(all, sectionNode{Type: "HowToSection", Name: name, Steps: steps})
			continue
		}
		for _, s := range steps {
			all = append(all, s)
		}
	}
	return all
}
