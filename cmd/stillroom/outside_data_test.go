package main

// dataCheckers judge what search engines are told.
var dataCheckers = []outsider{
	{
		name:    "structured data, types",
		source:  "schema.org; by schema-dts and the TypeScript compiler",
		command: func(s site) []string { return script("types.mjs", append([]string{s.dir}, s.data...)...) },
		damages: []damage{
			{"a misspelt property", replace("recipes/*/index.html", `"recipeIngredient"`, `"recipeIngrediant"`), "recipeIngrediant"},
			{"a number for words", replace("recipes/*/recipe.json", `"name":`, `"name":7,"alternateName":`), "not assignable"},
		},
	},
	{
		name:    "structured data, search results",
		source:  "schema.org and the search engines' published rules for recipes; by a structured-data validator",
		command: func(s site) []string { return script("rich.mjs", append([]string{s.dir}, s.recipes...)...) },
		damages: []damage{
			{"a recipe without picture", replace("recipes/*/index.html", `"image":`, `"thumbnailUrl":`), `"image" is missing`},
			{"a time that is none", replace("recipes/*/index.html", `"totalTime":"`, `"totalTime":"about `), `Invalid type for attribute "totalTime"`},
			{"an unknown property", replace("recipes/*/index.html", `"recipeIngredient"`, `"recipeIngrediant"`), "not supported"},
			{"a page without structured data", replace("recipes/*/index.html", "application/ld+json", "text/plain"), "no structured data"},
		},
	},
	{
		name:    "crawlers",
		source:  "RFC 9309; by robots-parser",
		command: func(s site) []string { return script("robots.mjs", s.dir, s.address) },
		damages: []damage{
			{"closed assets", add("robots.txt", "\nUser-agent: *\nDisallow: /assets/\n"), "may not be fetched"},
			{"an unnamed sitemap", replace("robots.txt", "Sitemap:", "Site-map:"), "not named"},
		},
	},
}
