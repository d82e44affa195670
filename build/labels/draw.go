package labels

import (
	"bytes"
	"fmt"
	"math"
	"slices"
	"strings"

	"github.com/go-pdf/fpdf"

	"stillroom/content"
)

// A Print is an order for labels.
type Print struct {
	Sheet Sheet
	Label Label
	Made  content.Date // goes into the file in place of the day of printing
	Count int          // how many labels
	Start int          // the first place on the first sheet that is still free, from 1
	Edges bool         // whether the edges of labels are drawn
}

// A Printed is a PDF file of labels.
type Printed struct {
	Data    []byte
	Pages   int
	LeftOut []string // what there was no room for: the ingredients
}

// White is what is left free at the edge of each label, in millimetres: PR-07.
const White = 2.0

// PDF draws the labels.
func (j Print) PDF() (Printed, error) {
	if err := j.check(); err != nil {
		return Printed{}, err
	}
	f := j.empty()
	p := newPen(f)
	d := design(j.Sheet)
	box := d.text(place{w: j.Sheet.Width, h: j.Sheet.Height})
	fit, err := p.fit(j.Label, box.w, box.h)
	if err != nil {
		return Printed{}, fmt.Errorf("%w; choose a sheet with larger labels", err)
	}
	for n := range j.Count {
		at := n + j.Start - 1
		if n == 0 || at%j.Sheet.PerPage() == 0 {
			f.AddPage()
		}
		where := j.Sheet.place(at % j.Sheet.PerPage())
		if j.Edges {
			edge(f, where, j.Sheet.Round)
		}
		d.frame(f, where)
		p.lines(fit.lines, d.text(where))
	}
	var b bytes.Buffer
	if err := f.Output(&b); err != nil {
		return Printed{}, fmt.Errorf("write the PDF: %w", err)
	}
	return Printed{b.Bytes(), f.PageCount(), fit.leftOut}, nil
}

// Most is how many labels are printed at once.
const Most = 2000

func (j Print) check() error {
	if j.Count < 1 || j.Count > Most {
		return fmt.Errorf("%d labels cannot be printed: from 1 to %d can", j.Count, Most)
	}
	if j.Start < 1 || j.Start > j.Sheet.PerPage() {
		return fmt.Errorf("a sheet of %v has no label %d to start at: it has %d", j.Sheet, j.Start, j.Sheet.PerPage())
	}
	return j.lacking()
}

// lacking says which letters the typefaces do not have.
func (j Print) lacking() error {
	l := j.Label
	rest := strings.Join([]string{l.Made, l.Best, l.Keep, l.Then, l.Jar, l.Batch, l.Ingredients, l.Address}, "")
	missing, err := display.lacking(l.Name)
	if err != nil {
		return err
	}
	for _, f := range []*face{plain, bold} {
		more, err := f.lacking(rest)
		if err != nil {
			return err
		}
		missing = append(missing, more...)
	}
	if len(missing) > 0 {
		slices.Sort(missing)
		return fmt.Errorf("the typefaces of labels have no %s; write what it means in Latin letters", strings.Join(slices.Compact(missing), " "))
	}
	return nil
}

// empty is a PDF of the right size, in which no clock is read.
func (j Print) empty() *fpdf.Fpdf {
	f := fpdf.NewCustom(&fpdf.InitType{
		OrientationStr: "P", UnitStr: "mm",
		Size: fpdf.SizeType{Wd: j.Sheet.PageWidth, Ht: j.Sheet.PageHeight},
	})
	f.SetCatalogSort(true)
	f.SetCreationDate(j.Made.Time())
	f.SetModificationDate(j.Made.Time())
	f.SetProducer("Stillroom", true)
	f.SetTitle("Labels: "+j.Label.Name, true)
	f.SetMargins(0, 0, 0)
	f.SetAutoPageBreak(false, 0)
	return f
}

// lines draws text in the middle of a box.
func (p pen) lines(lines []line, box place) {
	y := box.y + (box.h-heightOf(lines))/2
	for _, l := range lines {
		y += l.before
		if l.rule {
			double(p.f, box, y+l.height/2)
		} else {
			p.f.SetTextColor(0x1b, 0x24, 0x30)
			x := box.x + (box.w-p.width(l.face, l.size, l.text))/2
			p.f.Text(x, y+l.size*above*point, l.text)
		}
		y += l.height
	}
}

// double is the double rule in red below a name.
func double(f *fpdf.Fpdf, box place, y float64) {
	length := math.Min(box.w, 40)
	x := box.x + (box.w-length)/2
	red(f, 0.5)
	f.Line(x, y-0.35, x+length, y-0.35)
	red(f, 0.2)
	f.Line(x, y+0.35, x+length, y+0.35)
}

func red(f *fpdf.Fpdf, width float64) {
	f.SetDrawColor(0xb3, 0x26, 0x2b)
	f.SetLineWidth(width)
}

// edge draws the edge of a label, to cut it out along.
func edge(f *fpdf.Fpdf, p place, round bool) {
	f.SetDrawColor(0x80, 0x80, 0x80)
	f.SetLineWidth(0.1)
	if round {
		f.Circle(p.x+p.w/2, p.y+p.h/2, math.Min(p.w, p.h)/2, "D")
		return
	}
	f.Rect(p.x, p.y, p.w, p.h, "D")
}
