package build

import (
	"encoding/json"
	"image/png"
	"strings"
	"testing"
)

// TestManifest holds it to what browsers ask for before they install a site:
// W3C Web Application Manifest (2026-08-13), and Chromium's name, icons of 192
// and 512 px, start_url and display.
func TestManifest(t *testing.T) {
	site := withFiles(t, "name: Bramley & Sloe\ntagline: Jars\nlanguage: en-GB\nauthor: Ada Sloe\n", nil)
	var m webManifest
	if err := json.Unmarshal([]byte(site["manifest.webmanifest"]), &m); err != nil {
		t.Fatal(err)
	}
	if m.Name != "Bramley & Sloe" || m.ShortName != "Bramley" || m.Description != "Jars" || m.Lang != "en-GB" ||
		m.ID != "/" || m.StartURL != "/" || m.Scope != "/" || m.Display != "minimal-ui" {
		t.Errorf("manifest %+v", m)
	}
	home := site["index.html"]
	for _, want := range []string{`<link rel="manifest" href="/manifest.webmanifest">`, `<meta name="theme-color" content="` + m.ThemeColor + `" media="(prefers-color-scheme: light)">`} {
		if !strings.Contains(home, want) {
			t.Errorf("the home page has no %s", want)
		}
	}
	sizes := map[string]int{}
	for _, icon := range m.Icons {
		data := site[icon.Src[1:]]
		if icon.Type != "image/png" {
			continue
		}
		img, err := png.DecodeConfig(strings.NewReader(data))
		if err != nil {
			t.Fatalf("%s: %v", icon.Src, err)
		}
		sizes[icon.Sizes+icon.Purpose] = img.Width
		if img.Width != img.Height {
			t.Errorf("%s is no square", icon.Src)
		}
	}
	if sizes["192x192"] != 192 || sizes["512x512"] != 512 || sizes["512x512maskable"] != 512 {
		t.Errorf("icons %v", sizes)
	}
}

func TestManifestOfTheme(t *testing.T) {
	site := withFiles(t, "name: Larder\nauthor: Ada Sloe\n", map[string]string{
		"manifest.json": `{"short_name": "Jars", "display": "standalone", "name": "not this"}`,
		"icon.svg":      `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 8 8"><circle cx="4" cy="4" r="4"/></svg>`,
	})
	var m webManifest
	if err := json.Unmarshal([]byte(site["manifest.webmanifest"]), &m); err != nil {
		t.Fatal(err)
	}
	if m.ShortName != "Jars" || m.Display != "standalone" || m.Name != "Larder" || len(m.Icons) != 1 {
		t.Errorf("manifest %+v", m)
	}
}

func TestShortName(t *testing.T) {
	for _, tt := range []struct{ name, want string }{
		{"Larder", "Larder"},
		{"Hollow Lane Larder", "Hollow Lane"},
		{"The Gooseberry", "The"},
		{"Twelveletter", "Twelveletter"},
		{"Thirteenlette", ""},
	} {
		if got := shortName(tt.name); got != tt.want {
			t.Errorf("shortName(%q) = %q, want %q", tt.name, got, tt.want)
		}
	}
}
