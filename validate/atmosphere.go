package validate

import "math"

// Feet and pounds to the square inch in SI units, by definition: NIST SP 811
// (2008), appendix B.
const (
	metresPerFoot   = 0.3048
	pascalsPerPSI   = 6894.757293168
	kelvinAtZeroC   = 273.15
	highestTableFor = 11000.0 // metres: above, the standard atmosphere has another law
)

// airPressure gives the pressure of the standard atmosphere in pascals at a
// height above the sea in feet: ISO 2533 (1975), the same as ICAO Doc 7488,
// in its lowest layer, up to 11,000 m. It gives NaN outside of it.
func airPressure(feet float64) float64 {
	const (
		seaLevel    = 101325.0  // Pa
		temperature = 288.15    // K at sea level
		lapse       = 0.0065    // K a metre
		gravity     = 9.80665   // m/s²
		gas         = 287.05287 // J/(kg K)
		earth       = 6356766.0 // m, the radius for geopotential height
	)
	h := feet * metresPerFoot
	h = earth * h / (earth + h)
	if h < -2000 || h > highestTableFor {
		return math.NaN()
	}
	return seaLevel * math.Pow(1-lapse*h/temperature, gravity/(gas*lapse))
}
