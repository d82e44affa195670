package themes

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// TestContrast holds every pair of text and ground to WCAG 2.2, 1.4.3: 4.5 to
// 1, in both schemes. The figures behind a fill's name are large text, and jars
// and swatches are told apart by their names: 1.4.11 asks nothing of them.
func TestContrast(t *testing.T) {
	text, err := builtIn.ReadFile("enamel/files/style.css")
	if err != nil {
		t.Fatal(err)
	}
	light, night := schemes(t, string(text))
	for scheme, rules := range map[string]map[string]map[string]string{"light": light, "dark": night} {
		root := rules[":root"]
		for _, pair := range [][2]string{
			{"ink", "enamel"}, {"soft", "enamel"}, {"cobalt", "enamel"}, {"rule", "enamel"},
			{"ink", "paper"}, {"soft", "paper"}, {"cobalt", "paper"}, {"rule", "paper"}, {"ink", "mark"},
		} {
			check(t, scheme, pair[0]+" on "+pair[1], root[pair[0]], root[pair[1]])
		}
		check(t, scheme, "the foot's text", "#f7f9f8", root["deep-cobalt"])
		fills := 0
		for selector, c := range rules {
			if !strings.HasPrefix(selector, ".c-") {
				continue
			}
			fills++
			check(t, scheme, selector+": text on the fill", c["on"], c["fill"])
			check(t, scheme, selector+": its own colour as text", c["deep"], root["enamel"])
		}
		if fills < 10 {
			t.Errorf("%s: found %d fills", scheme, fills)
		}
	}
}

func check(t *testing.T, scheme, what, fore, back string) {
	t.Helper()
	if r := contrast(t, fore, back); r < 4.5 {
		t.Errorf("%s: %s: %s on %s is %.2f to 1, want 4.5", scheme, what, fore, back, r)
	}
}

var (
	rule     = regexp.MustCompile(`(:root|\.c-[a-z]+) \{([^}]*)\}`)
	property = regexp.MustCompile(`--([a-z-]+): (#[0-9a-f]+)`)
)

// schemes gives the custom properties of each selector, in light and in dark.
func schemes(t *testing.T, css string) (light, night map[string]map[string]string) {
	t.Helper()
	day, rest, ok := strings.Cut(css, "@media (prefers-color-scheme: dark)")
	if !ok {
		t.Fatal("the style has no dark scheme")
	}
	dark, _, _ := strings.Cut(rest, "@media")
	light, night = map[string]map[string]string{}, map[string]map[string]string{}
	read := func(into map[string]map[string]string, text string) {
		for _, m := range rule.FindAllStringSubmatch(text, -1) {
			if into[m[1]] == nil {
				into[m[1]] = map[string]string{}
			}
			for _, p := range property.FindAllStringSubmatch(m[2], -1) {
				into[m[1]][p[1]] = p[2]
			}
		}
	}
	read(light, day)
	read(night, day)
	read(night, dark)
	return light, night
}

// contrast is the ratio of WCAG 2.2. https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio
func contrast(t *testing.T, a, b string) float64 {
	la, lb := luminance(t, a), luminance(t, b)
	return (max(la, lb) + 0.05) / (min(la, lb) + 0.05)
}

func luminance(t *testing.T, hex string) float64 {
	t.Helper()
	h := strings.TrimPrefix(hex, "#")
	if len(h) == 3 {
		h = string([]byte{h[0], h[0], h[1], h[1], h[2], h[2]})
	}
	n, err := strconv.ParseUint(h, 16, 32)
	if err != nil || len(h) != 6 {
		t.Fatalf("%q is no colour", hex)
	}
	linear := func(c uint64) float64 {
		v := float64(c&255) / 255
		if v <= 0.04045 {
			return v / 12.92
		}
		return math.Pow((v+0.055)/1.055, 2.4)
	}
	return 0.2126*linear(n>>16) + 0.7152*linear(n>>8) + 0.0722*linear(n)
}
