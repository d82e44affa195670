package content

// A Key is a key of the front matter, or of site.yaml: what it means, and what
// it wants to be given.
type Key struct {
	Name     string
	Want     Want
	List     bool     // a list of what is wanted
	Required bool     // must stand in every map of its sort
	Words    []string // the words to choose from, for WantWord; nil otherwise
	Keys     KeyTable // the keys that may stand under it; nil for a plain value
	Or       KeyTable // the keys that may stand there instead of Keys; nil if none
	For      []Way    // the ways of keeping that it means something for; nil for all of them
	Needed   []Way    // the ways of keeping that must have it
	Instead  string   // a key that may stand in place of a needed one
	Doc      string   // what it means, in a line
}

// A KeyTable holds the keys that may stand in one map, in the order in which
// they are best written. Nobody may change one.
type KeyTable []Key

// Find gives the key of a name, or nil.
func (t KeyTable) Find(name string) *Key {
	for i := range t {
		if t[i].Name == name {
			return &t[i]
		}
	}
	return nil
}

// A Want is what a key wants to be given.
type Want int

// The wants. WantKeys is a map; WantTextOrKeys, WantIngredient and WantChapter
// are a text or a map; WantTimes, WantPressures and WantReasons are maps whose
// keys the cook makes up: bands of altitude, and names of rules.
const (
	WantText Want = iota
	WantWord
	WantWhole
	WantNumber
	WantTruth
	WantDate
	WantMonth
	WantLength
	WantTemperature
	WantDuration
	WantAltitude
	WantPressure
	WantShare
	WantYield
	WantJar
	WantAcid
	WantFile
	WantPath
	WantAddress
	WantSlug
	WantLanguage
	WantKeys
	WantTextOrKeys
	WantIngredient
	WantChapter
	WantTimes
	WantPressures
	WantReasons
)

var wants = [...]string{
	WantText:        "a text",
	WantWord:        "one of a few words",
	WantWhole:       "a whole number",
	WantNumber:      "a number",
	WantTruth:       "true or false",
	WantDate:        "a date such as 2026-07-31",
	WantMonth:       "a month such as jul",
	WantLength:      "a length such as 1/4 in",
	WantTemperature: "a temperature such as 68 °F",
	WantDuration:    "a time such as 20 min or 3 weeks",
	WantAltitude:    "an altitude such as 4,500 ft",
	WantPressure:    "a pressure such as 11 psi",
	WantShare:       "a strength such as 2.5%",
	WantYield:       "a yield such as 6 half-pint jars",
	WantJar:         "a size of jar such as half-pint",
	WantAcid:        "natural, in-recipe, or an addition such as 2 tbsp bottled lemon juice per quart",
	WantFile:        "the name of a file",
	WantPath:        "an old path such as /2019/08/damson-jam/",
	WantAddress:     "an address such as https://example.org/page",
	WantSlug:        "a recipe by the name of its file, such as damson-jam",
	WantLanguage:    "a language such as en or en-GB",
	WantKeys:        "keys of its own",
	WantTextOrKeys:  "a text or keys of its own",
	WantIngredient:  "an ingredient such as 6 cups damson plums, halved",
	WantChapter:     "a chapter such as 0:00 Welcome",
	WantTimes:       "a time for each band of altitude",
	WantPressures:   "a pressure for each band of altitude",
	WantReasons:     "rules, each with a reason",
}

// String tells what is wanted as the end of a sentence: a length such as
// 1/4 in.
func (w Want) String() string { return wants[w] }

// Text reports whether a text, a number or a date may be given, and not only
// keys.
func (w Want) Text() bool {
	switch w {
	case WantKeys, WantTimes, WantPressures, WantReasons:
		return false
	}
	return true
}

// RecipeKeys are the keys of a recipe's front matter.
var RecipeKeys = KeyTable{
	{Name: "name", Required: true, Doc: "what the recipe is called"},
	{Name: "summary", Required: true, Doc: "one or two sentences, at most 200 characters"},
	{Name: "published", Want: WantDate, Doc: "the day on which readers may see it; a day to come holds it back until then"},
	{Name: "updated", Want: WantDate, Doc: "the day of the last change that readers should know of"},
	{Name: "status", Want: WantWord, Words: statuses, Doc: "ready, which need not be written, or draft"},
	{Name: "kind", Want: WantWord, Words: kinds, Required: true, Doc: "what sort of food it makes"},
	{Name: "produce", List: true, Required: true, Doc: "the main produce in lower case, the most important first"},
	{Name: "season", Want: WantMonth, List: true, Doc: "the months in which it is made; those of the produce if left out"},
	{Name: "yield", Want: WantYield, Required: true, Doc: "what one batch makes"},
	{Name: "times", Want: WantKeys, Keys: timesKeys, Doc: "what a cook has to set aside"},
	{Name: "ingredients", Want: WantIngredient, List: true, Required: true, Keys: itemKeys, Or: groupKeys, Doc: "the ingredients, one a line, or in groups"},
	{Name: "picture", Want: WantKeys, Keys: pictureKeys, Doc: "the main picture"},
	{Name: "pictures", Want: WantKeys, List: true, Keys: pictureKeys, Doc: "more pictures"},
	{Name: "gear", List: true, Doc: "what has to be at hand besides jars and lids"},
	{Name: "cautions", List: true, Doc: "sentences for the caution box"},
	{Name: "scale", Want: WantKeys, Keys: scaleKeys, Doc: "how far readers may scale the batch"},
	{Name: "keeping", Want: WantKeys, List: true, Required: true, Keys: keepingKeys, Doc: "the ways in which it keeps, the main one first"},
	{Name: "checked", Want: WantKeys, Keys: checkedKeys, Doc: "against which edition of the tables it was last checked, and when; fill writes it"},
	{Name: "corrections", Want: WantKeys, List: true, Keys: correctionKeys, Doc: "what readers with an older copy must put right in it"},
	{Name: "withdrawn", Want: WantKeys, Keys: withdrawnKeys, Doc: "takes the recipe back: its address tells why, and nothing of it is published any more"},
	{Name: "tags", List: true, Doc: "words to find it by"},
	{Name: "formerly", Want: WantPath, List: true, Doc: "old paths that lead here now"},
	{Name: "inspired_by", Doc: "whom or what it owes something to"},
	{Name: "batches", Want: WantKeys, List: true, Keys: batchKeys, Doc: "the kitchen log, one entry a batch"},
	{Name: "accept", Want: WantReasons, Doc: "warnings and advice that are taken as read, by rule, each with the reason"},
}

// EpisodeKeys are the keys of an episode's front matter.
var EpisodeKeys = KeyTable{
	{Name: "name", Required: true, Doc: "what the episode is called"},
	{Name: "number", Want: WantWhole, Doc: "its number in the series"},
	{Name: "series", Want: WantWhole, Doc: "the number of the series"},
	{Name: "published", Want: WantDate, Doc: "the day on which listeners may have it; a day to come holds it back until then"},
	{Name: "status", Want: WantWord, Words: statuses, Doc: "ready, which need not be written, or draft"},
	{Name: "summary", Required: true, Doc: "one or two sentences, at most 200 characters"},
	{Name: "audio", Want: WantKeys, Keys: audioKeys, Doc: "the recording"},
	{Name: "recipes", Want: WantSlug, List: true, Doc: "the recipes that it speaks of, by the names of their files"},
	{Name: "chapters", Want: WantChapter, List: true, Keys: chapterKeys, Doc: "marks in the recording, in order"},
	{Name: "transcript", Want: WantFile, Doc: "a WebVTT or SubRip file beside this one"},
	{Name: "links", Want: WantKeys, List: true, Keys: linkKeys, Doc: "where listeners can read on"},
	{Name: "next", Doc: "what the coming episode is about"},
	{Name: "guid", Doc: "what tells players that it is the same episode; never changed once published"},
}

// PageKeys are the keys of a page's front matter.
var PageKeys = KeyTable{
	{Name: "name", Required: true, Doc: "what the page is called"},
	{Name: "summary", Doc: "one or two sentences, at most 200 characters"},
	{Name: "published", Want: WantDate, Doc: "the day on which readers may see it; a day to come holds it back until then"},
	{Name: "updated", Want: WantDate, Doc: "the day of the last change that readers should know of"},
	{Name: "status", Want: WantWord, Words: statuses, Doc: "ready, which need not be written, or draft"},
	{Name: "picture", Want: WantKeys, Keys: pictureKeys, Doc: "the page's picture"},
}

// SiteKeys are the keys of site.yaml.
var SiteKeys = KeyTable{
	{Name: "name", Required: true, Doc: "what the site is called"},
	{Name: "tagline", Doc: "a few words below the name"},
	{Name: "language", Want: WantLanguage, Doc: "the language that it is written in (BCP 47); en if left out"},
	{Name: "author", Want: WantTextOrKeys, Keys: authorKeys, Doc: "who writes it"},
	{Name: "address", Want: WantAddress, Doc: "where it will stand; feeds and search engines need it"},
	{Name: "programme", Want: WantKeys, Keys: programmeKeys, Doc: "the audio programme; leave it out if there is none"},
	{Name: "theme", Doc: "the folder of themes that it looks by; the built-in theme if left out"},
	{Name: "units", Want: WantWord, Words: systems, Doc: "which units are shown first"},
	{Name: "altitude", Want: WantAltitude, Doc: "how high the author's kitchen is"},
	{Name: "labels", Want: WantTextOrKeys, Keys: labelKeys, Doc: "the sheet of jar labels: its name, or its measures"},
	{Name: "destination", Doc: "where publish writes to"},
}

var (
	timesKeys = KeyTable{
		{Name: "hands_on", Want: WantDuration, Doc: "how long hands are busy"},
		{Name: "cooking", Want: WantDuration, Doc: "how long it cooks"},
		{Name: "waiting", Want: WantDuration, Doc: "how long it stands, soaks, cools or ferments"},
	}
	itemKeys = KeyTable{
		{Name: "amount", Doc: "how much of it, such as 1 1/2 cups"},
		{Name: "item", Required: true, Doc: "what it is"},
		{Name: "note", Doc: "what is said after it, such as divided"},
		{Name: "optional", Want: WantTruth, Doc: "whether it can be left out"},
	}
	groupKeys = KeyTable{
		{Name: "for", Required: true, Doc: "what the group is for, such as the brine"},
		{Name: "items", Want: WantIngredient, List: true, Required: true, Keys: itemKeys, Doc: "the ingredients of the group"},
	}
	pictureKeys = KeyTable{
		{Name: "file", Want: WantFile, Required: true, Doc: "a file of content/pictures"},
		{Name: "alt", Required: true, Doc: "what it shows, for those who cannot see it"},
		{Name: "credit", Doc: "who made it"},
	}
	scaleKeys = KeyTable{
		{Name: "smallest", Want: WantNumber, Doc: "the smallest factor, such as 1/2"},
		{Name: "largest", Want: WantNumber, Doc: "the largest factor; above 1 a canned recipe becomes that many batches"},
	}
	checkedKeys = KeyTable{
		{Name: "edition", Want: WantDate, Required: true, Doc: "the edition of the tables, a day"},
		{Name: "date", Want: WantDate, Required: true, Doc: "the day of the check"},
	}
	correctionKeys = KeyTable{
		{Name: "date", Want: WantDate, Required: true, Doc: "the day of the correction"},
		{Name: "text", Required: true, Doc: "what was wrong, and what is right"},
	}
	withdrawnKeys = KeyTable{
		{Name: "date", Want: WantDate, Required: true, Doc: "the day on which it was taken back"},
		{Name: "reason", Required: true, Doc: "why, for those who have made it"},
		{Name: "instead", Want: WantSlug, Doc: "a recipe to make in its place, by the name of its file"},
	}
	batchKeys = KeyTable{
		{Name: "made", Want: WantDate, Doc: "the day on which it was made"},
		{Name: "factor", Want: WantNumber, Doc: "how many times the ingredients' amounts"},
		{Name: "yield", Want: WantYield, Doc: "what it made"},
		{Name: "ph", Want: WantNumber, Doc: "the measured pH"},
		{Name: "set", Doc: "how it set"},
		{Name: "altitude", Want: WantAltitude, Doc: "how high the kitchen was"},
		{Name: "seals_failed", Want: WantWhole, Doc: "how many jars did not seal"},
		{Name: "note", Doc: "what to remember"},
		{Name: "public", Want: WantTruth, Doc: "whether readers see this entry"},
	}
	keepingKeys = KeyTable{
		{Name: "way", Want: WantWord, Words: ways, Required: true, Doc: "how it keeps"},
		{Name: "process", For: looked, Needed: canned, Instead: "tested_by", Doc: "the published tested process that stands behind it, by its name"},
		{Name: "tested_by", Want: WantKeys, Keys: testedByKeys, For: canned, Doc: "instead of process: the authority that set this process in writing"},
		{Name: "pack", Want: WantWord, Words: packs, For: canned, Needed: canned, Doc: "how the food goes into the jar"},
		{Name: "headspace", Want: WantLength, For: filled, Needed: canned, Doc: "the room left in the jar, from the rim down"},
		{Name: "acid", Want: WantAcid, For: canned, Needed: boiled, Doc: "where the acid comes from"},
		{Name: "jars_sterilised", Want: WantTruth, For: boiled, Doc: "whether the empty jars are sterilised"},
		{Name: "processing", Want: WantKeys, List: true, Keys: processingKeys, For: canned, Needed: canned, Doc: "what each size of jar needs"},
		{Name: "factor", Want: WantNumber, Doc: "how many times the ingredients' amounts this way is made from"},
		{Name: "keeps", Want: WantDuration, Required: true, Doc: "how long it stays good to eat"},
		{Name: "ph", Want: WantNumber, Doc: "the highest pH that was measured"},
		{Name: "measured", Want: WantDate, Doc: "the day on which the pH was measured"},
		{Name: "salt", Want: WantShare, For: fermented, Needed: fermented, Doc: "the strength of the brine, or the salt by weight"},
		{Name: "temperature", Want: WantTemperature, For: slow, Needed: slow, Doc: "of the room or the dryer"},
		{Name: "duration", Want: WantDuration, For: slow, Needed: slow, Doc: "how long it ferments or dries"},
		{Name: "blanch", Want: WantDuration, For: blanched, Doc: "how long it is blanched before freezing"},
		{Name: "container", For: packed, Needed: frozen, Doc: "what it is frozen in"},
	}
	testedByKeys = KeyTable{
		{Name: "authority", Required: true, Doc: "who tested it"},
		{Name: "reference", Required: true, Doc: "the letter or paper, so that it can be found again"},
		{Name: "date", Want: WantDate, Required: true, Doc: "the day of that letter or paper"},
	}
	processingKeys = KeyTable{
		{Name: "jar", Want: WantJar, Required: true, Doc: "the size of jar"},
		{Name: "altitude", Want: WantTimes, For: boiled, Needed: boiled, Doc: "boiling water and steam: the time for each band of altitude"},
		{Name: "time", Want: WantDuration, For: pressed, Needed: pressed, Doc: "pressure: the time, the same at every altitude"},
		{Name: "dial", Want: WantPressures, For: pressed, Needed: pressed, Instead: "weighted", Doc: "the pressure on a dial gauge for each band of altitude"},
		{Name: "weighted", Want: WantPressures, For: pressed, Doc: "the pressure of a weighted gauge for each band of altitude"},
	}
	audioKeys = KeyTable{
		{Name: "file", Want: WantFile, Doc: "a file beside this one"},
		{Name: "address", Want: WantAddress, Doc: "instead of file: where the recording lies"},
		{Name: "bytes", Want: WantWhole, Doc: "its size; needed with address"},
		{Name: "duration", Want: WantDuration, Doc: "how long it is"},
		{Name: "type", Doc: "its media type, such as audio/mpeg"},
	}
	chapterKeys = KeyTable{
		{Name: "at", Required: true, Doc: "where it begins, such as 12:30"},
		{Name: "title", Required: true, Doc: "what it is about"},
		{Name: "recipe", Want: WantSlug, Doc: "the recipe that it speaks of"},
	}
	linkKeys = KeyTable{
		{Name: "title", Required: true, Doc: "what stands there"},
		{Name: "address", Want: WantAddress, Required: true, Doc: "where it leads"},
	}
	authorKeys = KeyTable{
		{Name: "name", Required: true, Doc: "the author's name"},
		{Name: "about", Doc: "a sentence or two about the author"},
	}
	programmeKeys = KeyTable{
		{Name: "name", Required: true, Doc: "what the programme is called"},
		{Name: "summary", Doc: "what it is about"},
		{Name: "picture", Want: WantFile, Doc: "its cover, a file of content/pictures"},
		{Name: "category", Doc: "the heading that directories list it under"},
		{Name: "explicit", Want: WantTruth, Doc: "whether its language is unfit for children"},
		{Name: "owner", Want: WantTextOrKeys, Keys: ownerKeys, Doc: "whom directories write to"},
		{Name: "feed_id", Doc: "what tells players that it is the same feed; never changed"},
	}
	ownerKeys = KeyTable{
		{Name: "name", Doc: "the owner's name"},
		{Name: "email", Doc: "where the owner reads mail"},
	}
	labelKeys = KeyTable{
		{Name: "page", Want: WantWord, Words: papers, Required: true, Doc: "the size of the sheet"},
		{Name: "columns", Want: WantWhole, Required: true, Doc: "labels beside one another"},
		{Name: "rows", Want: WantWhole, Required: true, Doc: "labels below one another"},
		{Name: "width", Want: WantLength, Required: true, Doc: "of one label"},
		{Name: "height", Want: WantLength, Required: true, Doc: "of one label"},
		{Name: "column_gap", Want: WantLength, Doc: "between two columns"},
		{Name: "row_gap", Want: WantLength, Doc: "between two rows"},
		{Name: "side", Want: WantLength, Doc: "from the left edge of the sheet to the first label"},
		{Name: "top", Want: WantLength, Doc: "from the upper edge of the sheet to the first label"},
		{Name: "round", Want: WantTruth, Doc: "whether a label is a circle"},
	}
)

// The ways of keeping that keys are for.
var (
	boiled    = []Way{BoilingWater, AtmosphericSteam}
	pressed   = []Way{PressureCanner}
	canned    = []Way{BoilingWater, AtmosphericSteam, PressureCanner}
	looked    = []Way{BoilingWater, AtmosphericSteam, PressureCanner, Refrigerator}
	filled    = []Way{BoilingWater, AtmosphericSteam, PressureCanner, Freezer, Refrigerator}
	fermented = []Way{Fermenting}
	slow      = []Way{Fermenting, Drying}
	frozen    = []Way{Freezer}
	blanched  = []Way{Freezer, Drying}
	packed    = []Way{Freezer, Refrigerator, Drying, CoolStore}
)

var (
	statuses = words(Ready, Draft)
	systems  = words(US, Metric)
	packs    = words(Hot, Raw)
	papers   = []string{"a4", "letter"}
	ways     = words(BoilingWater, AtmosphericSteam, PressureCanner, Refrigerator, Freezer, Drying, Fermenting, CoolStore)
	kinds    = words(Jam, Jelly, Marmalade, Conserve, FruitButter, Syrup, Juice, Sauce, Salsa, Ketchup, Chutney,
		Relish, Pickle, Fruit, PieFilling, Tomato, Vegetable, Legume, Soup, Meat, Poultry, Fish, Ferment, Vinegar,
		Cordial, Other)
)

func words[T ~string](list ...T) []string {
	w := make([]string, len(list))
	for i, v := range list {
		w[i] = string(v)
	}
	return w
}
