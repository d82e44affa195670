package main

import (
	"cmp"
	"fmt"
	"path/filepath"
	"slices"
	"strings"

	"stillroom/content"
	"stillroom/content/intake"
	"stillroom/validate"
)

// startRecipe writes a recipe of which no more is known than was typed.
func (c *startCommand) startRecipe(p *program, site string) error {
	b := c.blank()
	process, err := c.keeping(&b)
	if err != nil {
		return err
	}
	text := b.Recipe()
	if err := misspelt(text); err != nil {
		return err
	}
	if process != nil {
		text = filledBlank(&b, text)
	}
	if err := begin(site, text); err != nil {
		return err
	}
	name := filepath.Join(site, filepath.FromSlash(text.Path))
	fmt.Fprintln(p.out, name)
	p.sayBegun(b, process, name)
	return nil
}

// blank gathers what is known, and what the name lets guess.
func (c *startCommand) blank() intake.Blank {
	b := intake.Blank{Name: strings.Join(c.Name, " "), Kind: content.Kind(c.Kind), Produce: c.Produce}
	if b.Kind == "" {
		b.Kind = intake.KindOf(b.Name)
		b.KindGuessed = b.Kind != ""
	}
	if len(b.Produce) == 0 {
		b.Produce = produceNamed(b.Name)
		b.ProduceGuessed = len(b.Produce) > 0
	}
	return b
}

// produceNamed gives the produce that a name speaks of first; of several words
// as many as stand for one.
func produceNamed(name string) []string {
	words := strings.Fields(name)
	for n := len(words); n > 0; n-- {
		for i := range len(words) - n + 1 {
			if p, ok := validate.LookUpProduce(strings.Join(words[i:i+n], " ")); ok {
				return []string{p.Plural}
			}
		}
	}
	return nil
}

// keeping says how the food keeps, if that was said; else it lists processes to
// choose from.
func (c *startCommand) keeping(b *intake.Blank) (*validate.Process, error) {
	way := content.Way(c.Way)
	switch {
	case c.Process != "":
		p, err := processOf(c.Process, way)
		if err != nil {
			return nil, err
		}
		b.Keeping = keepingOf(p, cmp.Or(way, p.Method))
		if b.Kind == "" && len(p.Kinds) == 1 {
			b.Kind = p.Kinds[0]
		}
		return p, nil
	case way != "" && !way.Canned():
		b.Keeping = intake.Keeping{Way: way}
	case way == "" && b.Kind == content.Ferment:
		b.Keeping = intake.Keeping{Way: content.Fermenting}
	default:
		choose(b, way)
	}
	return nil, nil
}

// processOf finds a process by its ID and the way that was asked for, if any.
func processOf(id string, way content.Way) (*validate.Process, error) {
	var methods []string
	for _, p := range validate.Processes() {
		if p.ID == id && way == "" {
			methods = append(methods, string(p.Method))
			way = p.Method
			continue
		}
		if p.ID == id && len(methods) > 0 {
			methods = append(methods, string(p.Method))
		}
	}
	if methods = slices.Compact(methods); len(methods) > 1 {
		return nil, fmt.Errorf("%s is published for %s: say which with --way", id, strings.Join(methods, " and for "))
	}
	p, why := validate.FindProcess(id, way, "")
	switch {
	case p != nil:
		return p, nil
	case why.Unknown:
		return nil, fmt.Errorf("no process is called %s%s; stillroom processes lists them", id, didYouMean(strings.Join(why.Nearest, " or ")))
	}
	return nil, fmt.Errorf("%s is not published for %s", id, way)
}

func keepingOf(p *validate.Process, way content.Way) intake.Keeping {
	return intake.Keeping{Way: way, Process: p.ID, About: aboutProcess(p)}
}

// aboutProcess says what a process is for, in a line.
func aboutProcess(p *validate.Process) string {
	about := p.Food
	if p.Pack != "" {
		about += ", " + string(p.Pack) + " pack"
	}
	return about + ", " + strings.ReplaceAll(jarNames(p), " ", " or ") + howSeen(p)
}

// choose lists the processes that the recipe may be one of, and ways to keep it
// cold.
func choose(b *intake.Blank, way content.Way) {
	for _, produce := range b.Produce[:min(1, len(b.Produce))] {
		for _, p := range validate.Candidates(b.Kind, produce) {
			if way == "" || p.Method == way {
				b.Candidates = append(b.Candidates, keepingOf(p, p.Method))
			}
		}
	}
	b.Caution = "To can it, cite the process of a published recipe that yours follows."
	switch {
	case len(b.Produce) == 0:
		b.Caution = "What it is made of is not known: with --produce, the tested processes for it are listed here."
	case len(b.Candidates) == 0:
		b.Caution = "No tested process was found for it by its kind and produce, and without one it is not canned."
	}
	b.Candidates = append(b.Candidates, intake.Keeping{Way: content.Refrigerator}, intake.Keeping{Way: content.Freezer})
}

// misspelt tells of a word that was typed and cannot stand in a recipe.
func misspelt(text intake.File) error {
	_, faults := content.ReadRecipe(text.Path, text.Data)
	for _, f := range faults {
		if !f.Later {
			return fmt.Errorf("%s: %s", f.Message, f.Advice)
		}
	}
	return nil
}

// filledBlank writes the values of the process. If it is not plain which, the
// way is left to be chosen, and the caution says why.
func filledBlank(b *intake.Blank, text intake.File) intake.File {
	filled, why := validate.Fill(text.Path, text.Data, content.Date{})
	if len(why) == 0 {
		text.Data = filled.Data
		return text
	}
	b.Candidates, b.Keeping = []intake.Keeping{b.Keeping}, intake.Keeping{}
	b.Caution = why[0].Message + ". " + why[0].Advice
	return b.Recipe()
}

// sayBegun says what to do next.
func (p *program) sayBegun(b intake.Blank, process *validate.Process, name string) {
	for _, k := range b.Candidates {
		if k.Process != "" && process == nil {
			p.say("May be %s, for %s: %s", k.Process, k.Way, k.About)
		}
	}
	if b.Caution != "" {
		p.say("%s", b.Caution)
		p.say("The ways to keep it stand in the draft: choose there.")
	}
	if process != nil {
		p.say("%s is for %s, from %s.", process.ID, process.Food, dated(process.Source()))
		p.say("Follow its recipe as it is published. When yours is written: stillroom fill %s", name)
	}
	p.say("It is a draft. Look at it: stillroom preview. To publish it, write published: with a day in place of status: draft.")
}
