package validate

import "stillroom/content"

// cooledFast reports hot jars cooled by cold water, ice, a fan or the
// refrigerator.
var cooledFast = &Rule{
	ID:       "cooled-fast",
	Severity: Error,
	Summary:  "hot jars cooled by cold water, ice, a fan or the refrigerator",
	Doc: `The time in which a jar cools was part of what was measured; cut it short and
the process is shorter too. The glass may break, and the liquid is drawn out
under the lid. Let jars stand in the air of the room, out of drafts, for 12 to
24 hours.`,
	Source: Source{
		Title:   "NCHFP, steam canner statement; UW Extension mistakes list",
		Address: "https://nchfp.uga.edu/newsflash/P10",
	},
	Practice: &Practice{
		Phrases: `cool~|chill~ .. @jar|@it .. in|under|with|by|using .. @fridge|freezer|cold_water|cool_water|ice|ice_water|ice_bath|fan|snow|cold|running|sink|tap
			put~|place~|set~|plunge~|move~|stand~|immerse~|dunk~|dip~|transfer~|submerge~|take~|carry .. hot|processed .. @jar|@it|pints|quarts .. in|into|under|to|outside .. @fridge|freezer|cold|ice|ice_water|ice_bath|snow|sink
			put~|place~|set~|plunge~|move~|stand~|immerse~|dunk~|dip~|transfer~|submerge~ .. @jar|@it .. in|into|under .. cold_water|ice_water|ice_bath|cold_bath|ice|snow|cool_water|cold_running
			put~|place~|move~|set~|transfer~ .. @jar|@it .. in|into|to .. @fridge|freezer .. to cool; aim~|point~|turn~|direct~|set~|put~ .. fan~ .. on|at|over|toward|near|by .. @jar|@it; put~|place~|set~|stand~|move~|leave~ .. @jar|@it .. in_front_of|near|under|by|before .. fan|air_conditioner|open_window; fan on|over @jar|@it; run~|pour~|splash~ .. cold|cool water .. over|on .. @jar|@it
			speed~|hurry~|hasten~|quicken~ .. cooling|cool .. by|with|in; fan .. cool~|cools|cooling .. @jar|@it|faster; cool~ .. @jar|@it .. quickly|fast|rapidly .. in|under|with|by
			stick~|pop~|shove~|slip~|stand~|put~|place~|set~|leave~ .. @jar|@it|pints|quarts .. in|into|under .. sink|basin|tub|bucket|bath .. cold|cool|iced|icy water; stick~|pop~|shove~|slip~|put~|place~|set~ .. @jar|@it|pints|quarts .. in|into|to .. @fridge|freezer|snow|cold .. straight|right|still|while; straight|right from|out_of .. canner ... in|into|to .. @fridge|freezer|snow|cold_water|ice_water
			stick~|pop~|shove~|slip~ .. hot .. @jar|pints|quarts .. in|into|to .. @fridge|freezer|snow`,
		Where:   jarsCoolDown,
		Message: "hot jars are cooled fast",
		Advice:  "Let them stand at room temperature for 12 to 24 hours.",
	},
}

// jarsCoolDown leaves out jars that go to the cold to be kept there: those that
// did not seal, and those of a recipe for the refrigerator.
func jarsCoolDown(t *Text, s *sentence, h hit) bool {
	if !t.canned() || !s.speaksOfJars(h) || s.anyOf("unsealed opened failed failures fail sealed seal store keep syrup eggs tomatoes peaches stock") {
		return false
	}
	cold := s.find(famFridge, h.from, h.to) >= 0 || s.find(famFreezer, h.from, h.to) >= 0
	return !cold || s.anyOf("cool faster quickly fast speed hot hurry") && !t.hasWay(content.Refrigerator, content.Freezer)
}
