package validate

import (
	"fmt"
	"slices"
	"strings"
	"sync"
	"time"
)

// A kitchenTable is all that is known of foods and ingredients by name.
type kitchenTable struct {
	produce []Produce
	book    *phraseBook
}

// A phrase that ends in "=" has no plural; the name of a food that begins with
// "~" stands for other phrases, and is none itself.
var kitchen = sync.OnceValue(loadKitchen)

func loadKitchen() *kitchenTable {
	k := &kitchenTable{book: newPhraseBook()}
	for _, r := range readTable("produce.tsv") {
		p := produceOf(r)
		k.produce = append(k.produce, p)
		m := meaning{kind: p.Group.kind(), produce: len(k.produce)}
		if p.Name == "garlic" {
			m.kind = ItemGarlic
		}
		if name := r.text("produce"); name[0] != '~' {
			k.teach(r, name, m)
		}
		for _, alias := range r.list("also") {
			k.teach(r, alias, m)
		}
	}
	for _, r := range readTable("items.tsv") {
		m := meaning{kind: ItemKind(r.text("kind")), variety: r.text("variety")}
		for _, phrase := range r.list("phrases") {
			k.teach(r, phrase, m)
		}
	}
	return k
}

// teach adds a phrase that no other row may have.
func (k *kitchenTable) teach(r row, phrase string, m meaning) {
	if !k.book.add(phrase, m) {
		panic(fmt.Sprintf("%s: %q is known already", r.place, phrase))
	}
}

func produceOf(r row) Produce {
	p := Produce{
		Name:   strings.Trim(r.text("produce"), "~="),
		Group:  Group(r.text("group")),
		Basis:  r.text("basis"),
		Season: months(r),
	}
	switch {
	case r.text("plural") != "":
		p.Plural = r.text("plural")
	case strings.HasSuffix(r.text("produce"), "="):
		p.Plural = p.Name
	default:
		p.Plural = plural(p.Name)
	}
	for _, food := range r.list("ph") {
		rows, ok := phRows()[food]
		if !ok {
			panic(fmt.Sprintf("%s: no pH is listed of %q", r.place, food))
		}
		p.PH = append(p.PH, rows...)
	}
	if len(p.PH) > 0 {
		p.Low = slices.MinFunc(p.PH, func(a, b PHRange) int { return a.Low.Cmp(b.Low) }).Low
		p.High = slices.MaxFunc(p.PH, func(a, b PHRange) int { return a.High.Cmp(b.High) }).High
		p.Acidity = acidityOf(p.Low, p.High)
	}
	if r.text("acidity") != "" {
		p.Acidity = word(r, "acidity", acidities)
	}
	for _, id := range r.list("blanch") {
		p.Blanch = append(p.Blanch, blanching(id))
	}
	return p
}

// blanching makes a blanching of a limit: blanch-asparagus-small:small.
func blanching(id string) Blanching {
	id, form, _ := cutForm(id)
	l := LimitOf(id)
	return Blanching{Form: form, Low: l.Low, High: l.High, Source: l.Source}
}

// cutForm parts a limit from the form that it is for: blanch-celery has none.
func cutForm(id string) (limit, form string, ok bool) { return strings.Cut(id, ":") }

// months reads a season: "6-8" is June to August, "11-2" November to February.
func months(r row) []time.Month {
	text := r.text("season")
	if text == "" {
		return nil
	}
	from, to, isRange := strings.Cut(text, "-")
	if !isRange {
		to = from
	}
	first, last := time.Month(r.whole(from)), time.Month(r.whole(to))
	var ms []time.Month
	for m := time.January; m <= time.December; m++ {
		within := first <= m && m <= last
		if first > last {
			within = m >= first || m <= last
		}
		if within {
			ms = append(ms, m)
		}
	}
	return ms
}
