package validate

import "stillroom/content"

// unsealedRescue reports unsealed jars put in the refrigerator, where the
// process was never right.
var unsealedRescue = &Rule{
	ID:       "unsealed-rescue",
	Severity: Error,
	Summary:  "unsealed jars put in the refrigerator, where the process was never right",
	Doc: `"Put any jar that did not seal in the refrigerator" is right for food that had
its tested process. Of beans or peas that were only boiled, that jar is the most
dangerous one: in 2018 three people were poisoned by such a jar. Put the process
right first.`,
	Source: Source{
		Title:   "NCHFP on the New York cases",
		Address: "https://preservingfoodathome.com/2019/03/15/learn-before-canning-vegetables/?shared=email&msg=fail",
	},
	Practice: &Practice{
		Phrases: `refrigerate~|eat~|use~ .. unsealed|failed .. @jar; unsealed|failed @jar .. in|into|go|goes .. @fridge; put~|keep~|store~ .. unsealed|failed .. @jar .. in .. @fridge
			refrigerate~ .. @jar|any|ones|those|those_that .. not|n't|didn't|failed|fail .. seal~|sealed; @jar .. did|do|has|have|didn't|doesn't|hasn't .. seal|sealed ... @fridge; didn't|doesn't|failed_to seal ... @fridge`,
		Where:   processWrong,
		Message: "an unsealed jar is kept cold, and its process was not right to begin with",
		Advice:  "Put the process right first: under pressure for low-acid food, or as a tested process says.",
	},
}

// processWrong holds where low-acid food is boiled, or no process is cited.
func processWrong(t *Text, _ *sentence, _ hit) bool {
	for _, m := range t.Matches {
		switch m.Keeping.Way.V {
		case content.BoilingWater, content.AtmosphericSteam:
			if m.Process == nil && m.Keeping.TestedBy == nil || m.Process != nil && m.Process.Acidity == LowAcid {
				return true
			}
		}
	}
	return false
}
