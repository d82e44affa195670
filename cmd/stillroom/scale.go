package main

import (
	"fmt"
	"math/big"
	"strings"

	"stillroom/build"
	"stillroom/build/amount"
	"stillroom/content"
)

const scaleHelp = `Work a recipe out for other than one batch, and write nothing.

    stillroom scale FILE --by BATCHES
    stillroom scale FILE --jars N

    --by BATCHES       how many batches: 2, 1/2
    --jars N           as many batches as fill N jars
    --jar SIZE         the size of those jars, if it is not that of the recipe
    --way WAY          how the food is to be kept: refrigerator; if left out, the
                       first way of the recipe
    --measures WHICH   written, us, metric or weight
    --format markdown  to paste elsewhere

For example, for a dozen jars:

    stillroom scale content/recipes/damson-preserves.md --jars 12

What is canned, and jam that has to set, is never made in a larger pot: more than
one batch is that many batches, each cooked and canned on its own. Minutes,
pressure, headspace and the acid in each jar stay as they are. Acid is rounded
up, low-acid food and water down.

It ends with 0, with 1 if the recipe has errors, and with 2 if it could not run.
`

type scaleCommand struct {
	File     string  `arg:"" name:"FILE"`
	By       *number `xor:"much" required:"" placeholder:"BATCHES"`
	Jars     *number `xor:"much" required:"" placeholder:"N"`
	Jar      string
	Way      string
	Measures string `enum:"written,us,metric,weight" default:"written"`
	Format   string `enum:"text,markdown" default:"text"`
}

// A number is a flag's 2, 1.5 or 1 1/2.
type number struct{ *big.Rat }

// UnmarshalText reads a number above zero.
func (n *number) UnmarshalText(text []byte) error {
	q, err := content.ParseQuantity(strings.TrimPrefix(string(text), "-"))
	if err != nil {
		return err
	}
	if q.Unit != "" || q.IsRange() || q.Low.Sign() == 0 || text[0] == '-' {
		return fmt.Errorf("%q is not one number above zero; write it as 2 or 1 1/2", text)
	}
	n.Rat = q.Low
	return nil
}

func (c *scaleCommand) run(p *program) int {
	r, status := p.recipe(c.File)
	if r == nil {
		return status
	}
	scaled, err := c.scale(r)
	if err != nil {
		return p.fail(err)
	}
	write := writeScaled
	if c.Format == "markdown" {
		write = writeScaledMarkdown
	}
	if err := write(p.out, scaled); err != nil {
		return p.fail(fmt.Errorf("write the recipe: %w", err))
	}
	return succeeded
}

func (c *scaleCommand) scale(r *content.Recipe) (build.Scaled, error) {
	way, err := c.way(r)
	if err != nil {
		return build.Scaled{}, err
	}
	m := amount.Makings(r)[way]
	jar, err := c.jar(m)
	if err != nil {
		return build.Scaled{}, err
	}
	var batches *big.Rat
	switch {
	case c.By != nil:
		batches = c.By.Rat
	case len(m.Jars) == 0:
		return build.Scaled{}, fmt.Errorf("what %s makes is not counted in jars; use --by", r.Name.V)
	default:
		batches = m.ForJars(c.Jars.Rat, jar)
	}
	return build.Scale(r, way, m.Plan(batches, jar, 0), amount.System(c.Measures)), nil
}

// way is the place of the way of keeping that is asked for.
func (c *scaleCommand) way(r *content.Recipe) (int, error) {
	var known []string
	for i, k := range r.Keeping {
		if c.Way == "" || string(k.Way.V) == c.Way {
			return i, nil
		}
		known = append(known, string(k.Way.V))
	}
	if known == nil {
		return 0, fmt.Errorf("%s does not say yet how it is kept", r.Name.V)
	}
	return 0, fmt.Errorf("%s is not kept by %s; its ways are %s", r.Name.V, c.Way, strings.Join(known, ", "))
}

// jar is the place of the size of jar that is asked for.
func (c *scaleCommand) jar(m amount.Making) (int, error) {
	var known []string
	for i, j := range m.Jars {
		size := strings.TrimSuffix(j.One, " jar")
		if c.Jar == "" || size == c.Jar || j.Many == c.Jar {
			return i, nil
		}
		known = append(known, size)
	}
	if c.Jar == "" {
		return 0, nil
	}
	if known == nil {
		return 0, fmt.Errorf("what the recipe makes is not counted in jars, so that --jar %s says nothing; leave it out", c.Jar)
	}
	return 0, fmt.Errorf("the recipe has no jar %s; its sizes are %s", c.Jar, strings.Join(known, ", "))
}
