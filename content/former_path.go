package content

import (
	"io/fs"
	"net/url"
	"path"
	"strings"
	"unicode/utf8"
)

// FormerPath is where a host looks for an old path, from the root of the site: a
// page if the path names one, else the page of a folder. A path is written as in
// an address, with %20.
func FormerPath(old string) string {
	p := strings.Trim(path.Clean(unescaped(old)), "/")
	if ext := strings.ToLower(path.Ext(p)); ext == ".html" || ext == ".htm" {
		return p
	}
	return p + "/index.html"
}

// unescaped gives a path as it lies on disk, or as it is written if it holds a %
// that means nothing.
func unescaped(old string) string {
	if plain, err := url.PathUnescape(old); err == nil {
		return plain
	}
	return old
}

// ParseFormerPath takes an old path that a folder of pages can answer to on every
// system. The error is a clause that tells its author what is wrong.
func ParseFormerPath(s string) (string, error) {
	switch {
	case !strings.HasPrefix(s, "/") || s == "/":
		return "", amiss(s, "is no old path", "write it from the stroke after the site's name, such as /2019/08/damson-jam/")
	case strings.ContainsAny(s, "?#"):
		return "", amiss(s, "holds a question mark or a hash, which no folder of pages can answer to", "leave it out")
	case strings.ContainsAny(s, "\\ ") || !fs.ValidPath(strings.TrimSuffix(s[1:], "/")):
		return "", amiss(s, "holds .., an empty part, a space or a backslash", "write it as it stood in the old address")
	}
	plain := unescaped(s)
	switch {
	case !utf8.ValidString(plain) || strings.ContainsFunc(plain, isUnwritten):
		return "", amiss(s, "holds a character that is not seen", "leave it out")
	case strings.Count(plain, "/") > strings.Count(s, "/") || !fs.ValidPath(strings.TrimSuffix(plain[1:], "/")):
		return "", amiss(s, "holds a stroke or .. that is written with %", "write it as it stood in the old address")
	}
	for part := range strings.SplitSeq(plain, "/") {
		if wrong := unportable(part); wrong != "" {
			return "", amiss(s, wrong, "leave it out, and have your host send its readers on")
		}
	}
	return s, nil
}
