package content

import (
	"errors"
	"fmt"
	"math/big"
	"strings"
	"sync"
)

// jarSizes are the sizes of jar that have a name, smallest first, and what
// they hold to the rim in US fluid ounces. The names are those of the
// published processes; the volumes follow from them.
var jarSizes = []struct {
	name  string
	other string // the name in other words
	holds int64
}{
	{"quarter-pint", "", 4},
	{"half-pint", "", 8},
	{"12-ounce", "three-quarter-pint", 12},
	{"pint", "one-pint", 16},
	{"pint-and-a-half", "one-and-a-half-pint", 24},
	{"quart", "one-quart", 32},
	{"half-gallon", "", 64},
}

var aJar = want{"a jar", dimsOf(VolumeDim), false, "pints, quarts, ounces or ml", "half-pint, 12-ounce, quart or 500 ml"}

// ParseJar reads a size of jar, by name or by what it holds: half-pint,
// 12-ounce jars, 1 1/2 pint, 500 ml. Ounces are fluid ounces here. A volume
// that is exactly a named size gets that name.
func ParseJar(s string) (Jar, error) {
	text := trimSpace(s)
	size := withoutJar(text)
	if j := jarNamed(size); !j.IsZero() {
		j.Text = text
		return j, nil
	}
	if size != "" && isLetter(size[0]) {
		return Jar{}, unknownJar(text, size)
	}
	q, err := aJar.read(size)
	switch {
	case err != nil:
		return Jar{}, err
	case q.IsRange() || q.Low.Sign() == 0:
		return Jar{}, misread(text, errors.New("a jar has one size, as in "+aJar.example))
	}
	j := Jar{Volume: Volume{q}, Text: text}
	for _, size := range jarSizes {
		if j.Millilitres().Cmp(fluidOunces(size.holds).Millilitres()) == 0 {
			j.Name = size.name
		}
	}
	return j, nil
}

// withoutJar cuts the word jar or jars from the end of a size.
func withoutJar(s string) string {
	before := strings.TrimRightFunc(s, func(r rune) bool { return !isSpace(r) })
	last := s[len(before):]
	if before != "" && (strings.EqualFold(last, "jar") || strings.EqualFold(last, "jars")) {
		return trimSpace(before)
	}
	return s
}

// jarNamed gives the jar of a name, in the singular or the plural, with
// hyphens or spaces. It is the zero Jar if no size has the name.
func jarNamed(s string) Jar {
	const longest = 24
	if s == "" || len(s) > longest {
		return Jar{}
	}
	if j := jarCalled(s); !j.IsZero() { // as most write it
		return j
	}
	name := strings.Join(strings.Fields(strings.ReplaceAll(strings.ToLower(s), "-", " ")), "-")
	return jarCalled(strings.TrimSuffix(name, "s"))
}

func jarCalled(name string) Jar {
	for _, size := range jarSizes {
		if name == size.name || name == size.other && name != "" {
			return Jar{size.name, fluidOunces(size.holds), size.name}
		}
	}
	return Jar{}
}

func fluidOunces(n int64) Volume {
	v := ratio{n, 1}.rat()
	return Volume{Quantity{Low: v, High: v, Unit: FluidOunce}}
}

// unknownJar tells of a name that no size of jar has.
func unknownJar(text, size string) error {
	names := make([]string, len(jarSizes))
	for i, s := range jarSizes {
		names[i] = s.name
	}
	if near := nearest(size, names); near != "" {
		return &misreading{fmt.Sprintf("there is no jar %q", clip(text)), "did you mean " + near + "?"}
	}
	return &misreading{fmt.Sprintf("there is no jar %q", clip(text)), "the sizes are " + strings.Join(names, ", ") + ", or a volume as in 500 ml"}
}

// Millilitres gives what the jar holds to the rim, exactly; nil for no jar.
// Nobody may change it.
func (j Jar) Millilitres() *big.Rat {
	if ml, ok := namedJars()[j.Name]; ok {
		return ml
	}
	return j.Volume.Millilitres()
}

// namedJars gives what each jar that has a name holds, in millilitres.
var namedJars = sync.OnceValue(func() map[string]*big.Rat {
	m := make(map[string]*big.Rat)
	for _, size := range jarSizes {
		m[size.name] = fluidOunces(size.holds).Millilitres()
	}
	return m
})

// IsZero reports whether there is no jar.
func (j Jar) IsZero() bool { return j.Text == "" }

// String gives the name of the size, or its volume: half-pint, 500 ml.
func (j Jar) String() string {
	if j.Name != "" {
		return j.Name
	}
	return j.Volume.String()
}
