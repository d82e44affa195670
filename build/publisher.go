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
	if u, err := url.Parse(s.Address); err == nil && u.Host != "" && !isPublisher(u.Hostname()) {
		c.Copy = strings.TrimPrefix(u.Hostname(), "www.")
	}
	return c
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
