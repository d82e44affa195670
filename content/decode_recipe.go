package content

import (
	"fmt"
	"slices"
	"strings"
	"time"
	"unicode/utf8"

	"go.yaml.in/yaml/v4"
)

// ReadRecipe reads one recipe. name is its path relative to the site's folder,
// content/recipes/damson-jam.md. It gives as much of the recipe as could be
// read, and the faults in order of their place.
func ReadRecipe(name string, data []byte) (*Recipe, []Fault) {
	r := &Recipe{File: name}
	d := decode(name, data, RecipeKeys, func(d *decoder, v value) { d.recipe(v, r) })
	r.Slug = d.slug()
	r.Body = d.body()
	r.Marks = d.marks()
	if r.Status.V == Draft {
		d.letWait()
	}
	return r, d.sorted()
}

func (d *decoder) recipe(v value, r *Recipe) {
	r.Keys = d.each(v, func(v value) {
		switch v.key.Name {
		case "name":
			r.Name = d.text(v)
		case "summary":
			r.Summary = d.summary(v)
		case "published":
			r.Published = as(d, v, ParseDate)
		case "updated":
			r.Updated = as(d, v, ParseDate)
		case "status":
			r.Status = word[Status](d, v)
		case "kind":
			r.Kind = word[Kind](d, v)
		case "produce":
			r.Produce = fields(d, v, d.produce)
		case "season":
			r.Season = fields(d, v, d.month)
		case "yield":
			r.Yield = as(d, v, ParseYield)
		case "times":
			r.Times = d.times(v)
		case "ingredients":
			r.Ingredients = d.ingredients(v)
		case "picture":
			r.Picture = d.picture(v)
		case "pictures":
			r.Pictures = d.pictures(v)
		case "gear":
			r.Gear = d.texts(v)
		case "cautions":
			r.Cautions = d.texts(v)
		case "scale":
			r.Scale = d.scale(v)
		case "keeping":
			r.Keeping = d.keepings(v)
		case "checked":
			r.Checked = d.checked(v)
		case "corrections":
			r.Corrections = d.corrections(v)
		case "withdrawn":
			r.Withdrawn = d.withdrawn(v)
		case "tags":
			r.Tags = d.texts(v)
		case "formerly":
			r.Formerly = fields(d, v, d.path)
		case "inspired_by":
			r.InspiredBy = d.text(v)
		case "batches":
			r.Batches = d.batches(v)
		case "accept":
			r.Accept = d.accept(v)
		}
	})
	d.published(v, r.Keys, r.Status)
}

// published reports a file without a day on which readers may see it, unless
// it is a draft.
func (d *decoder) published(v value, places map[string]Pos, s Field[Status]) {
	if places["published"].IsZero() && s.V != Draft {
		d.miss(&Key{Name: "published", Doc: "the day on which readers may see it, such as 2026-07-31; or write status: draft"}, v)
	}
}

// letWait says of what is missing, or was left blank, that it may come later.
func (s *source) letWait() {
	for i := range s.faults {
		f := &s.faults[i]
		f.Later = f.Kind == MissingKey || f.Kind == BadValue && slices.Contains(s.blanks, f.Pos)
	}
}

// maxSummary is the longest summary, in letters.
const maxSummary = 200

func (d *decoder) summary(v value) Field[string] {
	f := d.text(v)
	if n := utf8.RuneCountInString(f.V); n > maxSummary {
		d.fault(f.Pos, BadValue, fmt.Sprintf("the summary holds %d letters", n), fmt.Sprintf("shorten it to %d", maxSummary))
	}
	return f
}

// produce reads the name of a plant, which the pages are sorted by.
// longestProduce is the longest name of produce in bytes. Its address spells
// letters that are not Latin as numbers, and takes twice as many at most.
const longestProduce = 100

func (d *decoder) produce(v value) Field[string] {
	f := d.text(v)
	if len(f.V) > longestProduce {
		d.fault(f.Pos, BadValue, fmt.Sprintf("%q takes %d bytes, and the name of produce no more than %d", clip(f.V), len(f.V), longestProduce), "name it in a word or two")
		return Field[string]{}
	}
	if small := strings.ToLower(f.V); small != f.V {
		d.fault(f.Pos, BadValue, fmt.Sprintf("%q holds capital letters", clip(f.V)), "write "+clip(small))
	}
	return f
}

func (d *decoder) month(v value) Field[time.Month] { return as(d, v, ParseMonth) }

func (d *decoder) times(v value) (t Times) {
	d.each(v, func(v value) {
		f := as(d, v, ParseDuration)
		switch v.key.Name {
		case "hands_on":
			t.HandsOn = f
		case "cooking":
			t.Cooking = f
		case "waiting":
			t.Waiting = f
		}
	})
	return t
}

func (d *decoder) pictures(v value) (list []Picture) {
	d.list(v, func(v value) { list = append(list, *d.picture(v)) })
	return list
}

func (d *decoder) picture(v value) *Picture {
	p := new(Picture)
	d.each(v, func(v value) {
		switch v.key.Name {
		case "file":
			p.File = d.fileName(v)
		case "alt":
			p.Alt = d.text(v)
		case "credit":
			p.Credit = d.text(v)
		}
	})
	return p
}

func (d *decoder) scale(v value) Scale {
	s := Scale{Pos: d.place(v.Node)}
	d.each(v, func(v value) {
		switch v.key.Name {
		case "smallest":
			s.Smallest = d.factor(v)
		case "largest":
			s.Largest = d.factor(v)
		}
	})
	return s
}

func (d *decoder) checked(v value) Checked {
	c := Checked{Pos: d.place(v.Node)}
	d.each(v, func(v value) {
		switch v.key.Name {
		case "edition":
			c.Edition = as(d, v, ParseDate)
		case "date":
			c.Date = as(d, v, ParseDate)
		}
	})
	return c
}

// accept reads the rules whose warnings and advice are taken as read.
func (d *decoder) accept(v value) (list []Acceptance) {
	d.pairs(v, func(name, n *yaml.Node) {
		rule := Field[string]{name.Value, d.place(name)}
		d.given(value{Node: n, key: &Key{Name: name.Value, Doc: "the reason"}}, rule.Pos, func(v value) {
			list = append(list, Acceptance{Rule: rule, Reason: d.text(v)})
		})
	})
	return list
}
