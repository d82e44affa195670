package preview

import (
	"net"
	"net/http"
	"net/netip"
	"net/url"
	"strings"
)

// Hosts are the names under which a preview may be asked for. A page of another
// site can have a browser ask a server on the author's own machine, under a
// name of that site's choice (DNS rebinding): so a name that the preview does
// not know gets no answer. A number is no name, and cannot be had that way.
type Hosts struct {
	Names []string // besides localhost
	Open  bool     // whether other machines may ask
}

func (h Hosts) allow(host string) bool {
	name := host
	if n, _, err := net.SplitHostPort(host); err == nil {
		name = n
	}
	name = strings.ToLower(strings.TrimSuffix(strings.Trim(name, "[]"), "."))
	if name == "localhost" || strings.HasSuffix(name, ".localhost") {
		return true
	}
	if ip, err := netip.ParseAddr(name); err == nil {
		return h.Open || ip.IsLoopback()
	}
	for _, n := range h.Names {
		if strings.EqualFold(n, name) {
			return true
		}
	}
	return false
}

// policy is that of every answer. What a page itself allows less of stays
// forbidden. https://www.w3.org/TR/CSP3/
const policy = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self'; " +
	"media-src 'self' https: http:; connect-src 'self'; manifest-src 'self'; worker-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'"

// guarded answers only those who may ask, and lets nothing run that is not the
// preview's own.
func guarded(hosts Hosts, next http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		h := w.Header()
		h.Set("Content-Security-Policy", policy)
		h.Set("X-Content-Type-Options", "nosniff")
		h.Set("Referrer-Policy", "no-referrer")
		h.Set("Cross-Origin-Resource-Policy", "same-origin")
		h.Set("Cross-Origin-Opener-Policy", "same-origin")
		h.Set("Cache-Control", "no-store")
		switch {
		case !hosts.allow(r.Host):
			http.Error(w, "This preview does not answer to the name "+r.Host+".", http.StatusMisdirectedRequest)
		case r.Method != http.MethodGet && r.Method != http.MethodHead:
			h.Set("Allow", "GET, HEAD")
			http.Error(w, "A preview is only looked at.", http.StatusMethodNotAllowed)
		case !sameOrigin(r):
			http.Error(w, "This preview answers to its own pages only.", http.StatusForbidden)
		default:
			next.ServeHTTP(w, r)
		}
	})
}

// sameOrigin reports whether a request comes from the preview's own pages, or
// from somebody who opens one. https://www.w3.org/TR/fetch-metadata/
func sameOrigin(r *http.Request) bool {
	if origin := r.Header.Get("Origin"); origin != "" {
		u, err := url.Parse(origin)
		if err != nil || !strings.EqualFold(u.Host, r.Host) {
			return false
		}
	}
	switch r.Header.Get("Sec-Fetch-Site") {
	case "cross-site", "same-site":
		return r.Header.Get("Sec-Fetch-Mode") == "navigate" && r.Header.Get("Sec-Fetch-Dest") == "document"
	}
	return true
}
