package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"testing"
)

// The same content gives the same bytes wherever the clock stands, however many
// processors there are, wherever the site lies, and whether prints are made or
// kept from before.
func TestRepeatable(t *testing.T) {
	site, again := generate(t, 60), generate(t, 60)
	base := t.TempDir()
	first := filepath.Join(base, "first")
	publishInto(t, site, first)
	tests := []struct {
		name, site string
		env        []string
	}{
		{"east", site, []string{"TZ=Pacific/Kiritimati", "GOMAXPROCS=1"}},
		{"west", site, []string{"TZ=Pacific/Pago_Pago", "GOMAXPROCS=7", "XDG_CACHE_HOME=/nowhere/at-all"}},
		{"moved", again, []string{"LC_ALL=tr_TR.UTF-8", "LANG=tr_TR.UTF-8", "HOME=/nowhere"}},
	}
	for _, test := range tests {
		out := filepath.Join(base, test.name)
		cmd := exec.Command("stillroom", "publish", test.site, "--to", out, "--day", "2026-11-25")
		cmd.Env = append(os.Environ(), test.env...)
		if said, err := cmd.CombinedOutput(); err != nil {
			t.Fatalf("%s: %v\n%s", test.name, err, said)
		}
		if diff := difference(first, out); diff != "" {
			t.Errorf("%s: %s differs", test.name, diff)
		}
	}
}
