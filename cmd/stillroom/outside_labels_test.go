package main

import (
	"bytes"
	"fmt"
	"image"
	"image/png"
	"io"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"stillroom/build/labels"
)

// Labels are drawn in ink on paper by poppler, and measured: every label is
// where its sheet has it, to half a millimetre, and its ink stays two
// millimetres inside. PR-07 of the table of standards.
func TestLabelsOnPaper(t *testing.T) {
	if testing.Short() {
		t.Skip("poppler draws every sheet; run without -short")
	}
	need(t, "pdftoppm", "pdftotext")
	for _, name := range labels.Names() {
		t.Run(name, func(t *testing.T) {
			sheet, _ := labels.Find(name)
			full := sheet.PerPage()
			measure(t, sheet, drawLabels(t, name, full, 1, "--edges"), 0, full, 0)
			measure(t, sheet, drawLabels(t, name, full-2, 2), 1, full-1, labels.White)
		})
	}
}

const (
	dots  = 10  // that a millimetre has in a drawing
	exact = 0.5 // millimetres
)

// drawLabels prints labels and gives the first page of them.
func drawLabels(t *testing.T, sheet string, jars, start int, more ...string) *image.RGBA {
	t.Helper()
	file := filepath.Join(t.TempDir(), "labels.pdf")
	var stderr bytes.Buffer
	args := append([]string{"labels", filepath.Join(example, "content/recipes/damson-preserves.md"), "--made", "2026-09-12", "--ingredients",
		"--sheet", sheet, "--jars", fmt.Sprint(jars), "--start", fmt.Sprint(start), "--out", file}, more...)
	if status := run(args, strings.NewReader(""), io.Discard, &stderr); status != succeeded {
		t.Fatalf("status %d: %s", status, &stderr)
	}
	text, err := exec.Command("pdftotext", "-raw", file, "-").Output()
	if n := strings.Count(string(text), "Batch 2026-09-12"); err != nil || n != jars {
		t.Errorf("%d batches are on %d labels, %v", n, jars, err)
	}
	for _, word := range []string{"Damson preserves", "Made 12 Sep 2026", "Best by 12 Sep 2027", "Keep cool, dark and dry."} {
		if n := strings.Count(strings.ReplaceAll(string(text), "\n", " "), word); n != jars {
			t.Errorf("%q is on %d of %d labels", word, n, jars)
		}
	}
	drawn, err := exec.Command("pdftoppm", "-png", "-gray", "-r", fmt.Sprint(25.4*dots), "-f", "1", "-l", "1", file).Output()
	if err != nil {
		t.Fatal(err)
	}
	m, err := png.Decode(bytes.NewReader(drawn))
	if err != nil {
		t.Fatal(err)
	}
	drawing, ok := m.(*image.RGBA)
	if !ok {
		t.Fatalf("poppler draws a %T", m)
	}
	return drawing
}

// measure looks for the ink of the labels from one number to another. Between
// the labels and in the places of others there is none. The ink of each keeps so
// far inside, in millimetres; at 0 it is that of its edge.
func measure(t *testing.T, s labels.Sheet, m *image.RGBA, from, to int, inside float64) {
	t.Helper()
	ours := make([]image.Rectangle, s.PerPage())
	for n := range ours {
		left := s.Side + float64(n%s.Columns)*(s.Width+s.ColumnGap)
		top := s.Top + float64(n/s.Columns)*(s.Height+s.RowGap)
		ours[n] = millimetreRect(left, top, left+s.Width, top+s.Height)
	}
	for n, place := range ours {
		around := place
		if inside == 0 {
			around = place.Inset(-exact * dots) // an edge lies on both sides of the line
		}
		ink := inkIn(m, around)
		switch {
		case n < from || n >= to:
			if !ink.Empty() {
				t.Errorf("label %d has ink at %v, and should be free", n+1, ink)
			}
			continue
		case ink.Empty():
			t.Errorf("label %d is empty", n+1)
			continue
		}
		for _, gap := range []int{ink.Min.X - place.Min.X, ink.Min.Y - place.Min.Y, place.Max.X - ink.Max.X, place.Max.Y - ink.Max.Y} {
			if mm := float64(gap) / dots; mm < inside-exact || inside == 0 && mm > exact {
				t.Errorf("label %d at %v: its ink %v is %.1f mm from its edge", n+1, place, ink, mm)
				break
			}
		}
	}
	if stray := inkOutside(m, ours, exact*dots); stray != nil {
		t.Errorf("there is ink between the labels at %v", *stray)
	}
}

func millimetreRect(x0, y0, x1, y1 float64) image.Rectangle {
	dot := func(mm float64) int { return int(mm*dots + 0.5) }
	return image.Rect(dot(x0), dot(y0), dot(x1), dot(y1))
}

// inkIn is the smallest rectangle that holds all ink in a part of a drawing.
func inkIn(m *image.RGBA, part image.Rectangle) image.Rectangle {
	var ink image.Rectangle
	for y := part.Min.Y; y < part.Max.Y; y++ {
		for x := part.Min.X; x < part.Max.X; x++ {
			if isInk(m, x, y) {
				ink = ink.Union(image.Rect(x, y, x+1, y+1))
			}
		}
	}
	return ink
}

func isInk(m *image.RGBA, x, y int) bool { return m.RGBAAt(x, y).R < 0xf0 }

// inkOutside finds ink that lies in none of the places, nor so near one.
func inkOutside(m *image.RGBA, places []image.Rectangle, near int) *image.Point {
	b := m.Bounds()
	covered := image.NewGray(b)
	for _, p := range places {
		p = p.Inset(-near).Intersect(b)
		for y := p.Min.Y; y < p.Max.Y; y++ {
			row := covered.Pix[covered.PixOffset(p.Min.X, y):][:p.Dx()]
			for i := range row {
				row[i] = 1
			}
		}
	}
	for y := b.Min.Y; y < b.Max.Y; y++ {
		for x := b.Min.X; x < b.Max.X; x++ {
			if covered.Pix[covered.PixOffset(x, y)] == 0 && isInk(m, x, y) {
				return &image.Point{X: x, Y: y}
			}
		}
	}
	return nil
}
