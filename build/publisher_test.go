package build

import (
	"net/url"
	"testing"
)

// An address whose host is cut from it has the one that parsing finds.
func FuzzHostOf(f *testing.F) {
	for _, s := range []string{"", "https://www.example.org/a/b.pdf", "https://example.org", "https://a.example:80/x", "https://u@example.org/", "https:///x", "https://a%/x", "https://a_b-c/x?y#z", "http://example.edu/"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		want := ""
		if u, err := url.Parse(s); err == nil {
			want = u.Hostname()
		}
		if got := hostOf(s); got != want {
			t.Errorf("hostOf(%q) = %q, want %q", s, got, want)
		}
	})
}
