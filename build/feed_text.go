package build

import (
	_ "embed"
	"html/template"
	"regexp"
	"slices"
	"strings"

	"stillroom/build/amount"
	"stillroom/content"
)

//go:embed feed_text.html
var feedTextSource string

var feedTextTemplate = template.Must(template.New("feed").Parse(feedTextSource))

// A feedText is a recipe as it is read in a program: the whole of it, without
// anything that only the site's own styles and scripts understand.
type feedText struct {
	Address     string
	Withdrawn   *WithdrawnPage // nil unless it was taken back; then nothing else stands here
	Corrections []Correction
	Summary     string
	Picture     *Picture
	Facts       []Fact
	Method      Method
	Ingredients []IngredientGroup
	Gear        []string
	Keeping     []KeepingBlock
	Cautions    []string
	Refusals    []Refusal // of what may be changed; what is published on each stands on the site
	Canned      bool
	Credit      string
	Checked     Day
}

// feedText gives a recipe as HTML for feeds.
func (e *edition) feedText(r *content.Recipe) string {
	t := &feedText{Address: recipeAddress(r), Corrections: corrections(r)}
	if r.Withdrawn != nil {
		t.Withdrawn = e.withdrawnPage(r)
	} else {
		e.fillFeedText(t, r)
	}
	var b strings.Builder
	if err := feedTextTemplate.Execute(&b, t); err != nil {
		panic(err) // our own template and values, written to memory
	}
	return e.toStandAlone(b.String(), t.Address)
}

func (e *edition) fillFeedText(t *feedText, r *content.Recipe) {
	method, err := newMarkdown(e.isOut, e.inFeed).method(r.Body)
	if err != nil {
		panic(err) // a body that was parsed, rendered to memory
	}
	ways := waysOf(r)
	t.Summary = r.Summary.V
	t.Picture = e.picture(r.Picture)
	t.Facts = recipeFacts(r)
	t.Method = method
	t.Ingredients = ingredientGroups(r, amount.Lines(r))
	t.Gear = typesetAll(r.Gear)
	t.Keeping = e.keepingBlocks(r)
	t.Cautions = append(texts(r.Cautions), cautionsFor(ways)...)
	t.Refusals = refusals(asked(r))
	t.Canned = slices.ContainsFunc(ways, content.Way.Canned)
	t.Credit = r.InspiredBy.V
	t.Checked = day(r.Checked.Date.V)
}

// inFeed finds a picture by what a body calls it, in one size: programs know
// little of others.
func (e *edition) inFeed(file, alt string) *Picture {
	p := e.inProse(file, alt)
	if p != nil {
		p.Srcset, p.WebP = "", ""
	}
	return p
}

var (
	// ours are attributes that mean something to the site's own styles alone.
	// In text a quotation mark is written &#34;, so that no word is taken for one.
	ours = regexp.MustCompile(` (?:class|role|tabindex|aria-[a-z]+|loading|decoding)="[^"]*"`)
	// ownLinks are links and pictures of the site.
	ownLinks = regexp.MustCompile(`( (?:href|src)=")(/[^"]*|#[^"]*)`)
)

// toStandAlone makes the HTML of a page's part one that can stand anywhere: RFC
// 4287, 3.1.1.2, and JSON Feed 1.1 want absolute addresses.
func (e *edition) toStandAlone(html, address string) string {
	html = ours.ReplaceAllString(html, "")
	return ownLinks.ReplaceAllStringFunc(html, func(m string) string {
		parts := ownLinks.FindStringSubmatch(m)
		if strings.HasPrefix(parts[2], "#") {
			return parts[1] + e.absolute(address) + parts[2]
		}
		return parts[1] + e.absolute(parts[2])
	})
}
