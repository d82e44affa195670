package validate

import (
	"fmt"

	"stillroom/content"
)

// steamTooLong reports a steam process over 45 minutes.
var steamTooLong = &Rule{
	ID:       "steam-too-long",
	Severity: Error,
	Summary:  "more than 45 minutes in an atmospheric steam canner",
	Doc: `An atmospheric steam canner holds little water and must not be opened to add
more. 45 minutes is the longest process that it may be used for, what altitude
adds included. Above that use boiling water.`,
	Source:       steamStatement,
	CheckKeeping: checkSteamTooLong,
}

func checkSteamTooLong(_ *content.Recipe, m *Match) []Finding {
	if m.Keeping.Way.V != content.AtmosphericSteam {
		return nil
	}
	most := LimitInt("steam-canner-max-time")
	var fs []Finding
	for _, j := range m.Jars {
		for _, b := range j.Entry.Altitude {
			if !b.Value.Set() || compareWhole(b.Value.V.Minutes(), most) <= 0 {
				continue
			}
			fs = append(fs, Finding{
				Pos:     b.Value.Pos,
				Message: fmt.Sprintf("%s in steam for %s; %d min is the longest that is accepted", b.Value.V.Text, b.Text, most),
				Advice:  "Use boiling water for this jar, or leave the size out.",
			})
		}
	}
	return fs
}
