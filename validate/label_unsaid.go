package validate

import "stillroom/content"

// labelUnsaid gives advice on frozen and dried food that nobody is told to
// label.
var labelUnsaid = &Rule{
	ID:       "label-unsaid",
	Severity: Advice,
	Summary:  "food for the freezer or the dry store without a word on labels",
	Doc: `Frozen packages look alike after a week. Name, date and kind of pack on each saves
what would be thrown out unknown.`,
	Source: Source{
		Title:   "MSU Extension, packing freezer containers",
		Address: "https://angelfire.com/mo3/abcdefg200/survlib/pfs/01600507.htm",
	},
	CheckText: checkLabelUnsaid,
}

var labelling = fewOf("label labels labeled labelled labeling labelling dated mark marked")

func checkLabelUnsaid(t *Text) []Finding {
	if t.Recipe == nil || len(t.Recipe.Body.Method) == 0 || !t.hasWay(content.Freezer, content.Drying) {
		return nil
	}
	for s := range t.sentences(placeStep, placeNotes, placeHead) {
		if s.holds(&labelling) {
			return nil
		}
	}
	return []Finding{{
		Pos:     t.Recipe.Body.Method[0].Pos,
		Message: "no step labels the packages",
		Advice:  "Say: label them with the name and the date.",
	}}
}
