package build

import "net/url"

// policy lets a page load what is its own and, if its recording lies
// elsewhere, that host's. https://www.w3.org/TR/CSP3/
func policy(audio string) string {
	media := "'self'"
	if u, err := url.Parse(audio); err == nil && u.Host != "" {
		media += " " + u.Scheme + "://" + u.Host
	}
	return "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self'; " +
		"media-src " + media + "; connect-src 'self'; manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'"
}
