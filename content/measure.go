package content

import (
	"errors"
	"math/big"
)

var errNotYet = errors.New("not read yet")

// ParseLength reads a length: 1/4 in, ¼", 6 mm.
func ParseLength(s string) (Length, error) { return Length{}, errNotYet }

// ParseVolume reads a volume: 1 1/2 cups, 250 ml, 2 qt.
func ParseVolume(s string) (Volume, error) { return Volume{}, errNotYet }

// ParseWeight reads a weight: 350 g, 1 lb 4 oz.
func ParseWeight(s string) (Weight, error) { return Weight{}, errNotYet }

// ParseTemperature reads a temperature: 220 F, 104 °C.
func ParseTemperature(s string) (Temperature, error) { return Temperature{}, errNotYet }

// ParseDuration reads a time: 10 min, 1 h 30 min, 3 weeks.
func ParseDuration(s string) (Duration, error) { return Duration{}, errNotYet }

// ParseAltitude reads a height above the sea: 4,500 ft, 1370 m.
func ParseAltitude(s string) (Altitude, error) { return Altitude{}, errNotYet }

// ParsePressure reads a gauge pressure: 11 psi, 76 kPa.
func ParsePressure(s string) (Pressure, error) { return Pressure{}, errNotYet }

// ParseShare reads a strength: 5%, 2.5 per cent.
func ParseShare(s string) (Share, error) { return Share{}, errNotYet }

// Inches gives the length, or the lower end of a range, exactly; nil if none.
func (l Length) Inches() *big.Rat { return l.Low }

// Millilitres gives the volume, or the lower end of a range, exactly; nil if none.
func (v Volume) Millilitres() *big.Rat { return v.Low }

// Grams gives the weight, or the lower end of a range, exactly; nil if none.
func (w Weight) Grams() *big.Rat { return w.Low }

// Fahrenheit gives the temperature, or the lower end of a range, exactly; nil if none.
func (t Temperature) Fahrenheit() *big.Rat { return t.Low }

// Minutes gives the time, or the lower end of a range, exactly; nil if none.
func (d Duration) Minutes() *big.Rat { return d.Low }

// Feet gives the altitude, or the lower end of a range, exactly; nil if none.
func (a Altitude) Feet() *big.Rat { return a.Low }

// PSI gives the pressure, or the lower end of a range, exactly; nil if none.
func (p Pressure) PSI() *big.Rat { return p.Low }

// Percent gives the share, or the lower end of a range, exactly; nil if none.
func (s Share) Percent() *big.Rat { return s.Low }
