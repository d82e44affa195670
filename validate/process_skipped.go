package validate

// processSkipped reports a process left out, for jars that are kept on a shelf.
var processSkipped = &Rule{
	ID:       "process-skipped",
	Severity: Error,
	Summary:  "a process left out, for jars that are kept on a shelf",
	Doc: `Every filled jar that is to stand at room temperature gets a timed process in a
canner: jam, jelly and pickles too. Sterilised jars, hot fruit, sugar or vinegar
do not take its place. What is not processed is kept in the refrigerator or the
freezer, and the text should say so.`,
	Source: Source{
		Title:   "Forum answer and UNH top questions",
		Address: "https://extension.unh.edu/blog/2017/08/top-food-preservation-questions",
	},
	Practice: &Practice{
		Phrases: `skip~|leave~_out|forgo|omit~|forget~_about .. water_bath|waterbath|processing|canner|canning_pot|boiling_water_bath|process
			no further? processing|canning|water_bath|waterbath|canner|process|boiling_water_bath|bath .. needed|necessary|required|involved|at_all|here|for
			without .. processing|process|water_bath|waterbath|canner|boiling_water_bath|pressure_canner; never|don't|do_not process .. jam|jams|jelly|jellies|pickles|mine|marmalade|preserves
			processing|water_bath|canning|process is|are optional|unnecessary|overkill|not_needed|not_necessary|unneeded; sterilise~ .. jars .. so .. no|not|needn't .. process~|processing|water_bath|canner
			leave~ .. water_bath|waterbath|processing|canner|boiling_water_bath|process .. out|off|away; do|does|go|goes|get_by|manage without .. water_bath|waterbath|processing|canner|boiling_water_bath
			never|don't|didn't|doesn't|rarely|seldom|no_longer bother|use|fuss|mess|own .. canner|water_bath|waterbath|processing|canning_pot|boiling_water_bath|canning; no canner|canning_pot|water_bath|processing .. needed|required|necessary|at_all|whatsoever
			i|we skip~|gave_up|given_up|quit|stopped|abandoned on|the|with|my|using? .. water_bath|waterbath|canner|processing|canning_pot
			needs|need|requires|require|wants no further? canner|canning|process|processing|water_bath|boiling_water_bath; spare|save yourself .. canner|processing|process|water_bath; leave~ out .. water_bath|processing|process|canner
			never|don't|do_not|didn't water_bath|waterbath .. jam|jams|jelly|jellies|pickles|mine|marmalade|preserves|them|it; boiling|canner|canning|water_bath step|stage|part is|are optional|unnecessary|overkill
			sit~|stand~|keep~|kept|store~|live~ .. in|on .. @cupboard .. unprocessed; unprocessed .. in|on .. @cupboard`,
		Where:   forShelf,
		Message: "this leaves out the process of jars for the shelf",
		Advice:  "Give the process, or say that the jars are kept in the refrigerator or the freezer.",
	},
}
