package validate

// approvedClaim reports a recipe called approved, or certain to be safe.
var approvedClaim = &Rule{
	ID:       "approved-claim",
	Severity: Error,
	Summary:  "a recipe called approved, or certain to be safe",
	Doc: `No office approves home recipes, and nobody can promise that a jar made
elsewhere is safe. Say which publication the process is from, and what was
changed.`,
	Source: Source{Title: "inference from UW Extension, safe modifications (memory)"},
	Practice: &Practice{
		Phrases: `usda|fda|government|extension|officially approved|certified|endorsed|safe recipe|method|process|jam|salsa|pickles|canning|sauce|and|!; approved|certified by .. usda|fda|government|extension|authorities
			completely|totally|guaranteed safe; percent|%|per_cent safe; guaranteed .. safe|botulism; guarantee~ .. safe|safety; this|our|my recipe|salsa|jam|sauce|method .. is .. safe .. to|for can|canning|shelf
			promise~|guarantee~|vouch~ ... safe|safety; this|my|our|every|these|all recipe~|jar~|jam|salsa|pickles .. is|are .. perfectly|absolutely|entirely|completely|totally safe; foolproof|failsafe canning|recipe|method
			recipe|process|method|jam|salsa|pickles|sauce|jelly|this is|are .. usda|fda|government|extension|officially? approved|certified|endorsed; usda|fda|government|extension .. say~|says|calls|considers|approves|approved|certifies|certified .. this|my|our|the .. one|recipe|jam|jelly|salsa|sauce|pickles .. is|are? .. safe|fine|approved`,
		Where:   claimsRecipe,
		Message: "nobody approves home recipes or can promise that they are safe",
		Advice:  "Name the publication that the process is from.",
	},
}

// claimsRecipe holds for claims of a recipe or a jar, not of a thing to do.
func claimsRecipe(t *Text, s *sentence, h hit) bool {
	return !s.isAny(h.to, "distance temperature drinking") && !s.anyOf("lab-approved office agency")
}
