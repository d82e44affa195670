package build

import "stillroom/content"

// jarName gives a size of jar as the head of a column: Half-pint.
func jarName(j content.Jar) string {
	if j.Name == "" {
		return typeset(j.Text)
	}
	return capital(j.Name)
}

// jarVolume gives what a named size holds, for cooks who buy by the
// millilitre.
func jarVolume(j content.Jar) string {
	if j.Name == "" {
		return ""
	}
	ml, ok := nearest(j.Volume.Quantity, content.Millilitre)
	if !ok {
		return ""
	}
	return thousands(ml) + "\u00a0ml"
}
