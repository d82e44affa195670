package labels

import (
	"bytes"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/go-pdf/fpdf"
	"github.com/pdfcpu/pdfcpu/pkg/api"
)

// samples are labels of few words and of many.
var samples = []Label{
	{Name: "Jam", Made: "Made 1 Aug 2026", Keep: "Keep frozen.", Batch: "Batch 2026-08-01"},
	{
		Name: "Damson preserves", Made: "Made 1 Aug 2026", Best: "Best by 1 Aug 2027", Keep: "Keep cool, dark and dry.",
		Then: "Refrigerate once opened.", Jar: "Half-pint", Batch: "Batch 2026-08-01 B",
		Ingredients: "Ingredients: damson plums, sugar, water", Address: "hollowlane.example/recipes/damson-preserves/",
	},
	{
		Name: "Żółte śliwki mirabelki w syropie z wanilią", Made: "Made 30 Sep 2026", Best: "Best by 30 Sep 2027",
		Keep: "Keep cool, dark and dry.", Then: "Refrigerate once opened.", Jar: "Pint-and-a-half", Batch: "Batch 2026-09-30",
		Ingredients: "Ingredients: " + strings.Repeat("ripe mirabelle plums, stoned and halved, ", 6) + "½ vanilla pod",
		Address:     "a-rather-long-name-for-a-larder.example/recipes/mirabelles-in-syrup-with-vanilla/",
	},
}

// Text stays in its box on every sheet, in letters of 7 points and more, and
// what is left out is told.
func TestFit(t *testing.T) {
	p := newPen(fpdf.New("P", "mm", "A4", ""))
	for _, s := range sheets {
		for _, l := range samples {
			box := design(s).text(place{w: s.Width, h: s.Height})
			fit, err := p.fit(l, box.w, box.h)
			if err != nil {
				t.Errorf("%s: %v", s.Name, err)
				continue
			}
			if h := heightOf(fit.lines); h > box.h+1e-9 {
				t.Errorf("%s, %s: %.2f mm high, the box %.2f", s.Name, l.Name, h, box.h)
			}
			var said []string
			for _, line := range fit.lines {
				if line.rule {
					continue
				}
				said = append(said, line.text)
				if w := p.width(line.face, line.size, line.text); w > box.w+1e-9 || line.size < smallestText {
					t.Errorf("%s: %q in %v points is %.2f mm wide, the box %.2f", s.Name, line.text, line.size, w, box.w)
				}
			}
			all := squeeze(strings.Join(said, ""))
			for what, text := range map[string]string{
				"": l.Name + l.Made + l.Best + l.Keep + l.Batch, "the ingredients": l.Ingredients, "where to read more": l.Address,
				"the size of the jar": l.Jar, "what to do once it is opened": l.Then,
			} {
				if what == "" || slices.Contains(fit.leftOut, what) {
					continue
				}
				if !strings.Contains(all, squeeze(text)) {
					t.Errorf("%s: %s is not there, and is not said to be left out: %q", s.Name, what, said)
				}
			}
			for _, text := range []string{l.Name, l.Made, l.Best, l.Keep, l.Batch} {
				if !strings.Contains(all, squeeze(text)) {
					t.Errorf("%s: the label lacks %q: %q", s.Name, text, said)
				}
			}
		}
	}
}

// squeeze takes out what a line break may swallow.
func squeeze(s string) string { return strings.ReplaceAll(s, " ", "") }

func TestFitShrinksBeforeItBreaks(t *testing.T) {
	p := newPen(fpdf.New("P", "mm", "A4", ""))
	l := Label{Name: "Damson jam", Made: "Made 1 Aug 2026", Keep: "Keep frozen.", Batch: "Batch 2026-08-01"}
	sizes := map[float64]float64{}
	for _, width := range []float64{90, 60, 42} {
		fit, err := p.fit(l, width, 40)
		if err != nil {
			t.Fatal(err)
		}
		if fit.lines[0].text != "Damson jam" {
			t.Errorf("in %v mm the name is broken: %q", width, fit.lines[0].text)
		}
		sizes[width] = fit.lines[0].size
	}
	if !(sizes[90] > sizes[60] && sizes[60] > sizes[42]) {
		t.Errorf("the sizes are %v", sizes)
	}
	if fit, err := p.fit(l, 28, 40); err != nil || fit.lines[0].text != "Damson" {
		t.Errorf("in 28 mm: %+v, %v", fit.lines, err)
	}
}

// A long name is broken so that it stays large, and does not make the text below
// it small. No word is left alone, and what is left of the height parts the lines.
func TestFitLongName(t *testing.T) {
	p := newPen(aPrint(1, 1).empty())
	l := samples[1]
	l.Name = "Slow-cooked preserves of damsons, crab apples and quinces, with a little cassis"
	fit, err := p.fit(l, 90, 60)
	if err != nil {
		t.Fatal(err)
	}
	var name []string
	for _, line := range fit.lines {
		if line.rule {
			break
		}
		name = append(name, line.text)
	}
	text := fit.lines[len(name)+1]
	if len(name) < 2 || fit.lines[0].size < 12 || text.size < 9 || text.before == 0 || heightOf(fit.lines) > 60 {
		t.Errorf("the name is %q in %g points, above text in %g points, %g mm apart", name, fit.lines[0].size, text.size, text.before)
	}
	last, first := p.width(display, 20, name[len(name)-1]), p.width(display, 20, name[0])
	if last < first*0.6 {
		t.Errorf("the name is %q", name)
	}
}

func aPrint(count, start int) Print {
	s, _ := Find("a4-3x7")
	return Print{Sheet: s, Label: samples[1], Count: count, Start: start}
}

func TestPDF(t *testing.T) {
	api.DisableConfigDir()
	for _, s := range sheets {
		for i, l := range samples {
			j := Print{Sheet: s, Label: l, Made: date(t, "2026-08-01"), Count: 40, Start: 2, Edges: i == 1}
			got, err := j.PDF()
			if err != nil {
				t.Fatalf("%s: %v", s.Name, err)
			}
			if err := api.Validate(bytes.NewReader(got.Data), nil); err != nil {
				t.Errorf("%s: pdfcpu: %v", s.Name, err)
			}
			if n, err := api.PageCount(bytes.NewReader(got.Data), nil); err != nil || n != got.Pages || n != (40+s.PerPage())/s.PerPage() {
				t.Errorf("%s: %d pages by pdfcpu, %d by us, %v", s.Name, n, got.Pages, err)
			}
			dims, err := api.PageDims(bytes.NewReader(got.Data), nil)
			if err != nil || math.Abs(dims[0].Width*point-s.PageWidth) > 0.01 || math.Abs(dims[0].Height*point-s.PageHeight) > 0.01 {
				t.Errorf("%s: the page is %v, %v", s.Name, dims, err)
			}
		}
	}
}

// The same order gives the same bytes, whatever the clock says.
func TestPDFRepeats(t *testing.T) {
	j := aPrint(5, 1)
	j.Made = date(t, "2026-08-01")
	one, err1 := j.PDF()
	two, err2 := j.PDF()
	if err1 != nil || err2 != nil || !bytes.Equal(one.Data, two.Data) {
		t.Errorf("%d bytes, then %d; %v, %v", len(one.Data), len(two.Data), err1, err2)
	}
	if !bytes.Contains(one.Data, []byte("D:20260801000000")) {
		t.Error("the day of the labels is not the day of the file")
	}
}

func TestPages(t *testing.T) {
	for _, test := range []struct{ count, start, pages int }{
		{1, 1, 1}, {21, 1, 1}, {22, 1, 2}, {21, 2, 2}, {1, 21, 1}, {2, 21, 2}, {64, 1, 4},
	} {
		got, err := aPrint(test.count, test.start).PDF()
		if err != nil || got.Pages != test.pages {
			t.Errorf("%d from %d: %d pages, %v; want %d", test.count, test.start, got.Pages, err, test.pages)
		}
	}
}

func TestRefusals(t *testing.T) {
	long := aPrint(1, 1)
	long.Label.Name = strings.Repeat("preserves of damsons and ", 30)
	word := aPrint(1, 1)
	word.Label.Name = strings.Repeat("p", 90)
	letters := aPrint(1, 1)
	letters.Label.Name = "杏 jam 🍑"
	for _, test := range []struct {
		j    Print
		want string
	}{
		{aPrint(0, 1), "0 labels cannot be printed: from 1 to 2000 can"},
		{aPrint(-3, 1), "-3 labels cannot be printed"},
		{aPrint(2001, 1), "2001 labels cannot be printed"},
		{aPrint(1, 0), "a sheet of 3 by 7 labels of 63.5 by 38.1 mm has no label 0 to start at: it has 21"},
		{aPrint(1, 22), "has no label 22 to start at"},
		{long, "there is no room for “preserves"},
		{word, "there is no room for “ppp"},
		{letters, "the typefaces of labels have no 杏 🍑; write what it means in Latin letters"},
	} {
		if _, err := test.j.PDF(); err == nil || !strings.Contains(err.Error(), test.want) {
			t.Errorf("error %v, want %q", err, test.want)
		}
	}
}

func BenchmarkPDF(b *testing.B) {
	j := aPrint(30, 1)
	for b.Loop() {
		if _, err := j.PDF(); err != nil {
			b.Fatal(err)
		}
	}
}
