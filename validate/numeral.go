package validate

// numerals are the values of numbers in words.
var numerals = map[string]int64{
	"zero": 0, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9, "ten": 10,
	"eleven": 11, "twelve": 12, "thirteen": 13, "fourteen": 14, "fifteen": 15, "sixteen": 16, "seventeen": 17, "eighteen": 18,
	"nineteen": 19, "twenty": 20, "thirty": 30, "forty": 40, "fifty": 50, "sixty": 60, "seventy": 70, "eighty": 80, "ninety": 90,
}

// learnNumerals notes the values of numbers in words.
func (l *lexicon) learnNumerals() {
	for w, n := range numerals {
		id := l.id(w)
		l.words[id].numeral = uint8(n + 1)
	}
}

// numeral gives the value of a word, if it is a number.
func (s *sentence) numeral(i int) (int64, bool) {
	if i < 0 || i >= s.len() || !s.at(i).simple {
		return 0, false
	}
	n := s.lex.words[s.at(i).id].numeral
	return int64(n) - 1, n > 0
}

// isPositive reports whether a word is a number, and not zero.
func (s *sentence) isPositive(i int) bool {
	n, ok := s.numeral(i)
	return ok && n > 0
}

// numberFrom reads the number that begins at a token, in digits or in words:
// 45, forty-five, a thousand, two and a half, half, a quarter. It gives where
// the number ends.
func (s *sentence) numberFrom(i int) (n ratio, next int, ok bool) {
	if i >= s.len() {
		return ratio{}, i, false
	}
	if t := s.at(i); t.number().set() {
		return t.number(), i + 1, true
	}
	if !s.isNumeral(i) {
		return ratio{}, i, false
	}
	if n, next, ok := s.partFrom(i); ok {
		return n, next, true
	}
	n, next, ok = s.wholeFrom(i)
	if !ok {
		return ratio{}, i, false
	}
	if s.isAny(next, "and") && s.isAny(next+1, "a one") && s.isAny(next+2, "half quarter") {
		part := ratio{1, 2}
		if s.isAny(next+2, "quarter") {
			part = ratio{1, 4}
		}
		return ratio{n.num*part.den + part.num, part.den}, next + 3, true
	}
	return n, next, true
}

// isNumeral reports whether a number in words may begin at a token.
func (s *sentence) isNumeral(i int) bool {
	switch s.word(i) {
	case "a", "an", "couple":
		return true
	}
	return s.is(i, famNumeral)
}

// partFrom reads a part of one: half, a quarter, three quarters, a third.
func (s *sentence) partFrom(i int) (ratio, int, bool) {
	top := int64(1)
	if v, ok := s.numeral(i); ok && v > 0 && v < 4 {
		top = v
		i++
	} else if s.isAny(i, "a an") {
		i++
	}
	switch s.word(i) {
	case "half", "halves":
		return ratio{top, 2}, i + 1, true
	case "quarter", "quarters":
		return ratio{top, 4}, i + 1, true
	case "third", "thirds":
		return ratio{top, 3}, i + 1, true
	case "eighth", "eighths":
		return ratio{top, 8}, i + 1, true
	}
	return ratio{}, i, false
}

// wholeFrom reads a whole number in words: twelve, forty-five, a dozen, a
// thousand, thirteen hundred and fifty.
func (s *sentence) wholeFrom(i int) (ratio, int, bool) {
	start, sum, part := i, int64(0), int64(0)
	for ; i < s.len(); i++ {
		w := s.word(i)
		v, isNumeral := s.numeral(i)
		switch {
		case isNumeral && (part == 0 || part%100 == 0 && part > 0 || part%10 == 0 && part >= 20 && part < 100 && v < 10):
			part += v
		case w == "hundred" && (part > 0 || i > start):
			part = max(part, 1) * 100
		case w == "dozen" && part < 100 && (part > 0 || i > start):
			return ratio{sum + max(part, 1)*12, 1}, i + 1, true
		case w == "thousand" && (part > 0 || i > start):
			sum, part = max(part, 1)*1000, 0
		case i == start && s.isAny(i, "a an"):
			if u := s.word(i + 1); u != "hundred" && u != "thousand" && u != "dozen" && u != "couple" {
				return ratio{1, 1}, i + 1, true
			}
		case w == "couple" && s.isAny(i+1, "of"):
			return ratio{2, 1}, i + 2, true
		case w == "and" && part%100 == 0 && part+sum > 0 && s.isPositive(i+1):
		default:
			return ratio{sum + part, 1}, i, i > start && (sum+part > 0 || s.isAny(i-1, "zero"))
		}
		if i > start && parts(s.at(i).after) {
			i++
			break
		}
	}
	return ratio{sum + part, 1}, i, i > start && sum+part > 0
}
