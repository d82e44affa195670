package validate

// shortJar reports a last jar, half full, processed with the others.
var shortJar = &Rule{
	ID:       "short-jar",
	Severity: Advice,
	Summary:  "a last jar, half full, processed with the others",
	Doc: `The process was not tested with inches of air in the jar: it may not seal, and
what is at the top dries and darkens. Use a smaller jar, or put that one in the
refrigerator.`,
	Source: Source{
		Title:   "Home canners' forum on headspace",
		Address: "http://forums.gardenweb.com/forums/load/harvest/msg081501524992.html",
	},
	Practice: &Practice{
		Phrases: `half_full|half_filled|partial|partially_filled|partly_filled|short|not_quite_full jar~|jars .. process~|can|along|too|as_well|with_the|goes|go|fine|in
			process~|can .. half_full|half_filled|partial|partially_filled|partly_filled|last_short jar~; last jar .. half|only|not .. full .. process~|anyway|too|with|along
			half|part|third .. jar .. left ... can|canned|process~|processed .. along|with|too; can|process~ .. half_full|half_filled|short|partial|part_filled .. jar~|jars? .. with|along|too`,
		Where:   inCanned,
		Message: "a jar that is not full is processed",
		Advice:  "Say: a smaller jar, or the refrigerator.",
	},
}
