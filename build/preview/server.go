package preview

import (
	"bytes"
	"io"
	"net/http"
	"net/url"
	"path"
	"strings"
	"time"

	"stillroom/build"
)

// Handler answers browsers. hosts says who may ask.
func (p *Preview) Handler(hosts Hosts) http.Handler {
	return guarded(hosts, http.HandlerFunc(p.serve))
}

func (p *Preview) serve(w http.ResponseWriter, r *http.Request) {
	s, address := p.now.Load(), r.URL.Path
	name, isOwn := strings.CutPrefix(address, own)
	switch {
	case isOwn:
		p.serveOwn(w, r, name)
	case !strings.HasPrefix(address, "/"):
		http.NotFound(w, r)
	case isPage(address):
		s.servePage(w, r, address)
	case s.hasFolder(address):
		http.Redirect(w, r, (&url.URL{Path: address + "/"}).String(), http.StatusFound)
	default:
		s.serveFile(w, r, address)
	}
}

func isPage(address string) bool {
	return strings.HasSuffix(address, "/") || path.Ext(address) == ".html" || path.Ext(address) == ".htm"
}

// hasFolder reports whether an address lacks only the stroke at its end.
func (s *state) hasFolder(address string) bool {
	if path.Ext(address) != "" {
		return false
	}
	_, ok, err := s.find(address[1:] + "/")
	return ok || err != nil || s.unreadAt(address+"/") != nil
}

func (s *state) servePage(w http.ResponseWriter, r *http.Request, address string) {
	v := s.view(address, r.URL.Query().Has("last"))
	w.Header().Set("Content-Type", "text/html; charset=utf-8")
	if v.status != http.StatusOK {
		w.WriteHeader(v.status)
	}
	if r.Method != http.MethodHead {
		w.Write(v.served())
	}
}

// serveFile gives what is no page, whole or in parts: RFC 9110, 14.
func (s *state) serveFile(w http.ResponseWriter, r *http.Request, address string) {
	proof, ok, err := s.find(address[1:])
	if err != nil {
		http.Error(w, err.Error(), http.StatusInternalServerError)
		return
	}
	if !ok {
		s.servePage(w, r, address)
		return
	}
	body, done, err := opened(proof.File)
	if err != nil {
		http.Error(w, "This file cannot be read: "+err.Error(), http.StatusInternalServerError)
		return
	}
	defer done()
	w.Header().Set("Content-Type", typeOf(address))
	http.ServeContent(w, r, "", time.Time{}, body)
}

// opened gives the bytes of a file to read from any place.
func opened(f build.File) (body io.ReadSeeker, done func(), err error) {
	if f.Open == nil {
		return bytes.NewReader(f.Data), func() {}, nil
	}
	r, err := f.Open()
	if err != nil {
		return nil, nil, err
	}
	if s, ok := r.(io.ReadSeeker); ok {
		return s, func() { r.Close() }, nil
	}
	defer r.Close()
	data, err := io.ReadAll(r)
	return bytes.NewReader(data), func() {}, err
}

// types are the media types by the endings of names, as a host has to send them.
var types = map[string]string{
	".css": "text/css; charset=utf-8", ".js": "text/javascript; charset=utf-8", ".txt": "text/plain; charset=utf-8",
	".json": "application/json", ".xml": "application/xml", ".atom": "application/atom+xml", ".webmanifest": "application/manifest+json",
	".svg": "image/svg+xml", ".png": "image/png", ".jpg": "image/jpeg", ".jpeg": "image/jpeg", ".webp": "image/webp", ".avif": "image/avif",
	".ico": "image/x-icon", ".woff2": "font/woff2", ".pdf": "application/pdf",
	".vtt": "text/vtt; charset=utf-8", ".srt": "application/x-subrip",
	".mp3": "audio/mpeg", ".m4a": "audio/mp4", ".ogg": "audio/ogg",
}

// typesOf are the media types of the addresses whose ending does not tell.
var typesOf = map[string]string{
	"/recipes.json": "application/feed+json", "/programme.xml": "application/rss+xml", "chapters.json": "application/json+chapters",
	"recipe.json": "application/ld+json",
}

func typeOf(address string) string {
	for _, name := range []string{address, path.Base(address)} {
		if t, ok := typesOf[name]; ok {
			return t
		}
	}
	if t, ok := types[strings.ToLower(path.Ext(address))]; ok {
		return t
	}
	return "application/octet-stream"
}
