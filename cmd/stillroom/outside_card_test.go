package main

import (
	"path/filepath"
	"strings"
)

// cards are the print cards of the recipes that are looked at.
func (s site) cards() []string {
	var paths []string
	for _, r := range s.recipes {
		paths = append(paths, s.path(filepath.Join(filepath.Dir(r), "card", "index.html")))
	}
	return paths
}

const cardStyle = "assets/card.*.css"

// paperCheckers judge what comes out of a printer.
var paperCheckers = []outsider{
	{
		name:     "cards on paper",
		source:   "CSS Paged Media 3, ISO 216; by Chromium and poppler",
		programs: []string{"chromium-headless-shell", "pdftotext"},
		command:  func(s site) []string { return script("print.mjs", append([]string{s.dir}, s.cards()...)...) },
		damages: []damage{
			{"a paper size that is none", replace(cardStyle, "size:105mm 148mm", "size:A6"), "on a6: a side is 612 by 792 points"},
			{"a card that is cut off", add(cardStyle, ".card{height:60mm;overflow:hidden}"), "not printed: "},
			{"a card without its clock", add(cardStyle, ".c-clock{display:none}"), "not printed: jars the water"},
			{"letters too small to read", add(cardStyle, ".c-how li{font-size:7pt}"), "text of 7.0 points"},
			{"letters where printers do not print", add(cardStyle, "@page card-a6{margin:0}"), "stands at the edge"},
			{"a card of too many sides", add(cardStyle, strings.Repeat(".c-how", 3)+" li{margin-bottom:9cm}"), `on letter: \d+ sides`},
		},
	},
}
