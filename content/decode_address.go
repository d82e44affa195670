package content

import (
	"cmp"
	"io/fs"
	"net/url"
	"path"
	"strings"
)

// fileName reads the name of a file in or below a folder of the site.
func (d *decoder) fileName(v value) Field[string] {
	return as(d, v, func(s string) (string, error) {
		if !fs.ValidPath(s) || s == "." || strings.Contains(s, `\`) {
			return "", amiss(s, "is no file of this folder", "write its name, with / between folders")
		}
		return s, nil
	})
}

// publishedName reads the name of a file that is published under that name.
func (d *decoder) publishedName(v value) Field[string] {
	f := d.fileName(v)
	if wrong := unportable(path.Base(f.V)); f.Set() && wrong != "" {
		d.bad(f.Pos, amiss(f.V, wrong, "name the file anew: its name becomes its address"))
		return Field[string]{}
	}
	return f
}

// path reads an old path of this page on the same site.
func (d *decoder) path(v value) Field[string] { return as(d, v, ParseFormerPath) }

func (d *decoder) recipeSlug(v value) Field[string] {
	return as(d, v, func(s string) (string, error) {
		if isSlug(s) {
			return s, nil
		}
		return "", amiss(s, "is not the name of a recipe's file", "write "+cmp.Or(Slug(path.Base(strings.TrimSuffix(s, ".md"))), "it as damson-jam"))
	})
}

// address reads the address of a page or a file on the web.
func (d *decoder) address(v value) Field[string] { return as(d, v, parseAddress) }

func parseAddress(s string) (string, error) {
	u, err := url.Parse(s)
	if err != nil || u.Host == "" || u.Scheme != "https" && u.Scheme != "http" || u.User != nil || strings.ContainsAny(s, " \\") {
		return "", amiss(s, "is no address", "write all of it, such as https://example.org/page")
	}
	return s, nil
}

// parseSiteAddress reads the address of a site, and gives it without a stroke
// at its end.
func parseSiteAddress(s string) (string, error) {
	u, err := url.Parse(s)
	switch {
	case err == nil && u.Scheme == "http" && u.Host != "":
		return "", amiss(s, "is not safe for readers", "write https:// in place of http://")
	case err != nil || u.Scheme != "https" || u.Hostname() == "" || u.User != nil || strings.ContainsAny(s, " \\?#"):
		return "", amiss(s, "is no address of a site", "write all of it, such as https://example.org")
	case strings.Trim(u.Path, "/") != "":
		return "", amiss(s, "lies below the root of its host, where pages that link to /recipes/ would not find each other", "write https://"+u.Host)
	}
	return strings.TrimRight(s, "/"), nil
}
