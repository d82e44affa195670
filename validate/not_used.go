package validate

import "fmt"

// notUsed reports an ingredient that no step names.
var notUsed = &Rule{
	ID:       "not-used",
	Severity: Warning,
	Summary:  "an ingredient that no step uses",
	Doc: `What stands in the list and in no step leaves the reader to guess: was it
forgotten, or left out of the recipe? A step uses an ingredient if it names it, or its
kind ("the spices"), or the group it stands in ("the brine"), or "everything".`,
	Source:    Source{Title: "UMaine Cooperative Extension Bulletin 4086, readability (inference)"},
	CheckText: checkNotUsed,
}

func checkNotUsed(t *Text) []Finding {
	if t.Recipe == nil || len(t.Recipe.Body.Method) == 0 {
		return nil
	}
	m := t.method()
	var fs []Finding
	for _, in := range t.items() {
		if in.Class.Kind == ItemWater || m.names(in) {
			continue
		}
		fs = append(fs, Finding{
			Pos:     in.Pos,
			Message: fmt.Sprintf("no step uses the %s", in.Item),
			Advice:  "Say where it goes, or take it off the list.",
		})
	}
	return fs
}
