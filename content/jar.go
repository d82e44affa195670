package content

import "math/big"

// ParseJar reads a size of jar: half-pint, 12-ounce jars, 500 ml.
func ParseJar(s string) (Jar, error) { return Jar{}, errNotYet }

// Millilitres gives what the jar holds to the rim, exactly; nil for no jar.
func (j Jar) Millilitres() *big.Rat { return j.Volume.Millilitres() }

// IsZero reports whether there is no jar.
func (j Jar) IsZero() bool { return j.Text == "" }

// String gives the name of the size, or its volume: half-pint, 500 ml.
func (j Jar) String() string { return j.Name }
