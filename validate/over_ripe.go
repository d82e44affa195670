package validate

// overRipe reports over-ripe or damaged produce called right for canning.
var overRipe = &Rule{
	ID:       "over-ripe",
	Severity: Warning,
	Summary:  "over-ripe or damaged produce called right for canning",
	Doc: `Acid falls as fruit and tomatoes ripen past their best, and bruises bring more
germs than a process was set for. Can what is just ripe and sound. Small bad
places may be cut out of fruit for jam; the rest goes to the table, the freezer
or the compost.`,
	Source: Source{
		Title:   "Rutgers NJAES, salsa",
		Address: "https://njaes.rutgers.edu/food-safety/home-food-preservation/salsa.php",
	},
	Practice: &Practice{
		Phrases: `overripe|over_ripe|bruised|mushy|past_their_prime|past_their_best|past_its_prime|rotten|rotting|half_rotten|going_soft ... perfect|great|ideal|fine|good|best|right|wonderful|work|works|okay|ok .. for|in|here
			perfect|great|ideal|good|fine|best|way|works|use|time|place|home|recipe|job .. for|to_use|to_use_up|up|with|place .. overripe|over_ripe|bruised|mushy|rotten|past_their_prime
			use~|can|save~|canning|choose .. overripe|over_ripe|bruised|mushy|rotten .. tomato~|tomatoes|fruit|fruits|peaches|pears|apples|berries|plums|ones|produce
			seconds .. perfect|great|ideal|good|fine for|in; maybe canning|salsa|sauce|jam is .. best|perfect|great|ideal .. use|way|place|home .. for .. @it; overripe|over_ripe|bruised is|are fine|ok|okay|good|perfect|best
			use~|use_up|can|save~|canning .. squishy|squashy|split|wrinkled|wrinkly|shrivelled|shriveled|spoiling|damaged|half_spoiled .. tomato~|tomatoes|fruit|fruits|peaches|pears|apples|berries|plums|ones|produce
			overripe|over_ripe|bruised|rotten|spotty|mushy|going_soft|black_spots ... make~|makes .. best|fine|good|great|perfect|lovely .. jars|jar|sauce|salsa|jam|juice`,
		Where:   pastItsBest,
		Message: "over-ripe or bruised produce has less acid",
		Advice:  "Ask for just-ripe, sound produce.",
	},
}

// pastItsBest takes "them" for over-ripe produce where the sentence before names
// it.
func pastItsBest(t *Text, s *sentence, h hit) bool {
	return inCanned(t, s, h) && (!h.maybe || s.near("overripe bruised mushy rotten"))
}
