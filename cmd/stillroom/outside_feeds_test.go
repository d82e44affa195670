package main

import "path/filepath"

// schema is the path of a grammar in .ci/checks.
func schema(name string) string { return filepath.Join(tools, "schemas", name) }

// feedCheckers judge what feed readers and listeners' programs are given.
var feedCheckers = []outsider{
	{
		name:     "xml",
		source:   "XML 1.0; by xmllint",
		programs: []string{"xmllint"},
		command: func(s site) []string {
			args := []string{"xmllint", "--noout", "--nonet"}
			for _, pattern := range []string{"*.xml", "*.atom"} {
				for _, name := range s.glob(pattern) {
					args = append(args, filepath.Join(s.dir, name))
				}
			}
			return args
		},
		damages: []damage{
			{"a bare ampersand", replace("recipes.atom", "<title>", "<title>plums & "), "xmlParseEntityRef"},
		},
	},
	{
		name:     "sitemap",
		source:   "sitemaps.org 0.9; by xmllint",
		programs: []string{"xmllint"},
		command: func(s site) []string {
			return []string{"xmllint", "--noout", "--nonet", "--schema", schema("sitemap.xsd"), filepath.Join(s.dir, "sitemap.xml")}
		},
		damages: []damage{
			{"a relative address", replace("sitemap.xml", "<loc>https:", "<loc>"), "element loc"},
			{"an English date", replace("sitemap.xml", "</loc>", "</loc><lastmod>1 Sep 2026</lastmod>"), "element lastmod"},
		},
	},
	{
		name:     "atom",
		source:   "RFC 4287; by jing",
		programs: []string{"jing"},
		command: func(s site) []string {
			return []string{"jing", "-c", schema("atom.rnc"), filepath.Join(s.dir, "recipes.atom")}
		},
		damages: []damage{
			{"a feed with two identities", replace("recipes.atom", "<id>", "<id>https://example.com/</id><id>"), `element "id" not allowed`},
			{"a date that is none", replace("recipes.atom", "<updated>", "<updated>on "), `element "updated" invalid`},
		},
	},
	{
		name:    "atom in a reader",
		source:  "RFC 4287; by feedsmith",
		command: func(s site) []string { return script("feed.mjs", filepath.Join(s.dir, "recipes.atom")) },
		damages: []damage{
			{"an entry without identity", replace("recipes.atom", "<entry>", "<entry><title>x</title></entry><entry>"), "lost its id"},
		},
	},
	{
		name:   "json feed",
		source: "JSON Feed 1.1; by ajv",
		command: func(s site) []string {
			return script("schema.mjs", schema("jsonfeed.json"), filepath.Join(s.dir, "recipes.json"))
		},
		damages: []damage{
			{"an item without identity", replace("recipes.json", `"id":`, `"identity":`), "must have required property 'id'"},
		},
	},
	{
		name:    "json feed in a reader",
		source:  "JSON Feed 1.1; by feedsmith",
		command: func(s site) []string { return script("feed.mjs", filepath.Join(s.dir, "recipes.json")) },
		damages: []damage{
			{"an unreadable date", replace("recipes.json", `"date_published":"`, `"date_published":"about `), "cannot be read"},
		},
	},
	{
		name:     "programme",
		source:   "RSS 2.0, PSP-1 The Podcast RSS Standard, podcast namespace 1.0; by jing",
		programs: []string{"jing"},
		command: func(s site) []string {
			return []string{"jing", "-c", schema("programme.rnc"), filepath.Join(s.dir, "programme.xml")}
		},
		damages: []damage{
			{"a recording without length", replace("programme.xml", ` length="`, ` size="`), `attribute "size" not allowed`},
			{"a date that is none", replace("programme.xml", "<pubDate>", "<pubDate>on "), `element "pubDate" invalid`},
		},
	},
	{
		name:    "programme in listeners' programs",
		source:  "RSS 2.0, podcast namespace 1.0; by podcast-partytime, feedsmith and rss-parser",
		command: func(s site) []string { return script("programme.mjs", filepath.Join(s.dir, "programme.xml")) },
		damages: []damage{
			{"an episode without identity", replace("programme.xml", "<item>", "<item><title>x</title></item><item>"), `partytime: \d+ of \d+ episodes kept`},
			{"a recording without length", replace("programme.xml", ` length="`, ` size="`), "no length in bytes"},
		},
	},
	{
		name:   "chapters",
		source: "JSON chapters 1.2; by ajv",
		command: func(s site) []string {
			args := []string{schema("chapters.json")}
			for _, name := range s.glob("show-notes/*/chapters.json") {
				args = append(args, filepath.Join(s.dir, name))
			}
			return script("schema.mjs", args...)
		},
		damages: []damage{
			{"a time in words", replace("show-notes/*/chapters.json", `"startTime":`, `"startTime":"soon","endTime":`), "startTime must be number"},
		},
	},
	{
		name:   "transcripts",
		source: "WebVTT; by the W3C group's parser",
		command: func(s site) []string {
			return script("transcript.mjs", filepath.Join(example, "content/episodes"), s.dir)
		},
		damages: []damage{
			{"a cue that ends before it starts", write("bad.vtt", "WEBVTT\n\n00:09.000 --> 00:02.000\nplums\n"), "End timestamp is not greater"},
			{"a comma in a time", write("bad.vtt", "WEBVTT\n\n00:01,000 --> 00:02.000\nplums\n"), "bad.vtt:3"},
		},
	},
}
