package main

import (
	"fmt"
	"slices"

	"stillroom/content"
	"stillroom/validate"
)

const schemaHelp = `Print the JSON Schema of the front matter, for editors.

    stillroom schema [recipe|episode|page|site]

It is that of a recipe if you name none; site is that of content/site.yaml. An
editor that knows it offers keys, words and the ids of tested processes while
you write, and underlines what would be refused. For example:

    stillroom schema recipe

Keep what it prints as a file, and tell your editor which files it is for. In
site.yaml a first line does that:

    # yaml-language-server: $schema=site.schema.json

An editor reads YAML by the letter: put a band of altitude with a comma into
quotation marks where it stands in brackets, as in {"0-1,000 ft": 10 min}.
`

type schemaCommand struct {
	Sort string `arg:"" optional:"" enum:"recipe,episode,page,site" default:"recipe"`
}

func (c *schemaCommand) run(p *program) int {
	text := content.RecipeSchema(vocabulary())
	switch c.Sort {
	case "episode":
		text = content.EpisodeSchema()
	case "page":
		text = content.PageSchema()
	case "site":
		text = content.SiteSchema()
	}
	if _, err := p.out.Write(text); err != nil {
		return p.fail(fmt.Errorf("write the schema: %w", err))
	}
	return succeeded
}

// vocabulary gives the words that a recipe may take from the tables.
func vocabulary() content.Vocabulary {
	var v content.Vocabulary
	for _, t := range validate.Processes() {
		v.Processes = append(v.Processes, t.ID)
	}
	v.Processes = slices.Compact(v.Processes) // an id may have several methods
	for _, r := range validate.Rules {
		v.Rules = append(v.Rules, r.ID)
	}
	return v
}
