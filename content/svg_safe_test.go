package content

import (
	"fmt"
	"strings"
	"testing"
)

// What a drawing may hold, and what not: SVG 2, 5 and 19; SVG Tiny 1.2, 15;
// XML Stylesheet 1.0. The ways to write an address that browsers read and
// searching for it does not are from the URL Standard, 4.4.
func TestSVGIsADrawing(t *testing.T) {
	within := func(inner string) string {
		return `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" xmlns:h="http://www.w3.org/1999/xhtml" viewBox="0 0 9 9">` + inner + `</svg>`
	}
	cases := []struct{ want, svg string }{
		{"", within(`<title>Plum</title><path d="M0 0h9" style="fill:url(#a);stroke:#fff"/>`)},
		{"", within(`<defs><linearGradient id="a"/><linearGradient id="b" xlink:href="#a"/></defs><use href="#a"/>`)},
		{"", within(`<image href="data:image/png;base64,AAAA"/><a href="https://a.example/"><text>On the web</text></a>`)},
		{"", within(`<style>.a{fill:url(#b)} /* a note */ .b{background:url("data:image/png;base64,AA")}</style>`)},
		{"", within(`<metadata><x:note xmlns:x="http://a.example/ns" x:on="1">one</x:note></metadata><animate attributeName="x" to="1"/>`)},
		{"", `<?xml version="1.0"?><!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">` + within("")},
		{"deep", within(strings.Repeat("<g>", deepestSVG) + strings.Repeat("</g>", deepestSVG))},
		{"style sheet", `<?xml-stylesheet href="a.xsl" type="text/xsl"?>` + within("")},
		{"entities", `<!DOCTYPE svg [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;">]>` + within("")},
		{"no picture", `<html xmlns="http://www.w3.org/1999/xhtml"><script>a()</script></html>`},
		{"no picture", `<svg xmlns="http://www.w3.org/1999/xhtml" viewBox="0 0 9 9"/>`},
	}
	for _, inner := range []string{
		`<script>a()</script>`, `<SCRIPT>a()</SCRIPT>`, `<h:script>a()</h:script>`, `<script href="a.js"/>`, `<g onload="a()"/>`, `<g ONCLICK="a()"/>`, `<handler type="a"/>`,
		`<a href="javascript:a()"/>`, `<a xlink:href=" java&#9;script:a()"/>`, `<a href="JaVaScRiPt:a()"/>`,
		`<animate attributeName="href" values="x"/>`, `<set attributeName="onclick" to="a()"/>`, `<set attributeName="xlink:href" to="x"/>`, `<animate values="0;javascript:a()"/>`,
	} {
		cases = append(cases, struct{ want, svg string }{"holds a script", within(inner)})
	}
	for _, inner := range []string{
		`<foreignObject><h:p>x</h:p></foreignObject>`, `<h:iframe src="/"/>`, `<h:img src="x"/>`, `<iframe src="/"/>`, `<embed src="x"/>`, `<object data="x"/>`, `<video src="x"/>`,
		`<m:math xmlns:m="http://www.w3.org/1998/Math/MathML"/>`,
	} {
		cases = append(cases, struct{ want, svg string }{"more than a drawing", within(inner)})
	}
	for _, inner := range []string{
		`<image href="https://a.example/a.png"/>`, `<image xlink:href="//a.example/a.png"/>`, `<image href="a.png"/>`, `<use href="b.svg#a"/>`,
		`<use href="data:image/svg+xml,x"/>`, `<image href="data:text/html,x"/>`, `<a href="data:text/html,x"/>`, `<feImage href="/etc/passwd"/>`, `<image href="file:///etc/passwd"/>`,
		`<g style="fill:url(https://a.example/)"/>`, `<g fill="url('//a.example/#a')"/>`, `<g filter="url( a.svg#b )"/>`, `<g style="fill:u\72l(//a.example/)"/>`,
		`<style>@import "https://a.example/a.css";</style>`, `<style>@im<!-- -->port "a.css";</style>`, `<style>a{}<b/>@import "a.css";</style>`,
		`<style><![CDATA[a{background:url(//a.example/)}]]></style>`, `<style>a{background:image-set("a.png" 1x)}</style>`, `<g xml:base="https://a.example/"/>`,
	} {
		cases = append(cases, struct{ want, svg string }{"from elsewhere", within(inner)})
	}
	bomb := func(levels int, use string) string { // 10 of each level in the next
		all := `<g id="a0"><path d="M0 0h9"/></g>`
		for i := range levels {
			all += fmt.Sprintf(`<g id="a%d">`, i+1) + strings.Repeat(fmt.Sprintf(use, i), 10) + "</g>"
		}
		return within(`<defs>` + all + `</defs>` + fmt.Sprintf(use, levels))
	}
	for _, use := range []string{`<use href="#a%d"/>`, `<use xlink:href=" #%%61%d"/>`, `<g mask="url(#a%d)"/>`, `<path style="fill:url( '#a%d' )"/>`, `<feImage href="#a%d"/>`} {
		cases = append(cases, struct{ want, svg string }{"", bomb(3, use)}, struct{ want, svg string }{"more than 200000 parts", bomb(9, use)})
	}
	styledBomb := func(levels int, style string) string { // 10 parts of each level are filled with the one before
		all, sheet := `<pattern id="a0"><path d="M0 0h9"/></pattern>`, ""
		for i := range levels {
			all += fmt.Sprintf(`<pattern id="a%d">`, i+1) + strings.Repeat(fmt.Sprintf(`<path class="x c%d"/>`, i), 10) + "</pattern>"
			sheet += fmt.Sprintf(style, i, i)
		}
		return within(`<style>` + sheet + `</style>` + all + fmt.Sprintf(`<path class="c%d"/>`, levels-1))
	}
	for _, style := range []string{
		`.c%d{fill:url(#a%d)}`, `path.x.c%d , i{ stroke : red;STROKE:url("#a%d") }`, `@media screen{svg>.c%d{fill:url(#a%d)}}`, `.c%d/* } */{/**/fill:url(#a%d)` + "\n}",
		`.c%d{marker-end:url(#a%d)}`, `.c%d{mask:url(#a%d)}`, `g .c%d{clip-path:url(#a%d);fill:none}`,
	} {
		cases = append(cases, struct{ want, svg string }{"", styledBomb(3, style)}, struct{ want, svg string }{"more than 200000 parts", styledBomb(9, style)})
	}
	inherited := func(levels int, part string) string { // 10 parts of each level inherit what their group has
		all := `<pattern id="a0"><path d="M0 0h9"/></pattern>`
		for i := range levels {
			all += fmt.Sprintf(`<pattern id="a%d">`+part+`</pattern>`, i+1, i)
		}
		return within(all + fmt.Sprintf(`<path fill="url(#a%d)"/>`, levels))
	}
	ten := strings.Repeat(`<path d="M0 0h9"/>`, 10)
	for _, part := range []string{`<g fill="url(#a%d)">` + ten + `</g>`, `<g style="stroke:url(#a%d)">` + ten + `</g>`, `<path marker-mid="url(#a%d)" d="M0 0` + strings.Repeat("h1v1", 10) + `"/>`} {
		cases = append(cases, struct{ want, svg string }{"", inherited(2, part)}, struct{ want, svg string }{"more than 200000 parts", inherited(9, part)})
	}
	for want, all := range map[string][]string{
		"in a variable": {`<style>svg{--a:url(#a)} path{fill:var(--a)}</style>`, `<g style="--a : url(#a)"/>`},
		// What a style may be about is taken to be more than it is, where it is not plain.
		"brings in itself": {
			`<style>.a:hover{fill:url(#b)}</style><pattern id="b"><path/></pattern>`, `<style>:is(.a,.b){fill:url(#b)}</style><pattern id="b"><path/></pattern>`, `<style>*{fill:url(#b)}</style><pattern id="b"><path/></pattern>`,
			`<style>.a{i{x:y} fill:url(#b)}</style><pattern id="b"><path/></pattern>`, `<style>@keyframes k{from{fill:url(#b)}}</style><pattern id="b"><path/></pattern>`, `<style>.é{fill:url(#b)}</style><pattern id="b"><path/></pattern>`,
			`<set attributeName="fill" to="url(#b)"/><pattern id="b"><path/></pattern>`, `<style>PATH{fill:url(#b)}</style><pattern id="b"><path/></pattern>`, `<style>g #c{fill:url(#b)}</style><pattern id="b"><path id="c"/></pattern>`,
		},
		"": {`<style>.a{fill:url(#b)} .b{stop-color:#fff}</style><linearGradient id="b"><stop class="b"/></linearGradient><g class="a">` + strings.Repeat(`<path d="M0 0h9"/>`, 50_000) + `</g>`,
			`<style>.a{clip-path:url(#b)}</style><clipPath id="b"><path/></clipPath><g class="a">` + strings.Repeat(`<path/>`, 50_000) + `</g>`,
			`<style>.a{fill:url(#b)}</style><pattern id="b"><path class="c"/></pattern><path class="a"/>`},
		"more than 10000 times": {`<style>` + strings.Repeat(`.a,`, 200) + `.b{` + strings.Repeat("fill:url(#b);", 200) + `}</style>`},
	} {
		for _, inner := range all {
			cases = append(cases, struct{ want, svg string }{want, within(inner)})
		}
	}
	for _, inner := range []string{`<g id="a"><use href="#a"/></g>`, `<use id="a" href="#b"/><use id="b" href="#a"/>`, `<pattern id="a"><path fill="url(#a)"/></pattern>`} {
		cases = append(cases, struct{ want, svg string }{"brings in itself", within(inner)})
	}
	for _, inner := range []string{`<g id="a"><animate href="#a" attributeName="x"/><a href="#a"/></g>`, strings.Repeat(`<path id="a" fill="url(#b)"/>`, 20_000) + `<linearGradient id="b"><stop/><stop/></linearGradient>`, `<use href="#none"/>`} {
		cases = append(cases, struct{ want, svg string }{"", within(inner)})
	}
	for _, c := range cases {
		got := ""
		if _, err := ReadImage("a.svg", []byte(c.svg)); err != nil {
			got = err.Error()
		}
		if c.want == "" && got != "" || !strings.Contains(got, c.want) {
			t.Errorf("%.2000s\ngot %q, want %q", c.svg, got, c.want)
		}
	}
	t.Logf("%d cases of drawings", len(cases))
}
