package build

import (
	"encoding/json"
	"fmt"
	"strings"
	"unicode/utf8"
)

// A webManifest tells a browser what to write and to show where a reader puts
// the site on the first screen of a telephone.
// https://www.w3.org/TR/appmanifest/
type webManifest struct {
	ID          string         `json:"id"`
	Name        string         `json:"name"`
	ShortName   string         `json:"short_name,omitempty"`
	Description string         `json:"description,omitempty"`
	Lang        string         `json:"lang"`
	StartURL    string         `json:"start_url"`
	Scope       string         `json:"scope"`
	Display     string         `json:"display"`
	ThemeColor  string         `json:"theme_color"`
	Background  string         `json:"background_color"`
	Icons       []manifestIcon `json:"icons"`
}

type manifestIcon struct {
	Src     string `json:"src"`
	Sizes   string `json:"sizes"`
	Type    string `json:"type"`
	Purpose string `json:"purpose,omitempty"`
}

// manifestIcons are the pictures of the theme's mark.
var manifestIcons = []struct {
	name string
	manifestIcon
}{
	{"icon-192.png", manifestIcon{Sizes: "192x192", Type: "image/png"}},
	{"icon-512.png", manifestIcon{Sizes: "512x512", Type: "image/png"}},
	{"icon-maskable.png", manifestIcon{Sizes: "512x512", Type: "image/png", Purpose: "maskable"}},
	{"icon.svg", manifestIcon{Sizes: "any", Type: "image/svg+xml"}},
}

// manifest is /manifest.webmanifest: how it looks is the theme's, the rest is
// the site's.
func (e *edition) manifest() ([]File, error) {
	var m webManifest
	if look := e.assets.own["manifest.json"]; len(look) > 0 {
		if err := json.Unmarshal(look, &m); err != nil {
			return nil, fmt.Errorf("read files/manifest.json of the theme: %w", err)
		}
	}
	m.ID, m.StartURL, m.Scope = homeAddress, homeAddress, homeAddress
	m.Name, m.Description, m.Lang = e.settings.Name.V, e.settings.Tagline.V, e.language()
	if m.ShortName == "" {
		m.ShortName = shortName(m.Name)
	}
	m.Icons = []manifestIcon{}
	for _, icon := range manifestIcons {
		if icon.Src = e.assets.URL(icon.name); icon.Src != "" {
			m.Icons = append(m.Icons, icon.manifestIcon)
		}
	}
	return []File{NewFile("manifest.webmanifest", append(mustJSON(m), '\n'))}, nil
}

// underIcon is how many letters there is room for under an icon: common
// practice, no source.
const underIcon = 12

// shortName gives the first words of a name that there is room for under an
// icon; empty if there is none for the first.
func shortName(name string) string {
	short := ""
	for _, word := range strings.Fields(name) {
		longer := strings.TrimSpace(short + " " + word)
		if utf8.RuneCountInString(longer) > underIcon {
			break
		}
		short = longer
	}
	return strings.TrimRight(short, " &+,·-")
}
