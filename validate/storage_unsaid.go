package validate

// storageUnsaid gives advice on jars for the shelf that nobody is told where to
// keep.
var storageUnsaid = &Rule{
	ID:       "storage-unsaid",
	Severity: Advice,
	Summary:  "jars for the shelf without a word on where to keep them",
	Doc: `Sealed jars keep best between 50 and 70 °F, dark and dry, and never above 95 °F. A step
or a note should say so.`,
	Source: Source{
		Title:   "UC ANR, canning",
		Address: "https://ucanr.edu/sites/MFPOC/food-preservation/Canning",
	},
	CheckText: checkStorageUnsaid,
}

// The words for where jars are kept.
var (
	storeWords = fewOf("dark larder cellar")
	someplace  = fewOf("somewhere place")
)

func checkStorageUnsaid(t *Text) []Finding {
	if t.Recipe == nil || len(t.Recipe.Body.Method) == 0 || !t.canned() {
		return nil
	}
	for s := range t.sentences() {
		if s.holds(&storeWords) || s.holds(&someplace) && s.anyOf("cool dry") || s.has(famCupboard) && s.anyOf("store keep put stand") {
			return nil
		}
	}
	return []Finding{{
		Pos:     t.Recipe.Body.Method[0].Pos,
		Message: "nothing says where the jars are kept",
		Advice:  "Say: somewhere cool, dark and dry.",
	}}
}
