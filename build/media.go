package build

import (
	"io"
	"net/url"
	"path"

	"stillroom/content"
)

// Media gives the address of a recording or a transcript by its path in the
// site's folder.
func (a *Assets) Media(file string) (src string, ok bool) {
	src, ok = a.media[file]
	return src, ok
}

// mediaPath is where a file lies that an episode names, in the site's folder.
func mediaPath(ep *content.Episode, file string) string {
	return path.Join(path.Dir(ep.File), file)
}

// addMedia publishes the recording and the transcript of an episode beside its
// show notes, under the names that they have. Programs keep such an address for
// ever, so it holds no hash; a recording that is cut anew gets a new name from
// its author.
func (a *Assets) addMedia(site *content.Site, ep *content.Episode) {
	for _, name := range []string{ep.Audio.File.V, ep.Transcript.V} {
		file := mediaPath(ep, name)
		if _, known := site.Media[file]; name == "" || !known || a.media[file] != "" {
			continue
		}
		address := episodeAddress(ep) + path.Base(name)
		a.media[file] = (&url.URL{Path: address}).EscapedPath()
		a.files = append(a.files, File{address[1:], func() (io.ReadSeekCloser, error) { return openIn(site.FS, file) }})
	}
}
