package validate

import "strings"

// irregular holds the forms that do not follow from the base form of a word.
var irregular = map[string]string{
	"put": "put puts putting", "set": "set sets setting", "cut": "cut cuts cutting", "let": "let lets letting",
	"run": "run runs running ran", "stand": "stand stands standing stood", "take": "take takes taking took taken",
	"keep": "keep keeps keeping kept", "leave": "leave leaves leaving left", "tell": "tell tells telling told",
	"give": "give gives giving gave given", "make": "make makes making made", "begin": "begin begins beginning began begun",
	"hold": "hold holds holding held", "throw": "throw throws throwing threw thrown", "eat": "eat eats eating ate eaten",
	"freeze": "freeze freezes freezing froze frozen", "say": "say says saying said", "read": "read reads reading",
	"know": "know knows knowing knew known", "think": "think thinks thinking thought", "write": "write writes writing wrote written",
	"hear": "hear hears hearing heard", "see": "see sees seeing saw seen", "go": "go goes going went gone",
	"forget": "forget forgets forgetting forgot forgotten", "forbid": "forbid forbids forbidding forbade forbidden",
	"lose": "lose loses losing lost", "break": "break breaks breaking broke broken", "bring": "bring brings bringing brought",
	"find": "find finds finding found", "get": "get gets getting got gotten", "lay": "lay lays laying laid",
	"teach": "teach teaches teaching taught", "sit": "sit sits sitting sat", "swear": "swear swears swearing swore sworn",
	"quit": "quit quits quitting", "omit": "omit omits omitting omitted", "refer": "refer refers referring referred",
	"bake": "bake bakes baking baked", "do": "do does doing did done", "have": "have has having had",
	"jar": "jar jars", "lid": "lid lids", "band": "band bands", "ring": "ring rings", "oven": "oven ovens", "half": "half halves",
	"tie": "tie ties tying tied", "die": "die dies dying died", "hide": "hide hides hiding hid hidden",
	"shut": "shut shuts shutting", "sink": "sink sinks sinking sank sunk", "dig": "dig digs digging dug",
	"open": "open opens opening opened", "can": "can cans canning canned", "eye": "eye eyes",
	"sterilise":  "sterilise sterilises sterilising sterilised sterilize sterilizes sterilizing sterilized",
	"pasteurise": "pasteurise pasteurises pasteurising pasteurised pasteurize pasteurizes pasteurizing pasteurized",
	"recognise":  "recognise recognises recognised recognize recognizes recognized",
	"mould":      "mould moulds mold molds", "mouldy": "mouldy moldy", "odour": "odour odours odor odors", "flavour": "flavour flavours flavor flavors",
	"colour": "colour colours color colors", "leaf": "leaf leaves", "refrigerate": "refrigerate refrigerates refrigerating refrigerated refrigeration",
}

// forms gives a word and all that English makes of it: turn, turns, turning,
// turned.
func forms(base string) []string {
	if all, ok := irregular[base]; ok {
		return strings.Fields(all)
	}
	stem, last := base, base[len(base)-1]
	end := func(s string) bool { return strings.HasSuffix(base, s) }
	switch {
	case end("ee"), end("oe"), end("ye"):
		return []string{base, base + "s", base + "ing", base + "d"}
	case last == 'e':
		stem = base[:len(base)-1]
		return []string{base, base + "s", stem + "ing", base + "d"}
	case last == 'y' && len(base) > 1 && !isVowel(base[len(base)-2]):
		stem = base[:len(base)-1]
		return []string{base, stem + "ies", base + "ing", stem + "ied"}
	case end("s"), end("x"), end("ch"), end("sh"), end("z"):
		return []string{base, base + "es", base + "ing", base + "ed"}
	case end("o"):
		return []string{base, base + "s", base + "es", base + "ing", base + "ed"}
	case doubles(base):
		stem = base + base[len(base)-1:]
	}
	return []string{base, base + "s", stem + "ing", stem + "ed"}
}

// doubles reports whether a word of one syllable doubles its last letter:
// flip, flipping.
func doubles(w string) bool {
	n := len(w)
	if n < 3 || isVowel(w[n-1]) || strings.IndexByte("wxy", w[n-1]) >= 0 || !isVowel(w[n-2]) || isVowel(w[n-3]) {
		return false
	}
	for i := range n - 3 {
		if isVowel(w[i]) {
			return false
		}
	}
	return true
}

func isVowel(c byte) bool { return strings.IndexByte("aeiou", c) >= 0 }
