package labels

import (
	"math"
	"strings"
	"testing"

	"stillroom/content"
)

// PR-07 of the table of standards: labels, gaps and margins add up to the page,
// to a tenth of a millimetre.
func TestSheetsAddUp(t *testing.T) {
	seen := map[string]bool{}
	for _, s := range sheets {
		if seen[s.Name] {
			t.Errorf("two sheets are called %s", s.Name)
		}
		seen[s.Name] = true
		if w := 2*s.Side + s.across(); math.Abs(w-s.PageWidth) > 0.1 {
			t.Errorf("%s is %.2f mm wide, its page %.2f", s.Name, w, s.PageWidth)
		}
		if h := 2*s.Top + s.down(); math.Abs(h-s.PageHeight) > 0.1 {
			t.Errorf("%s is %.2f mm high, its page %.2f", s.Name, h, s.PageHeight)
		}
		if err := s.check(); err != nil {
			t.Errorf("%s: %v", s.Name, err)
		}
		if found, ok := Find(s.Name); !ok || found != s {
			t.Errorf("%s is not found by its name", s.Name)
		}
	}
	if _, ok := Find("a4"); ok {
		t.Error("a page alone was taken for a sheet")
	}
}

func TestPlace(t *testing.T) {
	s, _ := Find("a4-3x7")
	for n, want := range map[int]place{
		0:  {7.25, 15.15, 63.5, 38.1},
		2:  {139.25, 15.15, 63.5, 38.1},
		3:  {7.25, 53.25, 63.5, 38.1},
		20: {139.25, 243.75, 63.5, 38.1},
	} {
		if got := s.place(n); math.Abs(got.x-want.x)+math.Abs(got.y-want.y)+math.Abs(got.w-want.w)+math.Abs(got.h-want.h) > 1e-9 {
			t.Errorf("label %d lies at %v, want %v", n, got, want)
		}
	}
}

func length(t *testing.T, s string) content.Length {
	t.Helper()
	if s == "" {
		return content.Length{}
	}
	l, err := content.ParseLength(s)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

func TestOwn(t *testing.T) {
	tests := []struct {
		page, width, height, gap, side string
		columns, rows                  int
		want                           string // the error, or the sheet
	}{
		{"a4", "60 mm", "60 mm", "", "", 3, 4, "3 by 4 labels of 60 by 60 mm, 15.0 from the side, 28.5 from the top"},
		{"a4", "60 mm", "60 mm", "", "2 mm", 3, 4, "3 by 4 labels of 60 by 60 mm, 2.0 from the side, 28.5 from the top"},
		{"letter", "2 in", "1 in", "1/4 in", "", 3, 4, "3 by 4 labels of 50.8 by 25.4 mm, 25.4 from the side, 88.9 from the top"},
		{"a4", "70 mm", "30 mm", "", "", 3, 1, "3 by 1 labels of 70 by 30 mm, 0.0 from the side, 133.5 from the top"},
		{"a4", "70.1 mm", "30 mm", "", "", 3, 1, "3 labels beside one another take 210.3 mm, and the page is 210.0 mm wide"},
		{"a4", "70 mm", "30 mm", "", "1 mm", 3, 1, "3 labels beside one another take 211.0 mm, and the page is 210.0 mm wide"},
		{"letter", "70 mm", "100 mm", "", "", 3, 3, "3 labels below one another take 300.0 mm, and the page is 279.4 mm high"},
		{"a5", "70 mm", "30 mm", "", "", 3, 1, `the page of the labels is a4 or letter, not "a5"`},
		{"a4", "", "30 mm", "", "", 3, 1, "a sheet has at least one label, which is wider and higher than nothing"},
		{"a4", "70 mm", "30 mm", "", "", 0, 1, "a sheet has at least one label, which is wider and higher than nothing"},
	}
	for _, test := range tests {
		s, err := Own(content.Labels{
			Page: test.page, Columns: test.columns, Rows: test.rows, Width: length(t, test.width), Height: length(t, test.height),
			ColumnGap: length(t, test.gap), Side: length(t, test.side),
		})
		got := s.String() + ", " + strings.Join([]string{decimal(s.Side), "from the side,", decimal(s.Top), "from the top"}, " ")
		if err != nil {
			got = err.Error()
		}
		if got != test.want {
			t.Errorf("%+v: %s", test, got)
		}
	}
	round, err := Own(content.Labels{Page: "a4", Columns: 3, Rows: 4, Width: length(t, "60 mm"), Height: length(t, "60 mm"), Round: true})
	if err != nil || !round.Round || round.String() != "3 by 4 round labels of 60 mm" {
		t.Errorf("round: %v, %v", round, err)
	}
}

func decimal(f float64) string {
	return strings.TrimSuffix(short(f), ".0") + map[bool]string{true: ".0"}[f == math.Trunc(f)]
}
