package validate

// The publications that more than one rule stands on.
var (
	guide = Source{
		Title:   "USDA Complete Guide to Home Canning, AIB 539 (2015)",
		Address: "https://nchfp.uga.edu/resources/category/usda-guide",
	}
	blogStudy = Source{
		Title:   "Adherence of Food Blog Salsa Recipes to Home Canning Guidelines, Food Protection Trends 39(5), 2019",
		Address: "https://www.nxtbook.com/nxtbooks/trilix/fpt_20190910/index.php?startid=383",
	}
	steamStatement = Source{
		Title:   "Using atmospheric steam canners, National Center for Home Food Preservation",
		Address: "https://nchfp.uga.edu/newsflash/P10",
	}
	safeChanges = Source{
		Title:   "Play it safe: safe changes and substitutions to tested canning recipes, North Dakota State University Extension",
		Address: "https://miv.ext.nodak.edu/agriculture/extension/publications/play-it-safe-safe-changes-and-substitutions-tested-canning-recipes",
	}
	contract = Source{Title: "How a Stillroom site is written, README.md"}
)
