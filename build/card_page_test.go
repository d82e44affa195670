package build

import (
	"bytes"
	"html"
	"regexp"
	"slices"
	"strings"
	"testing"

	"stillroom/content"
	"stillroom/themes"
)

// What a cook needs at the stove is on the card of every canned recipe of the
// example: the whole table, the clock, the jar, the acid, the headspace, the
// pack, the source, and every step to its last word.
func TestCardHoldsWhatThePageDoes(t *testing.T) {
	files := byPath(published(t))
	e := newEdition(exampleChecked(t).Site(), exampleChecked(t).Day(), &Assets{})
	canned := 0
	for _, r := range e.recipes {
		card := unspaced(bytesOf(t, files[pagePath(cardAddress(r))]))
		var want []string
		for _, k := range e.keepingBlocks(r) {
			canned += one(k.Canned)
			want = append(want, k.Heading, k.Batch, k.Clock)
			want = append(want, k.Before)
			for _, f := range k.Facts {
				want = append(want, f.Name, f.Number, f.Also, f.Note)
			}
			for _, table := range k.Tables {
				want = append(want, table.Caption)
				for _, b := range table.Rows {
					want = append(want, b.Altitude, b.Also)
					for _, f := range b.Figures {
						want = append(want, f.Number+" "+f.Unit)
					}
				}
			}
			if k.Agrees != nil {
				want = append(want, k.Agrees.Food, k.Agrees.Publication, k.Agrees.Table, k.Agrees.Seen)
			}
		}
		for _, g := range r.Ingredients {
			for _, i := range g.Items {
				want = append(want, typeset(i.Amount.Text), i.Item)
			}
		}
		for _, p := range r.Body.Method {
			for _, s := range p.Steps {
				want = append(want, s.Text)
			}
		}
		for _, w := range asked(r).Ways {
			for _, m := range w.Unsealed {
				want = append(want, m.Says)
			}
		}
		for _, refusal := range refusals(asked(r)) {
			want = append(want, refusal.What)
		}
		for _, w := range append(want, texts(r.Cautions)...) {
			if w = unspaced([]byte(w)); !strings.Contains(card, w) {
				t.Errorf("the card of %s lacks %q", r.Slug, w)
			}
		}
	}
	if canned < 10 {
		t.Errorf("only %d canned ways", canned)
	}
}

func one(yes bool) int {
	if yes {
		return 1
	}
	return 0
}

var marked = regexp.MustCompile(`<[^>]*>`)

// unspaced gives the text of a page without marks and spaces.
func unspaced(page []byte) string {
	text := marked.ReplaceAllString(string(page), "")
	return strings.Map(func(c rune) rune {
		if strings.ContainsRune(" \n\u00a0’'", c) {
			return -1
		}
		return c
	}, html.UnescapeString(text))
}

// Each paper has a page in the style, in lengths: CSS Paged Media 3 has no name
// for A6, and a browser prints a size that it does not know on another paper
// (PR-01 of the table of standards).
func TestPapersHavePages(t *testing.T) {
	style := string(bytes.Join(styles(theme(t).Files), nil))
	size := regexp.MustCompile(`@page card-([a-z0-9]+)\{size:([\d.]+(?:mm|in)) ([\d.]+(?:mm|in))`)
	pages := make(map[string]bool)
	for _, m := range size.FindAllStringSubmatch(style, -1) {
		pages[m[1]] = true
	}
	for _, p := range papers {
		if !pages[p.ID] || !strings.Contains(style, "#paper-"+p.ID+":checked") {
			t.Errorf("the style has no page for %s", p.ID)
		}
	}
	if len(pages) != len(papers) {
		t.Errorf("the style has pages for %v", pages)
	}
}

func styles(files []themes.File) [][]byte {
	var all [][]byte
	for _, f := range files {
		if strings.HasSuffix(f.Name, ".css") {
			all = append(all, f.Data)
		}
	}
	return all
}

func TestPapersFor(t *testing.T) {
	for u, want := range map[content.Units]string{"": "index", content.US: "index", content.Metric: "a6"} {
		var chosen []string
		for _, p := range papersFor(u) {
			if p.Chosen {
				chosen = append(chosen, p.ID)
			}
		}
		if !slices.Equal(chosen, []string{want}) {
			t.Errorf("for %q: %q are chosen, want %s", u, chosen, want)
		}
	}
}
