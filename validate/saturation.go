package validate

import "math"

// boilingKelvin gives the temperature in kelvin at which pure water boils
// under an absolute pressure in pascals: the saturation line of IAPWS R7-97,
// region 4, backward equation (31), from 611.213 Pa to the critical point. It
// gives NaN outside.
func boilingKelvin(pascals float64) float64 {
	if !(pascals >= 611.213 && pascals <= 22.064e6) {
		return math.NaN()
	}
	n := saturationTerms
	b := math.Pow(pascals/1e6, 0.25)
	e := b*b + n[3]*b + n[6]
	f := n[1]*b*b + n[4]*b + n[7]
	g := n[2]*b*b + n[5]*b + n[8]
	d := 2 * g / (-f - math.Sqrt(f*f-4*e*g))
	s := n[10] + d
	return (s - math.Sqrt(s*s-4*(n[9]+n[10]*d))) / 2
}

// saturationTerms are the coefficients of IAPWS R7-97, table 34, counted from
// 1 as there.
var saturationTerms = [11]float64{
	1:  0.11670521452767e4,
	2:  -0.72421316703206e6,
	3:  -0.17073846940092e2,
	4:  0.12020824702470e5,
	5:  -0.32325550322333e7,
	6:  0.14915108613530e2,
	7:  -0.48232657361591e4,
	8:  0.40511340542057e6,
	9:  -0.23855557567849,
	10: 0.65017534844798e3,
}

func fahrenheit(kelvin float64) float64 { return (kelvin-kelvinAtZeroC)*9/5 + 32 }
