package validate

import (
	"io/fs"
	"strings"
	"testing"
)

// The rows of each table. A changed count is meant: a row was added from a
// page that was read, or one was taken out because it is no longer published.
var tableRows = map[string]int{
	"acid-equivalents.tsv":     3,
	"acid.tsv":                 134, // 90 published rows, the rest recipes from memory
	"boiling-gel.tsv":          11,
	"answers.tsv":              76,
	"cautions.tsv":             10,
	"changes.tsv":              24,
	"compositions.tsv":         659, // 117 amounts seen in a published copy
	"defects.tsv":              215,
	"evidence.tsv":             461,
	"food-density.tsv":         236,
	"food-ph.tsv":              345,
	"foreign-measures.tsv":     5,
	"items.tsv":                55,
	"jars.tsv":                 7,
	"limits.tsv":               292, // 266 published rows, the rest added with their source
	"notices.tsv":              17,
	"pressure-temperature.tsv": 15,
	"process-editions.tsv":     218, // one for each process; written by TestProcessEditions
	"process-facts.tsv":        190,
	"processes.tsv":            218,
	"produce.tsv":              245,
	"publications.tsv":         3,
	"published-recipes.tsv":    35,
	"remarks.tsv":              31,
	"schedules.tsv":            608,
}

func TestTablesAreWhole(t *testing.T) {
	files, err := fs.Glob(tableFiles, "tables/*.tsv")
	if err != nil {
		t.Fatal(err)
	}
	if len(files) != len(tableRows) {
		t.Errorf("%d tables, want %d", len(files), len(tableRows))
	}
	for _, f := range files {
		name := strings.TrimPrefix(f, "tables/")
		if got, want := len(readTable(name)), tableRows[name]; got != want {
			t.Errorf("%s has %d rows, want %d", name, got, want)
		}
	}
}

// Every row of a table that holds figures names its publication, and how the
// figure was seen.
func TestRowsNameTheirSource(t *testing.T) {
	sources := map[string]string{
		"acid-equivalents.tsv": "publication", "acid.tsv": "publication", "boiling-gel.tsv": "publication",
		"cautions.tsv": "publication", "changes.tsv": "publication", "publications.tsv": "title",
		"compositions.tsv": "publication", "foreign-measures.tsv": "publication",
		"food-density.tsv": "source", "food-ph.tsv": "publication", "limits.tsv": "publication",
		"notices.tsv": "publication", "pressure-temperature.tsv": "publication",
		"published-recipes.tsv": "publication", "schedules.tsv": "table",
	}
	for name, column := range sources {
		for _, r := range readTable(name) {
			if r.text(column) == "" {
				t.Errorf("%s names no publication", r.place)
			}
			codes := strings.Fields(r.text("evidence"))
			if len(codes) == 0 {
				t.Errorf("%s says nothing of how it was seen", r.place)
			}
			for _, code := range codes {
				if code != "practice" && code != "m" && addresses()[code] == "" {
					t.Errorf("%s: no evidence %q", r.place, code)
				}
			}
		}
	}
}

func TestEveryAddressIsUsed(t *testing.T) {
	used := map[string]bool{}
	for name := range tableRows {
		for _, r := range readTable(name) {
			for _, column := range []string{"evidence", "solids_evidence"} {
				if _, ok := r.columns[column]; !ok {
					continue
				}
				for code := range strings.FieldsSeq(r.text(column)) {
					used[code] = true
				}
			}
		}
	}
	for _, r := range readTable("evidence.tsv") {
		if !used[r.text("number")] {
			t.Errorf("%s is the evidence of no row", r.text("address"))
		}
	}
}

// No table may hold what a spreadsheet or an editor left behind.
func TestTablesArePlain(t *testing.T) {
	for name := range tableRows {
		for _, r := range readTable(name) {
			for i, c := range r.cells {
				if strings.TrimSpace(c) != c || strings.ContainsAny(c, "\r\u00a0") {
					t.Errorf("%s, cell %d: %q", r.place, i+1, c)
				}
			}
		}
	}
}
