package main

import (
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

const home = "index.html"

// vnu is done before Java's better compiler has paid for itself. The plainer code of the other needs more room to recur in.
var vnu = []string{"java", "-XX:TieredStopAtLevel=1", "-Xss8m", "-jar", filepath.Join(tools, "node_modules/vnu-jar/build/dist/vnu.jar"), "--stdout", "--asciiquotes", "--format", "gnu"}

// pageCheckers judge what a reader's browser is given.
var pageCheckers = []outsider{
	{
		name:     "html",
		source:   "HTML Living Standard; by the Nu Html Checker, warnings too",
		programs: []string{"java"},
		// Two warnings are not heeded: that the policy would block structured data, which is no script; and that
		// role=list on a list says nothing new, which it does where a list without bullets is no list to VoiceOver.
		command: func(s site) []string {
			heeded := []string{"--Werror", "--filterpattern", ".*Content Security Policy.*|The .list. role is unnecessary.*"}
			return slices.Concat(vnu, heeded, []string{"--skip-non-html", "--also-check-svg"}, s.pages)
		},
		damages: []damage{
			{"a list within a paragraph", insert(home, "<p><ul><li>plums</li></ul></p>"), `No "p" element in scope`},
			{"a picture without words for it", insert(home, `<img src="/x.png" width="1" height="1">`), `must have an "alt" attribute`},
			{"a paragraph within a list", insert("recipes/*/index.html", "<ul><p>plums</p></ul>"), `not allowed as child of element "ul"`},
			{"a page without language", replace(home, "lang=", "data-lang="), `Consider adding a "lang" attribute`},
		},
	},
	{
		name:   "html, second opinion",
		source: "HTML Living Standard, WCAG 2.2; by html-validate",
		command: func(s site) []string {
			cli := filepath.Join(tools, "node_modules/html-validate/bin/html-validate.mjs")
			return append([]string{"node", cli, "--config", filepath.Join(tools, "htmlvalidate.json"), "--formatter", "text", "--ext", "html"}, s.pages...)
		},
		damages: []damage{
			{"a field without label", insert(home, `<input type="text">`), `\[input-missing-label\]`},
			{"an id used twice", insert("recipes/*/index.html", `<p id="x">1</p><p id="x">2</p>`), `\[no-dup-id\]`},
		},
	},
	{
		name:     "css",
		source:   "CSS, the W3C's CSS validator; by the Nu Html Checker",
		programs: []string{"java"},
		command: func(s site) []string {
			args := append(vnu, "--css")
			for _, name := range s.glob("assets/*.css") {
				args = append(args, filepath.Join(s.dir, name))
			}
			return args
		},
		damages: []damage{
			{"a misspelt property", add("assets/*.css", "p{colour:red}"), "colour"},
			{"a paper size that is none", add("assets/*.css", "@page{size:A6}"), "size"},
		},
	},
	{
		name:     "accessibility",
		source:   "WCAG 2.2 A and AA; by axe-core in Chromium, light and dark, phone and desk",
		programs: []string{"chromium-headless-shell"},
		command:  func(s site) []string { return script("axe.mjs", append([]string{s.dir}, s.kinds...)...) },
		damages: []damage{
			{"a button without name", insert(home, `<button type="button"></button>`), "button-name"},
			{"faint text in the dark", add("assets/*.css", "@media (prefers-color-scheme:dark){main p{color:#444!important;background:#222!important}}"), `\(dark 390 px, dark 1280 px\): color-contrast`},
			{"links too close on a phone", all(
				add("assets/*.css", "@media (max-width:400px){.near a{display:inline-block;width:9px;height:9px;overflow:hidden}}"),
				insert(home, `<div class="near"><a href="/">a</a><a href="/recipes/">b</a></div>`)), `\(light 390 px, dark 390 px\): target-size`},
		},
	},
	{
		name:     "reader",
		source:   "WCAG 2.2, CSP level 3, Core Web Vitals; in Chromium at 320 px",
		programs: []string{"chromium-headless-shell"},
		command:  func(s site) []string { return script("reader.mjs", append([]string{s.dir}, s.kinds...)...) },
		damages: []damage{
			{"a page wider than a phone", add("assets/*.css", "main{min-width:700px}"), "scrolls sideways at 320 px"},
			{"words that cannot be spaced out", all(
				add("assets/*.css", ".tight{font:10px monospace;letter-spacing:0;white-space:nowrap}"),
				insert(home, `<p class="tight">`+strings.Repeat("w", 45)+`</p>`)), "scrolls sideways with wide text spacing"},
			{"a table of times cut off", insert(home, `<section class="wide" aria-label="Pints" tabindex="0"><table class="scale"><caption>x</caption><tr><th scope="col">`+strings.Repeat("w", 60)+`</th></tr></table></section>`), "a table of times is cut off: Pints"},
			{"an inline style", insert(home, `<p style="color:red">x</p>`), "is refused by its own security policy: style-src"},
			{"a table without heads", insert(home, "<table><tr><td>1</td></tr></table>"), "table without heads or caption"},
			{"a picture without size", insert(home, `<img src="/favicon.ico" alt="">`), "picture without size"},
			{"a tiny button", all(
				add("assets/*.css", "button.tiny{all:unset;display:block;width:9px;height:9px;min-height:0;min-width:0;padding:0}"),
				insert(home, `<button class="tiny" type="button">x</button>`)), "control under 24 px"},
			{"a page that jumps", add("assets/scheme.*.js", ";setTimeout(() => document.querySelector('main').insertAdjacentHTML('beforebegin', '<p>late</p>'.repeat(6)), 500)"), "shifts while it loads"},
			{"two canonical links", replace(home, "</head>", `<link rel="canonical" href="https://example.com/"></head>`), "canonical links are not one: 2"},
		},
	},
	{
		name:    "security policy",
		source:  "CSP level 3; by csp_evaluator",
		command: func(s site) []string { return script("csp.mjs", s.dir) },
		damages: []damage{
			{"inline scripts allowed", replace(home, "script-src ", "script-src 'unsafe-inline' "), "unsafe-inline"},
			{"a page without policy", replace(home, "Content-Security-Policy", "X-None"), "/: no policy"},
		},
	},
	{
		name:    "links",
		source:  "HTML Living Standard, URLs and fragments; by linkinator",
		command: func(s site) []string { return script("links.mjs", append([]string{s.dir, s.address}, s.linking...)...) },
		damages: []damage{
			{"a page that is not there", insert(home, `<a href="/nowhere/">x</a>`), "404 /nowhere/"},
			{"a place that is not in the page", insert(home, `<a href="/recipes/#nowhere">x</a>`), "no #nowhere in /recipes/"},
			{"a picture that is not there", add("assets/*.css", "p{background:url(/nowhere.png)}"), "404 /nowhere.png"},
			{"a sitemap with a stray page", replace("sitemap.xml", "/</loc>", "/nowhere/</loc>"), "sitemap.xml: 404"},
			{"a missing page", remove("about/index.html"), "404 /about/"},
		},
	},
}

// lighthouse stands apart from the others: it measures speed.
var lighthouse = outsider{
	name:     "lighthouse",
	source:   "Core Web Vitals and good practice; by Lighthouse as a phone on a slow line",
	programs: []string{"chromium-headless-shell"},
	command:  func(s site) []string { return script("lighthouse.mjs", append([]string{s.dir}, s.timed...)...) },
	damages: []damage{
		{"a page for nobody", all(
			insert(home, `<button type="button"></button>`),
			replace(home, "</head>", `<meta name="robots" content="noindex"><script src="/nowhere.js"></script></head>`),
			slowScript), `(?s)performance 0.*accessibility 0.*best-practices 0.*seo 0`},
	},
}

// slowScript takes a second or two of the processor: in as long on the wall a busy machine does little.
func slowScript(t *testing.T, dir string) {
	write("slow.js", "let x = 0;\nfor (let i = 0; i < 2e8; i++) x = x * 3 + i | 0;\ndocument.documentElement.dataset.slow = x;\n")(t, dir)
	replace(home, "</head>", `<script src="/slow.js"></script></head>`)(t, dir)
}
