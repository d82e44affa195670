package validate

// tasteTest reports tasting advised as the test of a doubtful jar.
var tasteTest = &Rule{
	ID:       "taste-test",
	Severity: Error,
	Summary:  "tasting advised as the test of a doubtful jar",
	Doc: `A taste of what is spoiled can be enough to make somebody very ill, and what is
poisonous may taste of nothing. Never taste from a jar that is in doubt. To
taste for salt or sourness while cooking is another matter.`,
	Source: Source{
		Title:   "Salsa cautions list, extension style",
		Address: "https://great-salsa.com/canning/salsa-cautions-tips/",
	},
	Practice: &Practice{
		Phrases: `taste~|try~|sample~|lick~|nibble~ .. a|it|them|some|first|little|bit|one|spoonful ... to|and .. see|check|tell|find_out|know|make_sure|test|decide ... safe|bad|off|spoil~|gone|fit|edible|turned|okay_to_eat|good_to_eat|still_good|rotten
			taste test ... safe|spoil~|bad; take~|have|try~ .. taste|sip|bite|spoonful|nibble .. to|and .. see|check|tell|find_out|find|know|make_sure ... bad|safe|off|spoil~|gone|good|edible; tell .. by|from tasting|taste .. it|whether|if|when? .. bad|off|safe|spoil~|good; taste~ .. to|and .. see|check|tell|make_sure|decide ... safe|spoil~|bad|off|gone|edible|turned|still_good
			if .. tastes|taste~ .. fine|good|okay|ok|alright|right|normal ... safe|eat|fine|keep|okay|ok|use; a|small|little|tiny taste will tell|show|settle; when_in_doubt|if_in_doubt|if_unsure|not_sure .. taste~|try~
			when_in_doubt|if_in_doubt|in_doubt|if_unsure|not_sure|if_you_doubt ... taste~|try~|bite|sip|lick~|nibble~|tongue
			tip|drop|dab|touch .. tongue; try~|have|take~ .. little|bit|taste|bite|nibble|sip|spoonful .. tongue|and_see|to_see|to_be_sure|to_make_sure .. if|whether|good|safe|off|bad; still good ... try~|taste~|sample~
			taste~|try~|sample~ ... not_sure|unsure|not_certain|uncertain|in_doubt|doubtful|lacking
			taste~|try~|sample~ .. to|and .. see|check|know .. whether|if|that .. kept|keeping|still|survived|held
			have|take~ .. taste .. before ... if .. off|bad|spoiled|funny|wrong`,
		Message: "a doubtful jar is never tasted",
		Advice:  "Say: when in doubt, throw it out, untasted.",
	},
}
