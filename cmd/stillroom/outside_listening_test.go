package main

// listeningCheckers use the page of an episode as a listener does.
var listeningCheckers = []outsider{{
	name:     "listening",
	source:   "WCAG 2.2, media fragments; a listener in Chromium",
	programs: []string{"chromium-headless-shell"},
	command:  func(s site) []string { return useScript("listening.mjs", s) },
	damages: []damage{
		{"a line off its mark", replace("assets/player.*.js", "currentTime=", "currentTime=9+"), "marks: the (chapter|line) plays from"},
		{"a page that pulls the reader along", replace("assets/player.*.js", "innerHeight", "1e9+innerHeight"), "the reader leads: (the page scrolls away|no way back)"},
		{"what was found is not told", replace("show-notes/blackberries-twice/index.html", `role="status"`, ``), "finding: what was found is not told to a screen reader"},
		{"tools without script", replace("show-notes/blackberries-twice/index.html", `aria-label="Transcript" hidden`, `aria-label="Transcript"`), "without script: tools are shown that do nothing"},
	},
}}
