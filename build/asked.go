package build

import (
	"slices"
	"strings"

	"stillroom/content"
	"stillroom/validate"
)

// Asked are the answers to what readers ask of a recipe every year: may I
// change this, how long does it keep, what if a jar does not seal.
type Asked struct {
	Ways  []AskedWay
	Keeps []AskedTerm // none for a recipe without a canned way
}

// An AskedWay answers for one way of keeping.
type AskedWay struct {
	Heading  string // empty where the recipe has one way
	First    []Answer
	Topics   []AskedTopic // the rest
	Rest     int          // how many answers they have
	Unsealed []Sourced    // what becomes of a jar that did not seal, in that order
	Table    string       // where the figures stand by altitude; empty for ways without
}

// An AskedTopic is a heading over answers that belong together.
type AskedTopic struct {
	Name    string
	Asks    string // what its answers are on: Citric acid for lemon juice; less salt
	Answers []Answer
}

// An Answer says what is published on a change.
type Answer struct {
	Asks    string // A double batch
	Verdict validate.Verdict
	Word    string // the verdict in words
	Sourced
}

// An AskedTerm is how long the food keeps in one state.
type AskedTerm struct {
	Name string // Sealed
	Time string // 12 months; empty where none is published
	Sourced
}

// verdictWords never say more than is published: what may be changed still has
// to agree with everything else on the page.
var verdictWords = map[validate.Verdict]string{
	validate.May: "You may", validate.MayNot: "You may not", validate.Unknown: "Not known",
}

// asksFirst are the changes that stand open, in this order; the others are
// behind a fold.
var asksFirst = []string{"double-batch", "fresh-juice", "larger-jar", "less-sugar", "less-acid", "anything"}

// folded is from how many answers on a fold is worth its click.
const folded = 3

func asked(r *content.Recipe) Asked {
	var a Asked
	ids := keepingIDs(r)
	for i, w := range validate.Changes(r) {
		way := askedWay(w)
		if len(way.First)+way.Rest == 0 {
			continue
		}
		way.Heading = nameWay(w.Keeping.Way.V).heading
		if w.Keeping.Way.V.Canned() {
			way.Table = "#" + ids[i]
		}
		a.Ways = append(a.Ways, way)
	}
	if len(a.Ways) == 1 {
		a.Ways[0].Heading = ""
	}
	for _, t := range validate.KeepingTimes(r) {
		a.Keeps = append(a.Keeps, AskedTerm{Name: capital(string(t.State)), Time: typeset(t.Time), Sourced: sourced(t.Says, t.Source)})
	}
	return a
}

func askedWay(w validate.WayChanges) AskedWay {
	var way AskedWay
	for _, c := range w.Changes {
		if !slices.Contains(asksFirst, c.ID) {
			way.file(c)
		}
	}
	for _, id := range asksFirst {
		for _, c := range w.Changes {
			if c.ID == id {
				way.First = append(way.First, answer(c))
			}
		}
	}
	if way.First == nil || way.Rest < folded {
		for _, t := range way.Topics {
			way.First = append(way.First, t.Answers...)
		}
		way.Topics, way.Rest = nil, 0
	}
	for _, m := range validate.UnsealedJar(w.Keeping) {
		way.Unsealed = append(way.Unsealed, sourced(m.Says, m.Source))
	}
	return way
}

// file puts an answer under its topic. Those of a topic follow one another.
func (w *AskedWay) file(c validate.Change) {
	if n := len(w.Topics); n == 0 || w.Topics[n-1].Name != c.Topic {
		w.Topics = append(w.Topics, AskedTopic{Name: c.Topic})
	}
	t := &w.Topics[len(w.Topics)-1]
	t.Answers = append(t.Answers, answer(c))
	if t.Asks == "" {
		t.Asks = c.Asks
	} else {
		t.Asks += "; " + uncapital(c.Asks)
	}
	w.Rest++
}

func answer(c validate.Change) Answer {
	return Answer{Asks: c.Asks, Verdict: c.Verdict, Word: verdictWords[c.Verdict], Sourced: sourced(c.Says, c.Source)}
}

// uncapital writes what is asked in the middle of a sentence.
func uncapital(s string) string { return strings.ToLower(s[:1]) + s[1:] }

func isWeb(address string) bool {
	return strings.HasPrefix(address, "https://") || strings.HasPrefix(address, "http://")
}
