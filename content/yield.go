package content

import (
	"errors"
	"fmt"
	"strings"
)

// What can be wrong with a yield.
var (
	errNoYield     = errors.New("a yield is a number of jars or an amount, as in 6 half-pint jars or 2 cups")
	errYieldWhat   = errors.New("a yield says of what, as in 6 half-pint jars or 2 cups")
	errYieldZero   = errors.New("a recipe makes more than nothing")
	errYieldCount  = errors.New("the number of jars comes first, as in 4 12-ounce jars")
	errYieldDouble = errors.New("the fraction may belong to the number or to the jar; name the jar, as in 4 half-pint jars")
)

// ParseYield reads what a recipe makes: 6 half-pint jars, 3 to 4 pints, about
// 2 cups, 12 rings, 7 jars of 500 ml. Pints and quarts count as jars of that size; other volumes
// only if the word jars follows.
func ParseYield(s string) (Yield, error) {
	text := trimSpace(s)
	y, err := parseYield(text)
	if err != nil {
		return Yield{}, misread(text, err)
	}
	y.Text = text
	return y, nil
}

func parseYield(s string) (Yield, error) {
	about, s := cutAbout(s)
	r, rest, err := grammar{number: cutCount, words: true}.cut(s)
	switch {
	case err == errNoNumber:
		return Yield{}, errNoYield
	case err != nil:
		return Yield{}, err
	case r.High.Sign() == 0:
		return Yield{}, errYieldZero
	}
	y := Yield{Quantity: r.Quantity, About: about != ""}
	what, times := cutTimes(rest)
	if !times && len(rest) > 1 && isLetter(rest[0]) && isDigit(rest[1]) { // 1e3
		return Yield{}, errPlainDigits
	}
	what = sizeBehind(what)
	switch {
	case what == "":
		return Yield{}, errYieldWhat
	case isJars(what) || withoutJar(what) != what || !jarNamed(what).IsZero():
		return y.ofJars(what)
	}
	return y.ofAmount(what, s)
}

// ofJars completes a yield of jars of a size, or of a size left open.
func (y Yield) ofJars(size string) (Yield, error) {
	y.Unit = "jar"
	if isJars(size) {
		return y, nil
	}
	m, after, _ := cutUnit(size, dimsOf(VolumeDim))
	switch {
	case !y.Low.IsInt() && m != nil && (size[0] == '-' || trimSpace(after) != ""):
		return Yield{}, errYieldDouble
	case size[0] == '-':
		return Yield{}, errYieldCount
	case m != nil && trimSpace(after) == "":
		y.Unit = m.unit
	}
	var err error
	y.Jar, err = ParseJar(size)
	return y, err
}

// sizeBehind puts the size of "jars of 500 ml" where it mostly stands.
func sizeBehind(what string) string {
	for _, jars := range []string{"jars of ", "jar of "} {
		if size, ok := strings.CutPrefix(what, jars); ok && size != "" && isDigit(size[0]) {
			return size + " jars"
		}
	}
	return what
}

// isJars reports whether jars are counted of which no size is told.
func isJars(s string) bool { return strings.EqualFold(s, "jar") || strings.EqualFold(s, "jars") }

// ofAmount completes a yield that is not in jars. Whole is all that was
// written behind "about", what is the part behind the number.
func (y Yield) ofAmount(what, whole string) (Yield, error) {
	r, rest, err := kitchen.cut(whole)
	rest = trimSpace(rest)
	switch {
	case err != nil:
		return Yield{}, err
	case r.unit != nil && rest == "":
		y.Quantity = r.Quantity
		return y, nil
	case r.unit != nil && r.unit.dim != Count:
		return Yield{}, &misreading{fmt.Sprintf("%q is no part of a yield", clip(rest)), "it is written as in 6 half-pint jars or 2 cups"}
	case !isLetter(what[0]):
		return Yield{}, errNoYield
	}
	word, _ := cutField(what)
	if meant := slipOfYield(word); meant != "" {
		return Yield{}, &misreading{fmt.Sprintf("there is no unit %q", clip(word)), "did you mean " + meant + "?"}
	}
	y.Unit = Unit(tidy(what))
	return y, nil
}

// slipOfYield gives the jar or the unit that a word was meant to be.
func slipOfYield(word string) string {
	for _, size := range jarSizes {
		if isSlip(strings.TrimSuffix(word, "s"), size.name) {
			return size.name
		}
	}
	if m := spelt.slip(word, anyDim); m != nil {
		return string(m.unit)
	}
	return ""
}

// String gives the yield as a cook writes it: about 6 half-pint jars.
func (y Yield) String() string {
	s := y.Quantity.String()
	if !y.Jar.IsZero() && y.Unit == "jar" {
		number := Quantity{Low: y.Low, High: y.High}
		s = number.String() + " " + y.Jar.String() + " " + y.UnitName()
	}
	if y.About {
		return "about " + s
	}
	return s
}
