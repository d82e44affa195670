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
	faults := make(map[content.File]string) // so that each picture is read once
	return brokenPictures(s, func(s *content.Site, f content.File) string {
		fault, known := faults[f]
		if !known {
			fault = pictureFault(s, f)
			faults[f] = fault
		}
		return fault
	})
}

// brokenPictures reports the pictures in which there is a fault.
func brokenPictures(s *content.Site, faultOf func(*content.Site, content.File) string) []Finding {
	var fs []Finding
	for _, f := range namedPictures(s) {
		file, there := s.Pictures[f.V]
		if !there {
			continue
		}
		if fault := faultOf(s, file); fault != "" {
			fs = append(fs, Finding{Pos: f.Pos, Message: fault, Advice: "Put a sound picture in its place, under a name with the right ending."})
		}
	}
	return fs
}

// pictureFault says what is wrong with a picture; nothing if it is sound.
func pictureFault(s *content.Site, f content.File) string {
	data, err := fs.ReadFile(s.FS, f.Path)
	if err != nil {
		return "the picture cannot be read: " + err.Error()
	}
	if _, err := content.ReadImage(f.Path, data); err != nil {
		return "the picture " + err.Error()
	}
	return ""
}

// namedPictures are the places where the site's own pictures are named.
func namedPictures(s *content.Site) []content.Field[string] {
	var named []content.Field[string]
	for _, r := range s.Recipes {
		named = append(named, pictureFiles(r.Picture, r.Pictures)...)
		named = append(named, r.Body.Pictures()...)
	}
	for _, e := range s.Episodes {
		named = append(named, e.Body.Pictures()...)
	}
	for _, p := range s.Pages {
		named = append(named, pictureFiles(p.Picture, nil)...)
		named = append(named, p.Body.Pictures()...)
	}
	if s.Settings.Programme != nil && s.Settings.Programme.Picture.Set() {
		named = append(named, s.Settings.Programme.Picture)
	}
	return named
}

// pictureFiles are the files of a main picture, which may be nil, and others.
func pictureFiles(main *content.Picture, others []content.Picture) []content.Field[string] {
	var files []content.Field[string]
	if main != nil {
		others = append([]content.Picture{*main}, others...)
	}
	for _, p := range others {
		if p.File.Set() {
			files = append(files, p.File)
		}
	}
	return files
}
