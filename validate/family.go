package validate

// A family is a kind of word. What belongs to it stands in familyWords; there
// a "~" stands for all forms of a word.
type family uint8

// The families.
const (
	famJar family = iota
	famIt
	famLid
	famBand
	famFridge
	famFreezer
	famCupboard
	famOrder
	famSubject
	famUnder
	famBe
	famAbbreviation
	famNumeral
	famFill
	famEmpty
	famFull
	famSeal
	famSafe
	famBad
	famCanner
	famProcess
	famOtherJob
	famSterilise
	famLowAcid
	famTomato
	famHerb
	famOil
	famJuice
	famDetermine
	famAuthority
	famSay
	famYes
	famThat
	famPlace
	famMore
	famApprox
	famStove
	famGerm
	famOpened
	famEat
	famVegetable
	famArticle
	familyCount
)

var familyNames = [familyCount]string{
	famJar: "jar", famIt: "it", famLid: "lid", famBand: "band", famFridge: "fridge", famFreezer: "freezer",
	famCupboard: "cupboard", famOrder: "order", famSubject: "subject", famUnder: "under", famBe: "be",
	famAbbreviation: "abbreviation", famNumeral: "numeral", famFill: "fill", famEmpty: "empty", famFull: "full",
	famSeal: "seal", famSafe: "safe", famBad: "bad", famCanner: "canner", famProcess: "process",
	famOtherJob: "otherjob", famSterilise: "sterilise", famLowAcid: "lowacid", famTomato: "tomato",
	famHerb: "herb", famOil: "oil", famJuice: "juice", famDetermine: "determine", famAuthority: "authority",
	famSay: "say", famYes: "yes", famThat: "that", famPlace: "place", famMore: "more", famApprox: "approx",
	famStove: "stove", famGerm: "germ", famOpened: "opened", famEat: "eat", famVegetable: "vegetable",
	famArticle: "article",
}

var familyWords = [familyCount]string{
	famJar:      "jar~ bottle~ pints quarts halfpints pint quart",
	famArticle:  "a an couple",
	famIt:       "it them em these those they each mine hers ours theirs yours",
	famLid:      "lid~ cap~ top tops flats disc~ disk~ dome~",
	famBand:     "band~ ring~ screwband~ screwtop~",
	famFridge:   "fridge~ refrigerator~ refrigerate~ icebox",
	famFreezer:  "freezer~ freeze~",
	famCupboard: "pantry pantries cupboard~ larder~ cellar~ basement~ shelf shelves closet~",
	// verbs as recipes use them: what an order begins with
	famOrder: `add allow arrange bake beat begin blanch boil bring brush can carry check chill chop clean close
		combine cook cool core count cover crush cut dip discard dissolve drain drop dry fasten ferment fill
		flip freeze get give grate halve heat hold invert keep label ladle lay leave let lift loosen lower make
		mark mash measure melt mix move open pack peel pick place plunge pour preheat press process pull put
		raise refrigerate reheat remove repeat reprocess return reuse rinse roast rub run scald scrape screw scrub
		seal serve set shake shred simmer skim slice soak spoon spread sprinkle squeeze stack stand start steam
		sterilise sterilize stir stop store strain submerge switch take taste tell test throw tie tighten time
		tip toss trim try turn twist use wait warm wash weigh whisk wipe work wrap write microwave retighten
		eat smell skip scoop snap cap clamp stew`,
	famSubject:      "i you we they he she it people everyone everybody anyone nobody somebody someone",
	famUnder:        "because since while whereas although though if when whenever once after before until till unless where who which whose as so",
	famBe:           "is are was were be been being am gets get got becomes become remains stays",
	famAbbreviation: "min mins hr hrs in oz lb lbs tbsp tsp approx ca vs ft qt pt sec secs etc max",
	famNumeral: `zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen
		sixteen seventeen eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety hundred thousand
		half quarter third`,
	famFill:  "fill~ ladle~ pour~ pack~ spoon~ funnel~",
	famEmpty: "empty clean washed rinsed unfilled sterilise~ dry drained drain draining drip",
	famFull:  "filled full sealed lidded capped packed finished unsealed hot",
	famSeal:  "seal~ reseal~ vacuum~",
	famSafe:  "safe safely fine okay ok good well perfect perfectly edible alright trustworthy",
	famBad: `spoil~ mould~ mouldy~ leak~ siphon~ siphoned crack~ crack explode~ burst shatter~ sick ill botulism poison~
		fail~ ruin~ contaminate~ unseal unsealed illness die~ toxin~ lost warp~ warped underprocessed rot hurt harmed dead death`,
	famCanner:    "canner~ waterbath",
	famProcess:   "process~ waterbath",
	famOtherJob:  otherJobs,
	famSterilise: "sterilise~ sterilisation sterilization sterile",
	famLowAcid: `bean~ bean corn pea~ carrot~ meat~ beef chicken pork venison fish salmon tuna beet~ beetroot~ potato~ pumpkin~
		squash asparagus okra spinach greens stock broth soup~ stew~ chili vegetable~ poultry turkey mushroom~ peas seafood`,
	famTomato:    "tomato~ tomatoes salsa~ ketchup",
	famHerb:      "garlic basil rosemary thyme oregano herb~ chilli~ chillies chile~ chili~ pepper~ peppers tomato~ tomatoes onion~ shallot~ mushroom~ vegetable~ pesto eggplant aubergine lemon peel",
	famOil:       "oil~",
	famJuice:     "juice~",
	famDetermine: "the a an your my our his her their its this that these those each every any some all both no another more",
	famAuthority: `tested recipe~ process~ instruction~ direction~ manufacturer~ maker~ publication~ published guide~ authority
		authorities table~ publisher~ extension laboratory lab label~ manual~ booklet~`,
	famSay:    "say~ tell~ ask~ read~ write~ hear~ claim~ insist~ call~ swear~ shout~ reply replies replied wonder~ joke~",
	famYes:    "yes yep yeah sure absolutely certainly definitely indeed",
	famThat:   "that this it they these those which both neither all such",
	famPlace:  "counter~ countertop~ worktop~ windowsill~ sill~ table~ shelf shelves room dark",
	famMore:   "more longer less shorter extra additional fewer another further",
	famApprox: "about around roughly approximately approx nearly almost",
	famStove:  "oven~ microwave~ dishwasher~ stove~",
	famGerm:   "germ~ bacteria bacterium microbe~ microorganism~ organism~ botulism botulinum spore~ pathogen~ bug bugs mould~ yeast~ everything",
	famOpened: "open~ opened opening unopened",
	famVegetable: `pepper~ peppers onion~ onions garlic corn bean~ beans carrot~ carrots celery mushroom~ mushrooms pea~ peas chili~ chilies
		chilli~ chillies chile~ chiles jalapeno~ jalapenos vegetable~ vegetables zucchini shallot~ shallots`,
	famEat: "eat~ taste~ serve~ use~ tasting consume~",
}
