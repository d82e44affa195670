package validate

import "stillroom/content"

// ClockStart tells from when the minutes of a canned way count, and what to do
// if the boil, the steam or the pressure is lost. It reports false for a way
// that has no process. Of home recipes that give the right minutes, fewer than
// one in three says so (Food Protection Trends 39(5), 2019).
func ClockStart(w content.Way) (Remark, bool) {
	switch w {
	case content.BoilingWater:
		return remark("clock-boiling-water"), true
	case content.AtmosphericSteam:
		return remark("clock-steam"), true
	case content.PressureCanner:
		return remark("clock-pressure"), true
	}
	return Remark{}, false
}

// BeforeClock tells what has to be done before the minutes count. It reports
// false where that is nothing.
func BeforeClock(k *content.Keeping) (Remark, bool) {
	switch {
	case k.Way.V == content.PressureCanner:
		return remark("before-pressure", "vent", limitText("canner-vent", "minutes")), true
	case k.Way.V.Canned() && k.JarsSterilised.V:
		return remark("before-short",
			"boil", limitText("jar-sterilise-time", "minutes"),
			"more", limitText("jar-sterilise-altitude", "minute"),
			"when", limitText("jar-sterilise-when", "minutes")), true
	}
	return Remark{}, false
}
