package validate

import (
	"fmt"
	"path"
	"slices"

	"golang.org/x/text/unicode/norm"

	"stillroom/content"
)

// missingFile reports a picture, a recording or a transcript that is not
// there.
var missingFile = &Rule{
	ID:       "missing-file",
	Severity: Error,
	Summary:  "a picture, a recording or a transcript that is not there",
	Doc: `Pictures lie in content/pictures and are named from there. A recording and its
transcript lie beside their episode.`,
	Source:    contract,
	CheckSite: checkMissingFile,
}

func checkMissingFile(s *content.Site) []Finding {
	var fs []Finding
	for _, f := range namedPictures(s) {
		if _, ok := s.Pictures[f.V]; !ok {
			fs = append(fs, notThere(f, "content/pictures/"+f.V, pictureNames(s)))
		}
	}
	for _, e := range s.Episodes {
		for _, f := range []content.Field[string]{e.Audio.File, e.Transcript} {
			at := path.Join(path.Dir(e.File), f.V)
			if _, ok := s.Media[at]; f.Set() && !ok {
				fs = append(fs, notThere(f, at, nil))
			}
		}
	}
	return fs
}

func notThere(f content.Field[string], at string, names []string) Finding {
	advice := "Put the file there, or correct its name; capitals count."
	twin := func(name string) bool { return norm.NFC.String(name) == norm.NFC.String(f.V) }
	if slices.ContainsFunc(names, twin) {
		advice = "A file is there whose accents are other characters that look the same. Name it anew, with plain letters."
	} else if n := nearest(f.V, names, 1); len(n) > 0 {
		advice = fmt.Sprintf("Is it %s? %s", n[0], advice)
	}
	return Finding{Pos: f.Pos, Message: fmt.Sprintf("there is no file %s", at), Advice: advice}
}

func pictureNames(s *content.Site) []string {
	var names []string
	for n := range s.Pictures {
		names = append(names, n)
	}
	return names
}
