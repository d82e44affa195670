package main

import (
	"cmp"
	"errors"
	"fmt"
	"math/big"
	"os"
	"path/filepath"
	"strings"

	"stillroom/build/labels"
	"stillroom/content"
)

const labelsHelp = `Draw a sheet of jar labels for one batch of a recipe, as a PDF file.

    stillroom labels FILE --made DATE [--jars N] [--sheet PRESET]

    --made DATE      the day on which the jars were filled: 2026-07-31
    --jars N         how many; if left out, as many as the batch of that day in
                     the recipe's log gave, or as many as the recipe makes
    --sheet PRESET   the grid of the sheet; if left out, that of the labels in
                     content/site.yaml, or a4-3x7
    --way WAY        how the jars are kept: refrigerator; if left out, the first
                     way of the recipe
    --jar SIZE       the size of jar, if it is not that of the recipe: half-pint
    --batch MARK     tells the batch from others of the day: B
    --start N        the first label that is still on the sheet, counted by row
    --ingredients    name the ingredients
    --edges          draw the edges of the labels, to cut them out or to try a
                     sheet
    --out FILE       where to write; NAME-labels.pdf if left out, - for standard
                     output

For example, nine labels that begin in the third row of a used sheet:

    stillroom labels content/recipes/damson-preserves.md --made 2026-09-12 \
        --jars 9 --sheet letter-3x10 --start 7

Print them at their own size, without fitting to the page. The presets are plain
grids, named by page, columns and rows:

    a4-3x7  a4-3x8  a4-2x7  a4-2x4  a4-3x4-round
    letter-3x10  letter-2x10  letter-2x5  letter-2x3  letter-3x4-round

A grid of your own stands in content/site.yaml, under labels.

The day after which a jar is no longer at its best is the day on which it was
made and the time that the recipe keeps. A recipe with errors gets no labels.
`

type labelsCommand struct {
	File        string `arg:"" name:"FILE"`
	Made        day    `required:"" placeholder:"DATE"`
	Jars        *int
	Sheet       string
	Way         string
	Jar         string
	Batch       string
	Start       int `default:"1"`
	Ingredients bool
	Edges       bool
	Out         string
}

func (c *labelsCommand) run(p *program) int {
	j, file, status := p.judgeFile(c.File)
	if status == refused {
		p.say("No labels were drawn.")
	}
	if status != succeeded {
		return status
	}
	r, status := p.recipeOf(j.site, file)
	if r == nil {
		return status
	}
	order, err := c.order(r, &j.site.Settings)
	if err != nil {
		return p.fail(err)
	}
	printed, err := order.PDF()
	if err != nil {
		return p.fail(err)
	}
	return p.deliver(c.out(r), order, printed)
}

// order gathers what is to be printed.
func (c *labelsCommand) order(r *content.Recipe, s *content.Settings) (labels.Print, error) {
	way, err := c.way(r)
	if err != nil {
		return labels.Print{}, err
	}
	jar, err := c.jar(r, way)
	if err != nil {
		return labels.Print{}, err
	}
	count, err := c.count(r, way)
	if err != nil {
		return labels.Print{}, err
	}
	sheet, err := c.sheet(s)
	if err != nil {
		return labels.Print{}, err
	}
	batch := labels.Batch{
		Recipe: r, Way: way, Made: c.Made.Date, Mark: c.Batch, Jar: jar,
		Address: s.Address.V, Ingredients: c.Ingredients,
	}
	return labels.Print{Sheet: sheet, Label: batch.Label(), Made: c.Made.Date, Count: count, Start: c.Start, Edges: c.Edges}, nil
}

// way is how the jars are kept.
func (c *labelsCommand) way(r *content.Recipe) (*content.Keeping, error) {
	if len(r.Keeping) == 0 {
		return nil, fmt.Errorf("%s does not say yet how it is kept", r.File)
	}
	if c.Way == "" {
		return &r.Keeping[0], nil
	}
	var known []string
	for i := range r.Keeping {
		if string(r.Keeping[i].Way.V) == c.Way {
			return &r.Keeping[i], nil
		}
		known = append(known, string(r.Keeping[i].Way.V))
	}
	return nil, fmt.Errorf("%s is not kept by %s; its ways are %s", r.File, c.Way, strings.Join(known, ", "))
}

// jar is the size that was asked for, that of the yield, or the only one of the
// way.
func (c *labelsCommand) jar(r *content.Recipe, way *content.Keeping) (content.Jar, error) {
	switch {
	case c.Jar != "":
		j, err := content.ParseJar(c.Jar)
		if err != nil {
			return j, fmt.Errorf("--jar: %w", err)
		}
		return j, nil
	case !r.Yield.V.Jar.IsZero():
		return r.Yield.V.Jar, nil
	case len(way.Processing) == 1:
		return way.Processing[0].Jar.V, nil
	}
	return content.Jar{}, nil
}

// count is how many jars there are.
func (c *labelsCommand) count(r *content.Recipe, way *content.Keeping) (int, error) {
	if c.Jars != nil {
		return *c.Jars, nil
	}
	for _, b := range r.Batches {
		if n := jarsIn(b.Yield.V, nil); b.Made.V == c.Made.Date && n > 0 {
			return n, nil
		}
	}
	if n := jarsIn(r.Yield.V, way.Factor.V.Low); n > 0 {
		return n, nil
	}
	return 0, fmt.Errorf("%s: how many jars a batch fills is not said here; write --jars N", r.Yield.Pos)
}

// jarsIn is the most jars that a yield may be, of a batch that is so many times
// the usual one; nil is once. It is 0 if the yield is not in jars.
func jarsIn(y content.Yield, times *big.Rat) int {
	if y.IsZero() || y.Jar.IsZero() && y.Unit != "jar" {
		return 0
	}
	n := new(big.Rat).Set(y.High)
	if times != nil {
		n.Mul(n, times)
	}
	up := new(big.Int).Add(n.Num(), new(big.Int).Sub(n.Denom(), big.NewInt(1)))
	return int(up.Div(up, n.Denom()).Int64())
}

// sheet is the grid that was asked for, or the site's own.
func (c *labelsCommand) sheet(s *content.Settings) (labels.Sheet, error) {
	if c.Sheet != "" {
		return preset("--sheet", c.Sheet)
	}
	own := s.Labels
	switch {
	case !own.Set():
		return preset("", defaultSheet)
	case own.V.Preset != "":
		return preset(own.Pos.String(), own.V.Preset)
	}
	sheet, err := labels.Own(own.V)
	if err != nil {
		return sheet, fmt.Errorf("%s: %w", own.Pos, err)
	}
	return sheet, nil
}

const defaultSheet = "a4-3x7"

// preset finds a sheet by the name that stands at a place.
func preset(at, name string) (labels.Sheet, error) {
	s, ok := labels.Find(name)
	if !ok {
		return s, fmt.Errorf("%s: there is no sheet %q; there are %s", at, name, strings.Join(labels.Names(), ", "))
	}
	return s, nil
}

// out is where to write.
func (c *labelsCommand) out(r *content.Recipe) string {
	return cmp.Or(c.Out, r.Slug+"-labels.pdf")
}

// deliver writes the file and says what it holds.
func (p *program) deliver(out string, order labels.Print, printed labels.Printed) int {
	if out == "-" {
		if isTerminal(p.out) {
			return p.fail(errors.New("a PDF is no text for a terminal; write --out FILE"))
		}
		if _, err := p.out.Write(printed.Data); err != nil {
			return p.fail(fmt.Errorf("write the labels: %w", err))
		}
	} else if err := replaceFile(out, printed.Data); err != nil {
		return p.fail(err)
	}
	p.say("%s for “%s”, %s on %s.", count(order.Count, "label"), order.Label.Name, order.Sheet, count(printed.Pages, "sheet"))
	for _, what := range printed.LeftOut {
		p.say("There was no room for %s: a sheet with larger labels has it.", what)
	}
	if out != "-" {
		p.say("Wrote %s. Print it at its own size, without fitting it to the page.", out)
	}
	return succeeded
}

// replaceFile writes a file beside its place and moves it there.
func replaceFile(name string, data []byte) error {
	if info, err := os.Stat(name); err == nil && !info.Mode().IsRegular() {
		return fmt.Errorf("%s is no file that can be replaced", name)
	}
	if dir := filepath.Dir(name); !isFolder(dir) {
		return fmt.Errorf("%s cannot be written, since there is no folder %s", name, dir)
	}
	f, err := os.Create(name + ".part")
	if err != nil {
		return err
	}
	_, err = f.Write(data)
	if err := errors.Join(err, f.Sync(), f.Close()); err != nil {
		os.Remove(f.Name())
		return fmt.Errorf("write %s: %w", name, err)
	}
	if err := os.Rename(f.Name(), name); err != nil {
		os.Remove(f.Name())
		return err
	}
	return nil
}
