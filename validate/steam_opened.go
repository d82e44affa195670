package validate

import "stillroom/content"

// steamOpened reports a steam canner opened or topped up during the process.
var steamOpened = &Rule{
	ID:       "steam-opened",
	Severity: Warning,
	Summary:  "a steam canner opened or topped up during the process",
	Doc: `Steam keeps the jars at the heat of boiling water only while the dome is on.
Lifted for a look or to add water, the jars cool, and the time is lost. A
process that would need more water is too long for a steam canner.`,
	Source: Source{
		Title:   "NCHFP, steam canner statement",
		Address: "http://nchfp.uga.edu/publications/nchfp/factsheets/steam_canners.html",
	},
	Practice: &Practice{
		Phrases: `add~|pour~|top~|refill~|replenish~ .. water ... during|while|halfway|partway|if|as ; lift~|open~|raise~|remove~|take~ .. dome|lid|cover|top .. to|and .. check|look|peek|add|see|top; peek~ .. under|inside .. dome|lid|cover; top up .. water|canner|pan
			peek~|look~ .. in|inside|under .. now|to|and|every|halfway|while; lift~|open~|raise~|remove~|take~ .. dome|lid|cover .. halfway|midway|during|now_and_then|every|from_time|once; check~ .. water .. halfway|during|now_and_then|every`,
		Where:   inSteam,
		Message: "a steam canner is opened while it works",
		Advice:  "Leave the dome on from the first steam to the end.",
	},
}

// inSteam holds in recipes for a steam canner, while it works.
func inSteam(t *Text, s *sentence, _ hit) bool {
	if s.anyOf("off before") || s.forCold() {
		return false
	}
	return t.hasWay(content.AtmosphericSteam) && !t.hasWay(content.BoilingWater) || s.anyOf("steam") && s.anyOf("canner") && !t.hasWay(content.PressureCanner)
}
