package validate

import (
	"fmt"

	"stillroom/content"
)

// addressTaken reports two files that claim one address on the site.
var addressTaken = &Rule{
	ID:       "address-taken",
	Severity: Error,
	Summary:  "two files that claim one address",
	Doc: `A recipe's address is made from its file name alone, whatever folder it lies in,
so two recipes of one name would be one page. A page may not take an address
that the site uses itself, such as /recipes/; and a path under "formerly:" may
not be the address of a page that exists, nor be claimed twice.`,
	Source:    contract,
	CheckSite: checkAddressTaken,
}

// ownPages are the addresses that the site makes for itself.
var ownPages = []string{
	"/", "/recipes/", "/show-notes/", "/produce/", "/season/", "/keeping/", "/search/", "/assets/",
}

func checkAddressTaken(s *content.Site) []Finding {
	claims := claims{first: map[string]content.Pos{}, told: map[string]bool{}}
	for _, a := range ownPages {
		claims.first[a] = content.Pos{}
	}
	for _, r := range s.Recipes {
		claims.claim("/recipes/"+r.Slug+"/", r.Name.Pos, r.File)
	}
	for _, e := range s.Episodes {
		claims.claim("/show-notes/"+e.Slug+"/", e.Name.Pos, e.File)
	}
	for _, p := range s.Pages {
		claims.claim("/"+p.Slug+"/", p.Name.Pos, p.File)
	}
	for _, r := range s.Recipes {
		for _, f := range r.Formerly {
			claims.claim(formerPath(f.V), f.Pos, r.File)
		}
	}
	return claims.findings
}

// claims remembers who was first at each address, and whether that was told.
type claims struct {
	first    map[string]content.Pos
	told     map[string]bool
	findings []Finding
}

func (c *claims) claim(address string, pos content.Pos, file string) {
	if pos.IsZero() {
		pos = content.Pos{File: file, Line: 1, Col: 1}
	}
	first, taken := c.first[address]
	switch {
	case !taken:
		c.first[address] = pos
	case first.IsZero():
		c.findings = append(c.findings, Finding{
			Pos:     pos,
			Message: fmt.Sprintf("the address %s is the site's own", address),
			Advice:  "Give the file another name.",
		})
	default:
		c.findings = append(c.findings, sameAddress(address, pos, first))
		if !c.told[address] {
			c.told[address] = true
			c.findings = append(c.findings, sameAddress(address, first, pos))
		}
	}
}

func sameAddress(address string, pos, other content.Pos) Finding {
	return Finding{
		Pos:     pos,
		Message: fmt.Sprintf("the address %s is claimed twice", address),
		Advice:  "Give one of the two files another name.",
		Notes:   []Note{{Pos: other, Message: "claimed here too"}},
	}
}

// formerPath gives an old path the form of an address: with a stroke at its
// end, unless it names a file.
func formerPath(p string) string {
	last := p[len(p)-1]
	for i := len(p) - 1; i >= 0 && p[i] != '/'; i-- {
		if p[i] == '.' {
			return p
		}
	}
	if last == '/' {
		return p
	}
	return p + "/"
}
