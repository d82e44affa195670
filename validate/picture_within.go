package validate

import "stillroom/content"

// BrokenWithin reports pictures that are broken within, as only the one who
// makes prints of them can see: by name relative to content/pictures, with what
// is wrong. They are findings of the rule that looks at pictures from outside.
func BrokenWithin(s *content.Site, faults map[string]string) Report {
	byFile := make(map[content.File]string, len(faults))
	for name, fault := range faults {
		byFile[s.Pictures[name]] = "the picture " + fault
	}
	fs := pictureBroken.stamp(brokenPictures(s, func(_ *content.Site, f content.File) string { return byFile[f] }))
	sortFindings(fs)
	return Report{Findings: fs, Counts: count(s, fs)}
}
