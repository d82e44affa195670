package build

import (
	"slices"

	"stillroom/content"
)

// A caution is what goes wrong at home however good the recipe is, and where
// it was published.
type caution struct {
	ways   []content.Way
	text   string
	short  string // the same on a card; it leaves out no figure
	source string
}

var (
	canned   = []content.Way{content.BoilingWater, content.AtmosphericSteam, content.PressureCanner}
	water    = []content.Way{content.BoilingWater}
	steam    = []content.Way{content.AtmosphericSteam}
	underPSI = []content.Way{content.PressureCanner}
)

const usdaGuide = "USDA Complete Guide to Home Canning, AIB 539 (2015)"

// cautions are in the order of the work.
var cautions = []caution{
	{canned, "Use no jar larger than those in the table: a larger one has not been tested.",
		"No jar larger than those in the table.",
		"North Dakota State University Extension, Play it safe"},
	{canned, "Use a new flat lid every time. Free the air bubbles, check the headspace again, and wipe each rim before the lid goes on.",
		"A new flat lid every time. Free the bubbles, check the headspace again, wipe the rim.",
		usdaGuide},
	{water, "Keep the water at least 1 inch over the jars from beginning to end.",
		"Water at least 1 inch over the jars, from beginning to end.",
		"Extension leaflet, canning vegetables (Oregon)"},
	{steam, "The steam canner is for acid food only, and never for more than 45 minutes, altitude included. The lid stays on throughout.",
		"Steam canner: acid food only, never more than 45 minutes, altitude included. The lid stays on.",
		"National Center for Home Food Preservation, newsflash on steam canners"},
	{underPSI, "Use a canner that holds at least 4 quart jars, never an electric multi-cooker, and have a dial gauge tested every year.",
		"Pressure canner: one for at least 4 quart jars, no electric multi-cooker; a dial gauge tested every year.",
		usdaGuide + "; PNW 421"},
	{underPSI, "Let the pressure fall by itself. When it is at zero, take the weight off and wait 10 minutes before you open the lid.",
		"Let the pressure fall by itself. At zero, take the weight off, wait 10 minutes, then open.",
		usdaGuide + " (the 10 minutes from memory)"},
	{water, "When the time is up, turn off the heat, take off the lid and wait 5 minutes before you lift the jars.",
		"Boiling water, time up: heat off, lid off, wait 5 minutes, then lift the jars.",
		usdaGuide},
	{canned, "Let the jars cool for 12 to 24 hours, untouched, and do not tighten the bands. Then take the bands off and test every seal.",
		"Cool 12 to 24 hours, untouched, bands as they are. Then bands off, and test every seal.",
		usdaGuide},
	{canned, "A jar that did not seal goes in the refrigerator and is eaten soon, or is processed again within 24 hours: new lid, full time.",
		"No seal: refrigerate and eat soon, or process again within 24 hours: new lid, full time.",
		usdaGuide},
	{canned, "Turning jars upside down, an oven, a microwave or a dishwasher cannot take the place of this process.",
		"No turning upside down, oven, microwave or dishwasher in place of this process.",
		usdaGuide + "; National Center for Home Food Preservation"},
	{canned, "Never taste what is in a jar that bulges, leaks, spurts or smells wrong.",
		"Bulging, leaking, spurting or smelling wrong: never taste it.",
		usdaGuide},
}

// cautionsFor gives the usual cautions for some ways of keeping, each once.
func cautionsFor(ways []content.Way) []string {
	return fromCautions(ways, func(c caution) string { return c.text })
}

// shortCautions are the same in short.
func shortCautions(ways []content.Way) []string {
	return fromCautions(ways, func(c caution) string { return c.short })
}

func fromCautions(ways []content.Way, words func(caution) string) []string {
	var texts []string
	for _, c := range cautions {
		if slices.ContainsFunc(c.ways, func(w content.Way) bool { return slices.Contains(ways, w) }) {
			texts = append(texts, words(c))
		}
	}
	return texts
}
