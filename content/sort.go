package content

import (
	"path"
	"strings"
)

// A Sort is what a file is to a site.
type Sort int

// The sorts of files. Read takes every file for what SortOf says of it.
const (
	NoPart      Sort = iota // elsewhere, hidden, or something that an editor keeps beside the text
	TheSettings             // content/site.yaml
	ARecipe
	AnEpisode
	APage
	Misnamed // a text that is not read because its name does not end in .md
	APicture
	AMedium // a recording or a transcript
)

// SortOf tells the sort of a file by its path relative to the site's folder.
func SortOf(file string) Sort {
	below, ok := strings.CutPrefix(file, "content/")
	if !ok {
		return NoPart
	}
	if file == settingsFile {
		return TheSettings
	}
	folder, rest, _ := strings.Cut(below, "/")
	for name := range strings.SplitSeq(rest, "/") {
		if name == "" || isForeign(name) {
			return NoPart
		}
	}
	switch folder {
	case "recipes":
		return sortOfText(rest, ARecipe)
	case "episodes":
		if isMedia(rest) {
			return AMedium
		}
		return sortOfText(rest, AnEpisode)
	case "pages":
		return sortOfText(rest, APage)
	case "pictures":
		return APicture
	}
	return NoPart
}

func sortOfText(name string, text Sort) Sort {
	switch ext := path.Ext(name); {
	case ext == ".md":
		return text
	case strings.EqualFold(ext, ".md"), strings.EqualFold(ext, ".markdown"):
		return Misnamed
	}
	return NoPart
}

// MisnamedFault reports a file of the sort Misnamed.
func MisnamedFault(file string) Fault {
	name := strings.TrimSuffix(path.Base(file), path.Ext(file))
	return Fault{
		Pos: Pos{File: file}, Kind: BadFileName, Message: "only files whose names end in .md are read",
		Advice: "name it " + name + ".md",
	}
}

// NoSettings gives what Read makes of a site without content/site.yaml.
func NoSettings() (Settings, []Fault) {
	s, _ := ReadSettings(settingsFile, nil)
	return s, []Fault{{
		Pos: Pos{File: settingsFile}, Kind: MissingKey,
		Message: "there is no such file, and the site has no name", Advice: "write name: and what the site is called into it",
	}}
}
