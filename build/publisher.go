package build

import (
	"net/url"
	"strings"

	"stillroom/validate"
)

// Sourced is a sentence or two, and who published it.
type Sourced struct {
	Says string
	By   Credit
}

// A Credit names a publication, and where it can be read, if anywhere.
type Credit struct {
	Name    string
	Address string // empty where there is none to follow
	Copy    string // the host of the address, if it is another's and not the publisher's
}

func sourced(says string, s validate.Source) Sourced {
	return Sourced{Says: typeset(says), By: credit(s)}
}

func credit(s validate.Source) Credit {
	if s.Address != "" && !isWeb(s.Address) {
		return Credit{Name: s.Title + ", " + s.Address}
	}
	c := Credit{Name: s.Title, Address: s.Address}
	if host := hostOf(s.Address); host != "" && !isPublisher(host) {
		c.Copy = strings.TrimPrefix(host, "www.")
	}
	return c
}

// hostOf gives the host of an address; empty if it has none.
func hostOf(address string) string {
	if rest, ok := strings.CutPrefix(address, "https://"); ok {
		if host, path, ok := strings.Cut(rest, "/"); ok && host != "" && !hasOdd(host) && !hasOdd(path) {
			return host // as most are, for which all of an address need not be parsed
		}
	}
	u, err := url.Parse(address)
	if err != nil {
		return ""
	}
	return u.Hostname()
}

// hasOdd reports whether a part of an address has a sign that may mean something
// else than itself.
func hasOdd(s string) bool {
	for i := range len(s) {
		if c := s[i]; !isWordByte(c) && c != '-' && c != '.' && c != '/' {
			return true
		}
	}
	return false
}

// publishers are the ends of hosts on which those who test processes publish:
// universities and governments, which alone are given a name in edu, gov and
// gc.ca, and the extension services' common sites.
var publishers = []string{".edu", ".gov", ".gc.ca", ".canada.ca", ".extension.org", ".preservingfoodathome.com"}

func isPublisher(host string) bool {
	for _, end := range publishers {
		if strings.HasSuffix("."+host, end) {
			return true
		}
	}
	return false
}
