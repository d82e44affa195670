package validate

import (
	"strings"
	"sync"
)

// A use is a food or another ingredient that a sentence of the method names.
type use struct {
	*sentence
	meaning
	from, to int // its tokens
}

// uses gives what the sentence names of the things that the tables know. They
// are looked up once.
func (s *sentence) uses() []use {
	if !s.searched {
		s.searched = true
		s.used = s.lookUp(kitchen().book)
	}
	return s.used
}

func (s *sentence) lookUp(book *phraseBook) []use {
	all := s.rooms.foods.list(4)
	for i := 0; i < s.len(); {
		if t := s.at(i); (t.simple || t.number().set()) && s.lex.words[t.id].food == 0 {
			i++
			continue
		}
		m, taken := s.foodAt(book, i)
		if taken == 0 {
			i++
			continue
		}
		all = append(all, use{s, m, i, i + taken})
		i += taken
	}
	return s.rooms.foods.kept(all)
}

// foodAt gives the meaning of the longest phrase of the book that begins at a
// word, and how many words it takes; 0 if there is none. No mark stands in it.
func (s *sentence) foodAt(book *phraseBook, i int) (m meaning, taken int) {
	at := int32(0)
	for k := i; k < s.len(); k++ {
		if at = book.after(at, s.foodWord(book, k)); at == 0 {
			break
		}
		if br := &book.branches[at]; br.ends {
			m, taken = br.meaning, k+1-i
		}
		if s.at(k).after != 0 {
			break
		}
	}
	return m, taken
}

// foodWord gives the number that a word has in the book; 0 if it has none.
func (s *sentence) foodWord(book *phraseBook, i int) int32 {
	switch t := s.at(i); {
	case t.simple:
		return int32(s.lex.words[t.id].food)
	case t.number().set():
		return 0
	}
	return book.words[plain(s.word(i))]
}

// emptyWords say nothing of what an ingredient is.
const emptyWords = ` fresh ripe large small medium whole ground dried chopped sliced diced minced peeled cored pitted crushed grated
	shredded thinly finely coarsely freshly of and or with the a an red green white black yellow golden brown sweet hot cold warm good
	best any kind sort pure plain unsalted salted cooked canned bottled frozen raw firm tender young old about each plus more extra
	optional packed level heaped heaping scant lightly dark light baby mild strong thin thick cut into in to for from at your own other
	such as percent cup tablespoon teaspoon pound ounce gram quart pint head bunch clove stick sprig piece box package bag can jar
	half quarter inch organic local unwaxed washed trimmed hulled stemmed halved quartered box regular powdered granulated distilled
	european washed pickling canning kosher sea table cooking fine coarse natural raw unsweetened sweetened clear long short straight `

var emptySet = sync.OnceValue(func() map[string]bool {
	empty := map[string]bool{}
	for w := range strings.FieldsSeq(emptyWords) {
		empty[w] = true
	}
	return empty
})

// isEmptyWord reports whether a word says nothing of what an ingredient is.
func isEmptyWord(w string) bool { return emptySet()[w] }

// itemWords gives the words that say what an ingredient is, in the singular.
func itemWords(text string) (words []string) {
	for w := range strings.FieldsFuncSeq(plain(text), func(r rune) bool { return r < 'a' || r > 'z' }) {
		one := singular(w)
		if len(one) > 1 && !isEmptyWord(one) && !isEmptyWord(w) {
			words = append(words, one)
		}
	}
	return words
}
