package validate

// mouldScraped reports mould scraped off, and the rest eaten.
var mouldScraped = &Rule{
	ID:       "mould-scraped",
	Severity: Error,
	Summary:  "mould scraped off, and the rest eaten",
	Doc: `Mould sends threads and poisons down where nobody sees them, and it uses up the
acid that keeps worse things from growing. A jar with mould in it is thrown out
whole. The white film on a crock of kraut is another matter: skim that.`,
	Source: Source{
		Title:   "University of Tennessee SP325-F",
		Address: "https://scribd.com/document/343592677/low-or-no-sugar-in-jams-jellies-and-preserves-pdf",
	},
	Practice: &Practice{
		Phrases: `scrape~|scoop~|skim~|lift~|spoon~|pick~|remove~|cut~|peel~|wipe~ off|away|out|the|any|that|a|bit|of|around|white|surface? off|away|out|the|any|of|around|bit|layer? surface|white|top|little|spot_of|patch_of? mould|mold|moulds|molds|mouldy_bit~|mouldy_layer|mouldy_part~|mouldy_top|mouldy_spot~|mouldy_piece~
			mould|mold .. can|may|should|could be? .. scraped|removed|skimmed|scooped|lifted|picked|cut|spooned; under|underneath|beneath|below .. mould|mold .. is|are|will .. fine|good|safe|perfectly|okay
			mould|mold .. just|simply .. scrape~|scoop~|remove~|skim~|lift~|cut~; eat .. around .. mould|mold; little|bit_of|spot_of|some mould|mold .. won't|never|doesn't|nothing|harmless|fine|no .. hurt|harm|worry|kill|problem|matter?
			scrape~ it|them off .. eat|use|enjoy; maybe mould|mold .. scrape~ it|them off; mould|mold .. is|are normal|harmless|fine|okay|ok|nothing
			mould|mold|fuzz ... scrape~|scoop~|cut~|lift~|spoon~|pick~|skim~|remove~ it|them|that off|away|out; fuzz|fuzzy|furry|fur .. on_top|on_the_top|surface ... scrape~|scoop~|cut~|lift~|spoon~|pick~|skim~
			mould|mold|mouldy|moldy|fuzz|furry|fuzzy ... rest|remainder|underneath|below .. fine|good|safe|okay|ok; lift~|spoon~|scoop~|cut~|scrape~|pick~|take~ .. mouldy|moldy|furry|fuzzy bit~|part~|patch~|layer|top|spot~; fuzz|fur .. on_top|on_the_top|surface .. nothing|harmless|fine|ok|normal; bit|spot|patch|little .. of fuzz|fur
			mould|mold ... taken|lifted|cut|scraped|spooned|picked off|away|out`,
		Where:   notAVessel,
		Message: "mould is scraped off and the rest eaten",
		Advice:  "Say that a mouldy jar is thrown out whole.",
	},
}

// notAVessel leaves out the mould that a jelly is turned out of, and mould
// that is thrown out with what it grew on.
func notAVessel(_ *Text, s *sentence, h hit) bool {
	for i := h.from; i < h.to; i++ {
		if s.isAny(i, "from") {
			return false
		}
	}
	return !s.anyIn("discard compost dump shelf shelves wall floor", 0, s.len())
}
