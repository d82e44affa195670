package validate

import (
	"fmt"
	"math"
	"testing"
)

// The verification values of IAPWS R7-97, table 36.
func TestBoilingKelvin(t *testing.T) {
	tests := []struct{ megapascals, kelvin float64 }{
		{0.1, 0.372755919e3},
		{1, 0.453035632e3},
		{10, 0.584149488e3},
	}
	for _, tt := range tests {
		got := boilingKelvin(tt.megapascals * 1e6)
		if math.Abs(got-tt.kelvin) > 0.5e-6 {
			t.Errorf("%v MPa: %.9g K, want %.9g", tt.megapascals, got, tt.kelvin)
		}
	}
	for _, p := range []float64{0, 611, 22.1e6, math.NaN()} {
		if got := boilingKelvin(p); !math.IsNaN(got) {
			t.Errorf("%v Pa: %v K, want NaN", p, got)
		}
	}
}

// Rows of ISO 2533 (1975), table 1, from memory: geopotential height in metres
// and pressure in pascals.
func TestAirPressure(t *testing.T) {
	tests := []struct{ metres, pascals float64 }{
		{0, 101325},
		{1000, 89874.6},
		{2000, 79495.2},
		{3000, 70108.5},
		{5000, 54019.9},
	}
	const earth = 6356766
	for _, tt := range tests {
		geometric := earth * tt.metres / (earth - tt.metres)
		got := airPressure(geometric / metresPerFoot)
		if math.Abs(got-tt.pascals) > 0.1 {
			t.Errorf("%v m: %.1f Pa, want %.1f", tt.metres, got, tt.pascals)
		}
	}
	for _, feet := range []float64{-7000, 37000, math.Inf(1), math.NaN()} {
		if got := airPressure(feet); !math.IsNaN(got) {
			t.Errorf("%v ft: %v Pa, want NaN", feet, got)
		}
	}
}

// A misses holds how far computed values are from published ones.
type misses struct {
	n           int
	sum, square float64
	worst       float64
	at          string
}

func (e *misses) add(got, want float64, at string) {
	d := got - want
	e.n++
	e.sum += d
	e.square += d * d
	if math.Abs(d) > math.Abs(e.worst) {
		e.worst, e.at = d, at
	}
}

func (e *misses) String() string {
	return fmt.Sprintf("%d rows, mean %+.2f °F, root mean square %.2f, worst %+.2f at %s",
		e.n, e.sum/float64(e.n), math.Sqrt(e.square/float64(e.n)), e.worst, e.at)
}

// The computed boiling and jelly points are those of the published table to
// 1.1 degrees. The worst are the highest kitchens: the boiling points of the
// table fall by the same 1.7 °F with every 1,000 ft, those of the standard
// atmosphere faster the higher one goes. Its jelly points are whole degrees.
func TestBoilingPointAgainstTable(t *testing.T) {
	var boiling, jelly misses
	for _, p := range GelPoints() {
		feet := float64(p.Altitude)
		b, _ := p.Boiling.Float64()
		g, _ := p.Gel.Float64()
		at := fmt.Sprint(p.Altitude, " ft")
		boiling.add(BoilingPoint(feet), b, at)
		jelly.add(JellyPoint(feet), g, at)
	}
	t.Logf("boiling point: %v", &boiling)
	t.Logf("jelly point: %v", &jelly)
	if math.Abs(boiling.worst) > 1.1 || math.Abs(jelly.worst) > 1.1 {
		t.Error("further from the table than 1.1 degrees")
	}
	if !(BoilingPoint(-100) > BoilingPoint(0) && BoilingPoint(0) > BoilingPoint(100)) {
		t.Error("the boiling point does not fall with altitude")
	}
}

// The computed steam temperatures are the published ones to a degree: the
// published pressures are rounded to half a pound.
func TestSteamTemperatureAgainstTable(t *testing.T) {
	var steam misses
	for _, c := range CannerTemperatures() {
		psi, _ := c.PSI.Float64()
		want, _ := c.Temperature.Float64()
		steam.add(SteamTemperature(psi, float64(c.Altitude)), want, fmt.Sprintf("%v psi, %d ft, %s", psi, c.Altitude, c.Gauge))
	}
	t.Logf("steam: %v", &steam)
	if math.Abs(steam.worst) > 1 {
		t.Error("further from the table than a degree")
	}
}

func ExampleBoilingPoint() {
	fmt.Printf("%.1f °F at the sea, %.1f °F at 5,000 ft; jelly sets there at %.1f °F\n",
		BoilingPoint(0), BoilingPoint(5000), JellyPoint(5000))
	// Output: 212.0 °F at the sea, 202.8 °F at 5,000 ft; jelly sets there at 210.8 °F
}
