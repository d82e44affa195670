package validate

// cannerForced reports a pressure canner cooled or emptied of pressure by
// force.
var cannerForced = &Rule{
	ID:       "canner-forced",
	Severity: Error,
	Summary:  "a pressure canner cooled or emptied of pressure by force",
	Doc: `The time in which a canner comes down by itself is part of the process. Cold
water or a lifted weight cuts it short, draws the liquid out of the jars, and
can break them or warp the canner. Turn off the heat and wait for zero.`,
	Source: Source{
		Title:   "UW Extension mistakes list",
		Address: "http://bcuwexhealthyliving.blogspot.com/2014_09_01_archive.html",
	},
	Practice: &Practice{
		Phrases: `run~|pour~|splash~|spray~|hold~|trickle~|put~ .. cold|cool|tap? .. water .. over|on|across .. canner~|lid|pot|cooker; put~|place~|set~|move~|carry|take~|stand~ .. canner~|pot|cooker|it .. under|in|into|to .. cold|running|tap|faucet|sink|snow; run~ .. tap|faucet .. over|on .. lid|canner~|pot|it
			cool~ .. canner~|cooker .. with|under|in|by .. cold|water|sink|snow|tap|running|fan; quick|rapid|fast|manual|instant release; quick_release~
			release~|let~|vent~ .. pressure .. quickly|manually|by|fast|out .. lifting|removing|opening|tipping|tilting|nudging|hand|weight|valve; release~|let~|bleed~ .. steam .. by|out .. lifting|removing|tipping|tilting|nudging|hand; lift~|remove~|nudge~|open~|tap~|take~|tip~|tilt~ .. weight|petcock|regulator|valve|gauge .. to|and .. release|let|bleed|drop|bring|speed .. pressure
			hurry~|speed~|force~|hasten~|rush~ .. cool~|cooling|canner~|pressure|@it .. by|with|along|down|up
			lift~|remove~|nudge~|open~|tap~|take~|tip~|tilt~|pull~|knock~ .. weight|petcock|regulator|valve|jiggler ... to|and let|release|bleed .. steam .. out|off|faster|quickly; pull~|lift~|take~|remove~|open~|knock~ .. weight|petcock|regulator|valve|jiggler .. off|open|up? .. when|as_soon_as|once .. time|minutes|timer|clock .. up|done|over|rings
			open~|pop~|lift~|pull~|tip~|nudge~|crack~ .. petcock|weight|valve|regulator|jiggler ... hurry|faster|quicker|quickly|sooner|along|save_time|speed
			wet|damp|cold|icy|soaked towel~|cloth~|rag~|sponge~ .. over|on|onto|around .. lid|canner~|cooker|pot
			knock~|pull~|yank~|flick~ .. weight|jiggler|regulator|petcock off|up|open|out`,
		Where:   theCanner,
		Message: "a pressure canner is cooled by force",
		Advice:  "Turn off the heat and let the pressure fall to zero by itself.",
	},
}

// theCanner leaves out jars that are cooled after they are lifted out, which is
// cooled-fast.
func theCanner(t *Text, s *sentence, h hit) bool {
	return underPressure(t, s, h) && (!s.has(famJar) || s.has(famCanner) || s.anyOf("pressure"))
}
