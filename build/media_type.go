package build

import (
	"path"
	"strings"
)

// An endingType is what a host has to call the files whose names end so.
type endingType struct{ ending, name string }

// typesByEnding are as registered with IANA, except for the icon's, which browsers
// know better by its old name. https://www.iana.org/assignments/media-types
var typesByEnding = []endingType{
	{".html", "text/html; charset=utf-8"},
	{".htm", "text/html; charset=utf-8"},
	{".css", "text/css; charset=utf-8"},
	{".js", "text/javascript; charset=utf-8"},
	{".txt", "text/plain; charset=utf-8"},
	{".json", "application/json"},
	{".xml", "application/xml"},
	{".atom", "application/atom+xml"},
	{".webmanifest", "application/manifest+json"},
	{".svg", "image/svg+xml"},
	{".png", "image/png"},
	{".jpg", "image/jpeg"},
	{".jpeg", "image/jpeg"},
	{".webp", "image/webp"},
	{".avif", "image/avif"},
	{".ico", "image/x-icon"},
	{".woff2", "font/woff2"},
	{".pdf", "application/pdf"},
	{".vtt", "text/vtt; charset=utf-8"},
	{".srt", "application/x-subrip"},
	{".mp3", "audio/mpeg"},
	{".m4a", "audio/mp4"},
	{".ogg", "audio/ogg"},
	{".oga", "audio/ogg"},
	{".opus", "audio/ogg"},

	// Names of the contract whose ending does not tell.
	{"/recipes.json", "application/feed+json"},
	{"/programme.xml", "application/rss+xml"},
	{"/chapters.json", "application/json+chapters"},
	{"/recipe.json", "application/ld+json"},
}

// MediaType gives the media type of a published file by its path or address.
func MediaType(p string) string {
	kind := "application/octet-stream"
	for _, t := range typesByEnding {
		if t.ending[0] == '/' && "/"+path.Base(p) == t.ending || strings.EqualFold(path.Ext(p), t.ending) {
			kind = t.name
		}
	}
	return kind
}
