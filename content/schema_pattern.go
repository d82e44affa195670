package content

import (
	"strings"
	"sync"
	"time"
)

// definitionNames name what the $defs of a schema hold, each a way of writing
// one value.
var definitionNames = map[Want]string{
	WantText:        "text",
	WantWhole:       "whole_number",
	WantNumber:      "number",
	WantTruth:       "truth",
	WantDate:        "date",
	WantMonth:       "month",
	WantLength:      "length",
	WantTemperature: "temperature",
	WantDuration:    "duration",
	WantAltitude:    "altitude",
	WantPressure:    "pressure",
	WantShare:       "strength",
	WantYield:       "yield",
	WantJar:         "jar",
	WantAcid:        "acid",
	WantFile:        "file",
	WantPath:        "path",
	WantAddress:     "address",
	WantSlug:        "slug",
	WantLanguage:    "language",
	WantIngredient:  "ingredient",
	WantChapter:     "chapter",
	WantTimes:       "times",
	WantPressures:   "pressures",
}

func definitions() object {
	var defs object
	for w := WantText; w <= WantReasons; w++ {
		if name, ok := definitionNames[w]; ok {
			defs = append(defs, member{name, append(object{{"description", w.String()}}, definition(w)...)})
		}
	}
	return defs
}

// scalar are the types of what may stand for a text: YAML takes 1984 for a
// number, and the name of a recipe may be that.
var scalar = []string{"string", "number", "boolean"}

// definition gives what a value must be. A pattern lets pass all that is read,
// and some of what is not: no pattern reads a fraction as a cook does.
func definition(w Want) object {
	switch w {
	case WantText:
		return object{{"type", scalar}, {"pattern", `\S`}}
	case WantWhole:
		return object{{"type", "integer"}, {"minimum", 0}}
	case WantNumber:
		return object{{"type", []string{"number", "string"}}, {"minimum", 0}, {"pattern", `^\s*[.\p{N}]`}}
	case WantTruth:
		return object{{"type", "boolean"}}
	case WantSlug: // 1984.md is a recipe too
		return object{{"type", []string{"string", "integer"}}, {"pattern", patterns()[w]}}
	case WantTimes:
		return bandMap(WantDuration)
	case WantPressures:
		return bandMap(WantPressure)
	}
	return object{{"type", "string"}, {"pattern", patterns()[w]}}
}

// patterns gives the pattern of each value that is a text of its own kind.
var patterns = sync.OnceValue(func() map[Want]string {
	return map[Want]string{
		WantDate:        `^\s*[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])\s*$`,
		WantMonth:       `^\s*(` + monthWords() + `)\.?\s*$`,
		WantLength:      measured(LengthDim),
		WantTemperature: measured(TemperatureDim),
		WantDuration:    measured(TimeDim),
		WantAltitude:    measured(AltitudeDim),
		WantPressure:    measured(PressureDim),
		WantShare:       measured(ShareDim),
		WantYield:       `[^\p{N}\s.,/-]`,
		WantJar:         `^[\s-]*(` + jarWords() + `)[\s\S]*$|` + measured(VolumeDim, "jar", "jars"),
		WantAcid:        `^\s*(` + anyCase("natural") + `|` + anyCase("in") + `[ -]` + anyCase("recipe") + `)\s*$|^\s*\S[\s\S]* per `,
		WantFile:        `^\s*[^/\\\s][^\\]*$`,
		WantPath:        `^\s*/[^?#\\]+$`,
		WantAddress:     `^\s*` + anyCase("http") + `[sS]?://[^\\]+$`,
		WantSlug:        `^\s*[a-z0-9-]+\s*$`,
		WantLanguage:    `^\s*[A-Za-z]{2,8}(-[A-Za-z0-9]{1,8})*\s*$`,
		WantIngredient:  `\S`,
		WantChapter:     `^\s*([0-9]{1,2}:)?[0-9]{1,2}:[0-5][0-9]\s`,
	}
})

// measured makes the pattern of an amount in units of a dimension, which other
// words may follow: a number first, the unit last.
func measured(dim Dimension, after ...string) string {
	end := nonWords
	if after != nil {
		end = `([^\p{L}\p{N}]+(` + wordsPattern(after) + `))?` + nonWords
	}
	return `^\s*[.\p{N}]([\s\S]*[^\p{L}])?(` + unitWords(dim) + `)` + end + `$`
}

// nonWords may follow a unit: the full stop of an abbreviation, spaces.
const nonWords = `[^\p{L}\p{N}]*`

// unitWords makes the pattern of all spellings of a dimension's units.
func unitWords(dim Dimension) string {
	var spellings []string
	for _, row := range units {
		if row.dim == dim {
			spellings = append(spellings, strings.Split(row.spellings, ", ")...)
		}
	}
	return wordsPattern(spellings)
}

// wordsPattern makes the pattern of any of some words or phrases, in any case.
func wordsPattern(list []string) string {
	var parts []string
	for _, s := range list {
		var words []string
		for word := range strings.FieldsSeq(s) {
			words = append(words, anyCase(word))
		}
		parts = append(parts, strings.Join(words, nonWords))
	}
	return strings.Join(parts, "|")
}

// anyCase makes the pattern of a word in capitals or small letters.
func anyCase(word string) string {
	var b strings.Builder
	for _, r := range word {
		switch {
		case 'a' <= r && r <= 'z' || 'A' <= r && r <= 'Z':
			b.WriteString("[" + strings.ToLower(string(r)) + strings.ToUpper(string(r)) + "]")
		case r == '°':
			b.WriteString("[°º˚]")
		default:
			b.WriteRune(r)
		}
	}
	return b.String()
}

func monthWords() string {
	names := []string{"sept"}
	for m := time.January; m <= time.December; m++ {
		names = append(names, m.String(), m.String()[:3])
	}
	return wordsPattern(names)
}

// jarWords makes the pattern of the names of jars, with hyphens or spaces.
func jarWords() string {
	var parts []string
	for _, size := range jarSizes {
		for _, name := range []string{size.name, size.other} {
			if name != "" {
				parts = append(parts, strings.ReplaceAll(anyCase(name), "-", `[\s-]+`)+"[sS]?")
			}
		}
	}
	return strings.Join(parts, "|")
}

// bandMap gives a map from bands of altitude to values. In brackets a reader of
// plain YAML cuts a band at the comma of its number, and finds a key without a
// value, and another one: both are let pass, as they are read here.
func bandMap(w Want) object {
	return object{
		{"type", "object"},
		{"minProperties", 1},
		{"patternProperties", object{
			{`\p{N}([\s\S]*[^\p{L}])?(` + unitWords(AltitudeDim) + `)([^\p{L}]|$)`, reference(w)},
			{`^[\p{L}\s]*[0-9]{1,3}([^\p{L}]*[0-9]{1,3})?$`, object{{"type", "null"}}},
		}},
		{"additionalProperties", false},
	}
}
