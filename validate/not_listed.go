package validate

import (
	"fmt"
	"slices"
	"strings"

	"stillroom/content"
)

// notListed reports an ingredient that a step adds and the list does not have.
var notListed = &Rule{
	ID:       "not-listed",
	Severity: Warning,
	Summary:  "an ingredient in the steps that is not in the list",
	Doc: `What is only in the steps is in nobody's shopping, and in none of the sums: a
vegetable that is added by the way escapes the comparison of acid with what needs it.
Water and ice need not be listed; what is served with it is left out of account.`,
	Source:    Source{Title: "UMaine Cooperative Extension Bulletin 4086, readability (inference)"},
	CheckText: checkNotListed,
}

func checkNotListed(t *Text) []Finding {
	if t.Recipe == nil || len(t.Recipe.Ingredients) == 0 {
		return nil
	}
	var fs []Finding
	seen := map[string]bool{}
	for s := range t.sentences(placeStep) {
		for _, u := range s.uses() {
			name := s.words(u.from, u.to)
			if seen[strings.ToLower(name)] || !u.isAdded() || t.listed().has(u) || s.isServed() || s.stance(hit{from: u.from, to: u.to}) != told {
				continue
			}
			seen[strings.ToLower(name)] = true
			fs = append(fs, Finding{
				Pos:     s.pos(u.from),
				Message: fmt.Sprintf("%s: added here and not listed", name),
				Advice:  "Put it on the list, with its amount.",
			})
		}
	}
	return fs
}

// isServed reports whether the sentence is about what is eaten with it, later.
func (s *sentence) isServed() bool {
	return s.anyOf("serve serving served eat toast bread table supper later tonight garnish like scald wash soap soapy")
}

var (
	likening  = fewOf("like as than for if until")
	puttingIn = fewOf("add stir mix combine sprinkle blend whisk fold toss drop tuck throw crumble squeeze dissolve scatter strew poke slip slide")
)

// isAdded reports whether the thing is put in: it follows a verb of adding in
// its clause, and is of a kind that counts.
func (u use) isAdded() bool {
	switch u.kind {
	case ItemOther, ItemWater, ItemGrain, ItemPrepared, ItemStock, ItemDairy, ItemPasta, ItemAcidTablet:
		return false
	}
	if u.produce > 0 && slices.Contains(generic, kitchen().produce[u.produce-1].Name) {
		return false
	}
	const far = 16
	for k := u.from - 1; k >= max(0, u.from-far); k-- {
		if parts(u.at(k).after) {
			return false
		}
		if u.isOne(k, &likening) {
			return false
		}
		if u.isOne(k, &puttingIn) {
			return !u.isAny(u.to, "mill jar jars pot pan press knife bag water color colour")
		}
		if u.is(k, famOrder) {
			return false
		}
	}
	return false
}

// generic are foods that are named by their kind, whatever the list says.
var generic = []string{
	"berry", "mixed fruit", "pepper", "bean", "greens", "herb", "nut", "meat", "fish", "melon", "squash", "mixed vegetables",
	"game bird", "mixed citrus", "flower", "egg",
}

// A listing is what the list of ingredients holds, for looking up what the
// steps add.
type listing struct {
	items []Item
	words saidWords
}

func (t *Text) listed() *listing {
	if t.list == nil {
		t.list = t.listing()
	}
	return t.list
}

func (t *Text) listing() *listing {
	l := &listing{words: newSaidWords(t.lex)}
	add := func(text string) {
		for w := range strings.FieldsFuncSeq(plain(text), func(r rune) bool { return r < 'a' || r > 'z' }) {
			l.words.add(w)
		}
	}
	add(t.Recipe.Name.V)
	for _, p := range t.Recipe.Produce {
		add(p.V)
	}
	l.items = t.items()
	for _, in := range l.items {
		add(in.For)
		add(in.Text)
		add(in.Item)
		add(in.Note)
	}
	for _, k := range t.Recipe.Keeping {
		if k.Acid.V.Source == content.AcidPerJar {
			add(k.Acid.V.Added.Text)
		}
	}
	return l
}

// has reports whether the list holds what a step names: by a word, by the same
// food, or for what comes in one kind only by the kind.
func (l *listing) has(u use) bool {
	all := true
	for i := u.from; i < u.to; i++ {
		w := singular(plain(u.word(i)))
		listed := l.words.have(w)
		if listed && !isEmptyWord(w) {
			return true
		}
		all = all && listed
	}
	if all {
		return true
	}
	return slices.ContainsFunc(l.items, func(in Item) bool {
		if in.Class.Kind != u.kind {
			return false
		}
		if u.produce > 0 {
			return in.Class.Produce.Name == kitchen().produce[u.produce-1].Name
		}
		return u.kind != ItemSpice && u.kind != ItemHerb
	})
}
