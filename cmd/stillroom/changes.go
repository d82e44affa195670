package main

import (
	"slices"

	"stillroom/content"
	"stillroom/validate"
)

// A jsonChange is something that readers ask whether they may change.
type jsonChange struct {
	File    string `json:"file"`
	Way     string `json:"way"`
	Change  string `json:"change"`
	Asks    string `json:"asks"`
	Verdict string `json:"verdict"` // may, may-not or unknown
	Says    string `json:"says"`
	Source  string `json:"source"`
}

// changes gives what readers may change in the recipes that the report is on,
// if that is asked for. A recipe with errors is left out: what is published of
// its process may not hold for it.
func (c *checkCommand) changes(j judged) []jsonChange {
	if !c.Changes {
		return nil
	}
	all := []jsonChange{}
	for _, r := range j.site.Recipes {
		if !j.within(r.File) || hasError(j.report, r.File) {
			continue
		}
		for _, w := range validate.Changes(r) {
			all = append(all, jsonChanges(r, w)...)
		}
	}
	return all
}

func jsonChanges(r *content.Recipe, w validate.WayChanges) []jsonChange {
	var all []jsonChange
	for _, ch := range w.Changes {
		all = append(all, jsonChange{
			File: r.File, Way: string(w.Keeping.Way.V), Change: ch.ID, Asks: ch.Asks,
			Verdict: string(ch.Verdict), Says: ch.Says, Source: sourceText(ch.Source),
		})
	}
	return all
}

func hasError(rep validate.Report, file string) bool {
	return slices.ContainsFunc(rep.Findings, func(f validate.Finding) bool {
		return f.Pos.File == file && f.Severity == validate.Error
	})
}
