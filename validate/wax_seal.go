package validate

// waxSeal reports wax or paraffin as the seal of a jar.
var waxSeal = &Rule{
	ID:       "wax-seal",
	Severity: Error,
	Summary:  "wax or paraffin as the seal of a jar",
	Doc: `Wax shrinks as it cools and cracks when it is knocked; mould and its poisons get
in at the edge. A jar for the shelf has a new flat lid and band, and is
processed. Discs of waxed paper close nothing either.`,
	Source: Source{
		Title:   "Illinois Extension, unsafe methods",
		Address: "https://extension.illinois.edu/cottage-food/unsafe-methods",
	},
	Practice: &Practice{
		Phrases: `seal~|cover~|top~|cap~|finish~|close~ .. with .. paraffin|wax|beeswax; pour~|spoon~|melt~|drip~|ladle~|brush~ .. paraffin|wax|beeswax
			layer|cap|seal|film|inch|coat|coating|plug of .. paraffin|wax|beeswax; paraffin|wax|beeswax seal|seals|layer|cap|topping|plug|over|on top
			wax|waxed|paraffin disc~|disk~|circle~|round~|paper_disc~; under .. paraffin; sealing wax; use~|add~|with|using .. paraffin|wax .. instead|seal~|lid~|top|jar~
			paraffin .. keeps|seals|protects|works|does|will; maybe paraffin wax? .. for|to .. seal~|sealing|jars|top|tops; slab|block|cake of .. paraffin|wax
			melted|molten|hot|liquid wax|paraffin|beeswax; dipped|soaked|brushed in|with .. wax|paraffin|beeswax; wax|paraffin|beeswax .. is|makes|as .. lid|seal|all
			cellophane disc~|circle~|cover~|round~|top~|lid~; candle wax; film|skin|coat|layer|splash of .. wax|paraffin|cellophane`,
		Where:   waxIsWax,
		Message: "wax does not seal a jar",
		Advice:  "Use new lids and the process of the recipe.",
	},
}

// waxIsWax leaves out waxed paper, wax beans, wax peppers and the wax of letters.
func waxIsWax(_ *Text, s *sentence, h hit) bool {
	if s.anyOf("label labels envelope tag tags ribbon") {
		return false
	}
	for i := h.from; i < h.to; i++ {
		if s.isAny(i, "wax waxed paraffin") && s.isAny(i+1, "paper bean beans pepper peppers lined gourd cucumber cucumbers lamp heater stove") {
			return false
		}
	}
	return true
}
