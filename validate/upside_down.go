package validate

// upsideDown reports filled jars that are turned over to seal.
var upsideDown = &Rule{
	ID:       "upside-down",
	Severity: Error,
	Summary:  "filled jars turned upside down to seal them",
	Doc: `A jar that is turned over while it is hot may well close. What is in it was not
heated long enough for that: the seal says nothing about the food, and food that
gets under the lid spoils the seal as well. Leave the jars upright from first to
last. To drain empty jars upside down is another matter.`,
	Source: Source{
		Title:   "Avoid dangerous canning methods, Navajo County Cooperative Extension",
		Address: "https://www.wmicentral.com/outdoors_and_gardening/avoid-dangerous-canning-methods/article_8170a934-92f7-5e69-bf5b-962da836ffb9.html",
	},
	Practice: &Practice{
		Phrases: `turn~|flip~|tip~|stand~|set~|put~|place~|store~|leave~|keep~|rest~|cool~|sit~|stood .. @jar|@it .. upside_down|down_side_up
			turn~|flip~|tip~ .. @jar|@it .. over|head; turn~|flip~|tip~|upend~ over|upside .. @jar; upend~ .. @jar|@it
			invert~ .. @jar|@it; @jar .. inverted|upside_down; @jar|@it on their|its heads|head|lids|lid|tops
			@jar|@it ... turned|flipped|stood|stored upside|over; @jar|@it ... left upside
			turn~|flip~|tip~|stand~|store~ upside down; invert~ for # ; @jar|@it go|goes|went upside down
			maybe inversion|inverting method|trick|technique|canning|seal|step; maybe upside down method|trick|canning|seal|jars; flip~ the|your|each|all? @jar
			@jar .. @be .. inverted|flipped|upended; turn~ the|your|each|all? .. @jar .. lid side|lids|lid down
			turn~|flip~|tip~|stand~|set~|put~|place~|store~|leave~|keep~|rest~|cool~|sit~ .. @jar|@it .. bottoms_up|bottom_up|lid_side_down|lids_down|head_first|wrong_way_up; turn~|flip~|tip~|stand~|set~|rest~|leave~|put~|sit~ .. @jar|@it .. on|onto their|its caps|cap|tops|top|lids|lid|heads|head; @jar ... lid_side_down|lids_down|bottoms_up
			lid|lids to|towards|facing|against|on the table|counter|board|bench|floor; over @it|they go|goes; turn~|flip~|set~|stand~|put~ .. @jar|@it face_down`,
		Where:   jarsStandFull,
		Message: "jars turned upside down: that may close the lid, but does not heat the food",
		Advice:  "Leave them upright, and let the process seal them.",
	},
}

// jarsStandFull leaves out empty jars that drain, and what else is turned over
// in recipes that fill no jars for the shelf.
func jarsStandFull(t *Text, s *sentence, h hit) bool {
	if s.anyOf("empty clean washed rinsed drain dry rack") && !s.has(famSeal) && !s.anyOf("hot filled") {
		return false
	}
	if s.anyIn("hand hands", h.to, h.to+4) {
		return false // to look at it
	}
	if !s.speaksOfJars(h) && !(t.Recipe != nil && s.anyIn("upside", h.from, h.to)) {
		return false
	}
	return t.canned() || s.has(famSeal)
}

// speaksOfJars reports whether what a hit calls "them" are jars: it names them,
// or the last thing that was named before are jars.
func (s *sentence) speaksOfJars(h hit) bool {
	if s.find(famJar, h.from, h.to) >= 0 || s.find(famIt, h.from, h.to) < 0 {
		return true
	}
	if s.find(famJar, 0, h.from) >= 0 || s.find(famLid, 0, s.len()) >= 0 {
		return true
	}
	b := s.before()
	return b != nil && (b.has(famJar) || b.has(famLid)) || b == nil && s.place == placeStep
}
