package validate

// What follows explains; it never makes a process. Published times and
// pressures are compared with published tables alone, and nobody may work out
// a canning time from a temperature.

// BoilingPoint gives the temperature in degrees Fahrenheit at which water boils
// at a height above the sea in feet, on a day of standard weather: the pressure
// of the standard atmosphere (ISO 2533), and the saturation line of IAPWS
// R7-97. Weather moves it by a degree either way. It is NaN above 36,000 ft.
func BoilingPoint(feet float64) float64 { return fahrenheit(boilingKelvin(airPressure(feet))) }

// JellyPoint gives the temperature in degrees Fahrenheit at which jelly without
// added pectin sets at a height above the sea in feet: 8 degrees above the
// boiling point of water, as AIB 539, Guide 7 has it. A cook measures the
// boiling point of the day instead and adds the same.
func JellyPoint(feet float64) float64 {
	above, _ := LimitRat("gel-above-boiling").Float64()
	return BoilingPoint(feet) + above
}

// SteamTemperature gives the temperature in degrees Fahrenheit of pure steam at
// a gauge pressure in psi and a height above the sea in feet: what a canner
// reaches inside once its air is vented. With air in it, it is cooler.
func SteamTemperature(psi, feet float64) float64 {
	return fahrenheit(boilingKelvin(airPressure(feet) + psi*pascalsPerPSI))
}
