package content

import (
	"math/big"
	"regexp"
)

// wholeNumber are the whole numbers that mean the same to a cook and to every
// reader of YAML: 010 is eight to some, 1_0 ten, 1e1 ten.
var wholeNumber = regexp.MustCompile(`^(0|[1-9][0-9]{0,14})$`)

// whole reads a whole number.
func (d *decoder) whole(v value) Field[int] {
	s, ok := d.scalar(v)
	if !ok {
		return Field[int]{}
	}
	if v.Style != 0 || !wholeNumber.MatchString(s) {
		d.wrongScalar(v, "write it in plain digits, without quotation marks")
		return Field[int]{}
	}
	n := 0
	for _, digit := range s {
		n = n*10 + int(digit-'0')
	}
	return Field[int]{n, d.place(v.Node)}
}

func (d *decoder) factor(v value) Field[Quantity] { return as(d, v, parseFactor) }

func parseFactor(s string) (Quantity, error) {
	q, err := ParseQuantity(s)
	if err != nil || q.Unit != "" || q.Low == nil || q.Low.Sign() <= 0 || q.Low.Cmp(q.High) != 0 {
		return Quantity{}, amiss(s, "is no factor", "write a number such as 2, 1.5 or 1/2")
	}
	return q, nil
}

func (d *decoder) ph(v value) Field[Quantity] { return as(d, v, parsePH) }

var decimal = regexp.MustCompile(`^(0|[1-9][0-9]?)(\.[0-9]{1,4})?$`)

// parsePH reads a pH in plain digits, from 0 to 14.
func parsePH(s string) (Quantity, error) {
	if !decimal.MatchString(s) {
		return Quantity{}, amiss(s, "is no pH", "write it in digits, such as 3.9")
	}
	q, err := ParseQuantity(s)
	if err == nil && q.Low.Cmp(big.NewRat(14, 1)) > 0 {
		err = amiss(s, "is over 14", "write the pH that was measured")
	}
	return q, err
}
