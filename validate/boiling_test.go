package validate

import "testing"

// The higher the kitchen, the cooler the boil and the gel.
func TestGelPointsFall(t *testing.T) {
	ps := GelPoints()
	if p := ps[0]; p.Altitude != 0 || p.Boiling.RatString() != "212" || p.Gel.RatString() != "220" {
		t.Errorf("at sea level %s and %s F, want 212 and 220", p.Boiling, p.Gel)
	}
	for i, p := range ps[1:] {
		if p.Altitude <= ps[i].Altitude || p.Boiling.Cmp(ps[i].Boiling) >= 0 || p.Gel.Cmp(ps[i].Gel) >= 0 {
			t.Errorf("at %d ft water boils at %s F and jelly sets at %s F", p.Altitude, p.Boiling, p.Gel)
		}
		if p.Source.Title == "" {
			t.Errorf("%d ft has no source", p.Altitude)
		}
	}
}

func TestCannerTemperatures(t *testing.T) {
	for _, c := range CannerTemperatures() {
		// 240 F is what every low-acid process aims at; 5 psi is for acid food.
		if want := LimitInt("pressure-temp-low"); c.PSI.RatString() != "5" && c.Temperature.Cmp(LimitRat("pressure-temp-low")) < 0 {
			t.Errorf("%s psi at %d ft is %s F, under %d", c.PSI.RatString(), c.Altitude, c.Temperature.RatString(), want)
		}
		if c.Gauge != DialGauge && c.Gauge != WeightedGauge && c.Gauge != "any" || c.Source.Title == "" {
			t.Errorf("%+v lacks something", c)
		}
	}
}
