package validate

import (
	"fmt"
	"path"
	"strings"

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
not be the address of a page that exists, nor be claimed twice. Capitals make no
other address: many disks take /Old/ and /old/ for one folder.`,
	Source:    contract,
	CheckSite: checkAddressTaken,
}

// ownFiles are what the site makes for itself beside the pages of its contents.
var ownFiles = []string{
	"index.html", "recipes/index.html", "show-notes/index.html", "produce/index.html", "season/index.html", "keeping/index.html",
	"search/index.html", "assets/index.html", "404.html", "offline.html", "offline.js", "manifest.webmanifest", "robots.txt", "sitemap.xml",
	"recipes.atom", "recipes.json", "programme.xml", "headers.json", "redirects.json",
}

func checkAddressTaken(s *content.Site) []Finding {
	claims := claims{first: map[string]content.Pos{}, told: map[string]bool{}}
	for _, f := range ownFiles {
		claims.first[f] = content.Pos{}
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
			claims.claim(f.V, f.Pos, r.File)
		}
	}
	return claims.findings
}

// claims remembers by the path of a file, in small letters, who was first there,
// and whether that was told.
type claims struct {
	first    map[string]content.Pos
	told     map[string]bool
	findings []Finding
}

func (c *claims) claim(address string, pos content.Pos, file string) {
	if pos.IsZero() {
		pos = content.Pos{File: file, Line: 1, Col: 1}
	}
	file = strings.ToLower(content.FormerPath(address))
	for folder := file; folder != "."; folder = path.Dir(folder) {
		if _, taken := c.first[folder]; taken {
			file = folder // what is a file can be no folder
		}
	}
	first, taken := c.first[file]
	switch {
	case !taken:
		c.first[file] = pos
	case first.IsZero():
		c.findings = append(c.findings, Finding{
			Pos:     pos,
			Message: fmt.Sprintf("the address %s is the site's own", address),
			Advice:  "Give the file another name.",
		})
	default:
		c.findings = append(c.findings, sameAddress(address, pos, first))
		if !c.told[file] {
			c.told[file] = true
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
