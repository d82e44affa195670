package main

// stoveCheckers use a recipe page as a reader does: on a phone and on a desk, with the script and without, by keyboard
// alone, in the dark, on paper. What they demand is told in the scripts, each with its source.
var stoveCheckers = []outsider{
	{
		name:     "scaling",
		source:   "NCHFP on doubling, WCAG 2.2; a reader in Chromium",
		programs: []string{"chromium-headless-shell"},
		command:  func(s site) []string { return useScript("scaling.mjs", s) },
		damages: []damage{
			{"acid that grows in each jar", replace(stoveRecipe, `<li id="step-6">Put 2 tablespoons of`, `<li id="step-6">Put <span class="q" data-amount="2 tbsp|244|+q">2 tablespoons</span> of`), "two batches: the acid of a jar"},
			{"a pot that grows", replace(stoveRecipe, "&#34;apart&#34;:true", "&#34;apart&#34;:false"), "two batches: tomatoes in a pot"},
			{"controls without script", replace(stoveRecipe, `id="scaler" hidden`, `id="scaler"`), "without script: #scaler is shown, and does nothing"},
			{"a change that nobody hears of", replace(stoveRecipe, `id="now" role="status"`, `id="now"`), "statuses and targets: the role of what is said"},
			{"small buttons", add("assets/style.*.css", ".stepper button{min-width:0;width:20px}"), "statuses and targets: smaller than 44 px: more"},
			{"a table cut short on paper", add("assets/style.*.css", "@media print{.scale tbody tr:not([aria-current]){display:none}}"), "on paper: printed rows of the table: 1"},
		},
	},
	{
		name:     "altitude",
		source:   "the published tables, WCAG 2.2; a reader in Chromium",
		programs: []string{"chromium-headless-shell"},
		command:  func(s site) []string { return useScript("altitude.mjs", s) },
		damages: []damage{
			{"an altitude that is sent", add("assets/altitude.*.js", `;document.addEventListener("altitude",()=>fetch("/?"+document.getElementById("altitude").value));`), "an altitude: something was asked for"},
			{"a table cut down to one row", add("assets/style.*.css", ".scale tbody:has([aria-current]) tr:not([aria-current]){display:none}"), "an altitude: rows that can be seen: 1"},
			{"bands a foot off", replace(stoveRecipe, `data-to="1000"`, `data-to="1001"`), "edges of bands: 1,001 ft: "},
			{"a row marked by colour alone", add("assets/style.*.css", ".mine{display:none}"), "an altitude: words, since colour is not enough"},
			{"a unit that no key reaches", replace(beanRecipe, `id="altitude-unit"`, `id="altitude-unit" tabindex="-1"`), "by keyboard alone: the unit and its ring"},
			{"a frame lost in the dark", add("assets/style.*.css", ".scale tbody [aria-current]{outline:0}"), "the row in the dark: the frame"},
			{"a pressure that only a script tells", replace(beanRecipe, `<tbody>`, `<tbody hidden>`), "the tables without script: the rows"},
		},
	},
	{
		name:     "drawings",
		source:   "the published tables, WCAG 2.2; a reader in Chromium, and poppler",
		programs: []string{"chromium-headless-shell", "pdftotext"},
		command:  func(s site) []string { return useScript("drawings.mjs", s) },
		damages: []damage{
			{"a mark off its altitude", replace("assets/drawings.*.js", "4+92*", "6+92*"), "the mark on a chart: the sea: "},
			{"steps a foot off", replace(stoveRecipe, `<text data-to="1000"`, `<text data-to="1001"`), "the mark on a chart: 1,001 ft: "},
			{"a day that knows no altitude", replace("assets/drawings.*.js", "translate(0", "rotate(0"), `the processing in the day: at "5200" ft`},
			{"words over words", add("assets/drawings.*.css", ".plate .d-takes.d-takes{font-size:40px}"), "words in the pictures: .* lies over"},
			{"words too small", add("assets/drawings.*.css", ".cut svg{width:200px}"), "words in the pictures: .* px high at 320 px"},
			{"a chart for screens alone", add("assets/drawings.*.css", "@media print{.plate .d-chart{display:none}}"), "pictures on paper: pictures on A4"},
			{"a picture without words", replace(stoveRecipe, " is left free", ""), "pictures in words: no picture says in words: ½ in"},
		},
	},
	{
		name:     "questions",
		source:   "NCHFP on doubling, USDA AIB 539 (2015), WCAG 2.2; a reader in Chromium",
		programs: []string{"chromium-headless-shell"},
		command:  func(s site) []string { return useScript("asked.mjs", s) },
		damages: []damage{
			{"a larger jar allowed", replace(stoveRecipe, `A larger jar</b> <span class="verdict">You may not`, `A larger jar</b> <span class="verdict">You may`), "the questions: what stands open"},
			{"answers that a click alone opens", replace(stoveRecipe, `<summary><b class="ask">Acid`, `<summary inert><b class="ask">Acid`), "the questions: a fold does not open by the enter key"},
			{"what is unknown told as what may be", add("assets/style.*.css", ".unknown .verdict{border-style:solid!important}"), "what nobody has tested: what is unknown looks like the rest"},
			{"a card that forbids nothing", replace("recipes/crushed-tomatoes/card/index.html", "You may not:", "You may:"), "on paper: what the card forbids"},
			{"juice for one batch", replace("recipes/crab-apple-jelly/index.html", `data-amount="4 cup||q"`, ""), "juice that no list has: the juice of half a batch"},
		},
	},
	{
		name:     "light or dark",
		source:   "Media Queries 5, WCAG 2.2; a reader in Chromium",
		programs: []string{"chromium-headless-shell"},
		command:  func(s site) []string { return useScript("scheme.mjs", s) },
		damages: []damage{
			{"a choice that is forgotten", replace("assets/scheme.*.js", "setItem", "getItem"), "dark where the system is light: dark on another page"},
			{"fields of the other scheme", add("assets/style.*.css", ":root{color-scheme:light dark}"), "light where the system is dark: the fields of the browser"},
			{"a choice that cannot be seen", add("assets/style.*.css", ".foot .picks input+span{outline:0!important}"), "dark where the system is light: the choice has no focus ring"},
			{"a choice without script", replace(stoveRecipe, `id="scheme" hidden`, `id="scheme"`), "without script, light: the choice is shown, and does nothing"},
		},
	},
	{
		name:     "stove",
		source:   "WCAG 2.2, ARIA 1.2, Screen Wake Lock; a reader in Chromium",
		programs: []string{"chromium-headless-shell"},
		command:  func(s site) []string { return useScript("stove.mjs", s) },
		damages: []damage{
			{"an alarm that goes on", replace("assets/stove.*.js", "2.9", "29"), "two timers at once: a tone of 29"},
			{"a forgetful page", replace("assets/kept.*.js", "setItem", "getItem"), "ticks: what is ticked after a reload"},
			{"a processing time that is paused", replace("assets/stove.*.js", "Start again", "Pause"), "the processing clock: a processing time can be paused"},
			{"a face that is read out every second", replace("assets/stove.*.js", `"aria-live","off"`, `"aria-live","polite"`), "two timers at once: what the faces say by themselves"},
			{"timers over the page", add("assets/style.*.css", "html.cooking{scroll-padding:0!important}.timers{min-height:60vh}"), "within reach: the timers lie over what has the focus"},
			{"a screen that goes dark", replace("assets/stove.*.js", "wakeLock", "sleepLock"), "large type: the lock on the screen"},
			{"timers for a mouse alone", add("assets/stove.*.js", `;document.addEventListener("focusin",e=>e.target.closest("#timers")&&e.target.blur());`), "by keyboard alone: no tab reaches Pause"},
			{"a stove without script", replace("recipes/blackberry-jam/index.html", `id="stove" hidden`, `id="stove"`), "steps without script: #stove is shown"},
		},
	},
	{
		name:     "pictures",
		source:   "HTML Living Standard, Core Web Vitals; a reader in Chromium, and poppler",
		programs: []string{"chromium-headless-shell", "pdfimages"},
		command:  func(s site) []string { return useScript("pictures.mjs", s) },
		damages: []damage{
			{"files far too wide", replace(stoveRecipe, `sizes="(min-width: 83rem) 41rem, (min-width: 56rem) 48vw, 92vw"`, `sizes="400vw"`), "what is chosen at /recipes/crushed-tomatoes/: the file is"},
			{"WebP that nobody takes", replace(stoveRecipe, "image/webp", "image/none"), "what is chosen at /recipes/crushed-tomatoes/: the format: "},
			{"a picture for screens alone", add("assets/style.*.css", "@media print{main picture{display:none}}"), "on paper at /recipes/crushed-tomatoes/: of 1 pictures, 0"},
			{"no room for a picture", replace(stoveRecipe, `width="1440" height="1080" fetchpriority`, "fetchpriority"), "pictures that come late at /recipes/crushed-tomatoes/: the room"},
		},
	},
}

// useScript has a reader use the site, or of a damaged copy only what its fault names: "use: what is wrong with it".
func useScript(name string, s site) []string {
	if s.fault == "" {
		return script(name, s.dir)
	}
	return script(name, s.dir, s.fault)
}

// stoveRecipe is the page that most of these uses are of.
const stoveRecipe = "recipes/crushed-tomatoes/index.html"

// beanRecipe is the one with a table for each gauge.
const beanRecipe = "recipes/green-beans-in-pints/index.html"
