package preview

import (
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
	body, err := proof.Open()
	if err != nil {
		http.Error(w, "This file cannot be read: "+err.Error(), http.StatusInternalServerError)
		return
	}
	defer body.Close()
	w.Header().Set("Content-Type", build.MediaType(address))
	http.ServeContent(w, r, "", time.Time{}, body)
}
