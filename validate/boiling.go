package validate

import (
	"math/big"
	"sync"
)

// A GelPoint is where water boils and jelly without added pectin sets at an
// altitude.
type GelPoint struct {
	Altitude     int      // feet
	Boiling, Gel *big.Rat // degrees Fahrenheit
	Source       Source
}

// GelPoints gives the table, lowest altitude first. Nobody may change it.
func GelPoints() []GelPoint { return gelPoints() }

var gelPoints = sync.OnceValue(func() []GelPoint {
	var ps []GelPoint
	for _, r := range readTable("boiling-gel.tsv") {
		ps = append(ps, GelPoint{
			Altitude: r.whole(r.text("altitude_ft")),
			Boiling:  r.rat("boiling_f"),
			Gel:      r.rat("gel_f"),
			Source:   r.source("publication"),
		})
	}
	return ps
})

// A CannerTemperature is what a canner reaches inside at a gauge pressure.
type CannerTemperature struct {
	Altitude    int    // feet
	Gauge       string // dial, weighted, any
	PSI         *big.Rat
	Temperature *big.Rat // degrees Fahrenheit
	Source      Source
}

// CannerTemperatures gives the table, in its own order. Nobody may change it.
func CannerTemperatures() []CannerTemperature { return cannerTemperatures() }

var cannerTemperatures = sync.OnceValue(func() []CannerTemperature {
	var ts []CannerTemperature
	for _, r := range readTable("pressure-temperature.tsv") {
		ts = append(ts, CannerTemperature{
			Altitude:    r.whole(r.text("altitude_ft")),
			Gauge:       r.text("gauge"),
			PSI:         r.rat("psi"),
			Temperature: r.rat("temperature_f"),
			Source:      r.source("publication"),
		})
	}
	return ts
})
