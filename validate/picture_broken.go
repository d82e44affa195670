package validate

import (
	"io/fs"

	"stillroom/content"
)

// pictureBroken reports a picture that browsers could not show, or that is
// not what its name says.
var pictureBroken = &Rule{
	ID:       "picture-broken",
	Severity: Error,
	Summary:  "a picture that is broken, too large or not what its name says",
	Doc: `A picture is a JPEG, PNG, WebP or SVG file that is all there and is named as what
it is: a PNG called plum.jpg is shown by some browsers and not by others. It has
at most 60 million pixels. An SVG says its shape in a viewBox and holds no
script. Save the picture again from the program that made it, or copy it again
from the camera.`,
	Source:    contract,
	CheckSite: checkPictureBroken,
}

func checkPictureBroken(s *content.Site) []Finding {
	var fs []Finding
	faults := make(map[string]string) // by file, so that each is read once
	for _, f := range namedPictures(s) {
		file, there := s.Pictures[f.V]
		if !there {
			continue
		}
		fault, known := faults[f.V]
		if !known {
			fault = pictureFault(s.FS, file.Path)
			faults[f.V] = fault
		}
		if fault != "" {
			fs = append(fs, Finding{Pos: f.Pos, Message: fault, Advice: "Put a sound picture in its place, under a name with the right ending."})
		}
	}
	return fs
}

// pictureFault says what is wrong with a picture; nothing if it is sound.
func pictureFault(fsys fs.FS, file string) string {
	data, err := fs.ReadFile(fsys, file)
	if err != nil {
		return "the picture cannot be read: " + err.Error()
	}
	if _, err := content.ReadImage(file, data); err != nil {
		return "the picture " + err.Error()
	}
	return ""
}

// namedPictures are the places where pictures are named outside a body.
func namedPictures(s *content.Site) []content.Field[string] {
	var named []content.Field[string]
	add := func(p content.Field[string]) {
		if p.Set() {
			named = append(named, p)
		}
	}
	for _, r := range s.Recipes {
		if r.Picture != nil {
			add(r.Picture.File)
		}
		for _, p := range r.Pictures {
			add(p.File)
		}
	}
	for _, p := range s.Pages {
		if p.Picture != nil {
			add(p.Picture.File)
		}
	}
	if s.Settings.Programme != nil {
		add(s.Settings.Programme.Picture)
	}
	return named
}
