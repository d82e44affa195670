package preview

import (
	"bufio"
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"io"
	"net/http"
	"net/http/httptest"
	"slices"
	"strings"
	"sync"
	"testing"
	"testing/fstest"

	"stillroom/validate"
)

const episode = `---
name: Of plums
number: 1
published: 2026-09-01
summary: All about plums.
audio: {file: plums.mp3, bytes: 10, duration: 1 min, type: audio/mpeg}
recipes: [plum-jam]
chapters:
  - 0:00 Welcome
transcript: plums.vtt
---
Hello.
`

// serveSite answers for a small site with an episode.
func serveSite(t *testing.T, hosts Hosts) (*Preview, fstest.MapFS, *httptest.Server) {
	t.Helper()
	p, fsys := open(t,
		plumFile, strings.Replace(plum, "keeping:", "picture:\n  file: plum.svg\n  alt: A plum.\nformerly: [/old-jam]\nkeeping:", 1),
		"content/site.yaml", "name: Ada's Larder\nauthor: Ada Sloe\naddress: https://larder.example\nprogramme: {name: Plums, summary: All about plums., category: Food}\n",
		"content/pictures/plum.svg", `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"/>`,
		"content/episodes/plums.md", episode, "content/episodes/plums.mp3", "0123456789",
		"content/episodes/plums.vtt", "WEBVTT\n\n00:00.000 --> 00:10.000\nPlums.\n")
	server := httptest.NewServer(p.Handler(hosts))
	t.Cleanup(func() {
		p.Close()
		server.Close()
	})
	return p, fsys, server
}

// ask asks a server, with some headers, each a name and a value, and follows
// nothing.
func ask(t testing.TB, server *httptest.Server, method, address string, headers ...string) (*http.Response, string) {
	t.Helper()
	r, err := http.NewRequestWithContext(t.Context(), method, server.URL+address, nil)
	if err != nil {
		t.Fatal(err)
	}
	for i := 0; i+1 < len(headers); i += 2 {
		r.Header.Set(headers[i], headers[i+1])
		if headers[i] == "Host" {
			r.Host = headers[i+1]
		}
	}
	answer, err := http.DefaultTransport.RoundTrip(r)
	if err != nil {
		t.Fatal(err)
	}
	defer answer.Body.Close()
	body, err := io.ReadAll(answer.Body)
	if err != nil {
		t.Fatal(err)
	}
	return answer, string(body)
}

// What is served is what would be published, under the media type that it has.
func TestServe(t *testing.T) {
	p, _, server := serveSite(t, Hosts{})
	s := p.now.Load()
	paths, err := s.proofs.Paths()
	if err != nil {
		t.Fatal(err)
	}
	for _, path := range paths {
		want, _, err := s.find(path)
		if err != nil {
			t.Fatal(err)
		}
		answer, body := ask(t, server, "GET", "/"+path)
		if before, rest, ok := strings.Cut(body, opening); ok {
			_, after, _ := strings.Cut(rest, closing)
			body = before + after
		}
		if status := answer.StatusCode; status != 200 && path != "404.html" || body != string(bytesOf(t, want.File)) {
			t.Errorf("%s: status %d, %d bytes", path, status, len(body))
		}
	}
	types := map[string]string{
		"/": "text/html; charset=utf-8", "/recipes.atom": "application/atom+xml", "/recipes.json": "application/feed+json",
		"/programme.xml": "application/rss+xml", "/sitemap.xml": "application/xml", "/robots.txt": "text/plain; charset=utf-8",
		"/recipes/plum-jam/recipe.json": "application/ld+json", "/show-notes/plums/chapters.json": "application/json+chapters",
		"/show-notes/plums/plums.mp3": "audio/mpeg", "/show-notes/plums/plums.vtt": "text/vtt; charset=utf-8",
		s.proofs.Asset("style.css"): "text/css; charset=utf-8", s.proofs.Asset("besley.woff2"): "font/woff2", s.proofs.Asset("icon.svg"): "image/svg+xml",
		own + "preview.js": "text/javascript; charset=utf-8", own + "look.js": "text/javascript; charset=utf-8", own + "page.css": "text/css; charset=utf-8",
		own + "findings": "application/json", "/nothing/": "text/html; charset=utf-8",
	}
	for address, want := range types {
		answer, _ := ask(t, server, "GET", address)
		if got := answer.Header.Get("Content-Type"); got != want {
			t.Errorf("%s is served as %s, want %s", address, got, want)
		}
		for header, want := range map[string]string{"Cache-Control": "no-store", "X-Content-Type-Options": "nosniff", "Content-Security-Policy": policy, "Cross-Origin-Resource-Policy": "same-origin"} {
			if got := answer.Header.Get(header); got != want {
				t.Errorf("%s: %s is %q", address, header, got)
			}
		}
	}
}

// Who may ask, by the name that the browser uses and by where it comes from.
func TestGuard(t *testing.T) {
	_, _, server := serveSite(t, Hosts{Names: []string{"larder.local"}})
	tests := []struct {
		method, address string
		headers         []string
		want            int
	}{
		{"GET", "/", nil, 200},
		{"HEAD", "/", nil, 200},
		{"POST", "/", nil, 405},
		{"PUT", "/recipes/plum-jam/", nil, 405},
		{"OPTIONS", "/", nil, 405},
		{"GET", "/", []string{"Host", "localhost:4747"}, 200},
		{"GET", "/", []string{"Host", "larder.localhost"}, 200},
		{"GET", "/", []string{"Host", "LARDER.local:4747"}, 200},
		{"GET", "/", []string{"Host", "127.8.9.10"}, 200},
		{"GET", "/", []string{"Host", "[::1]:4747"}, 200},
		{"GET", "/", []string{"Host", "evil.example"}, 421},
		{"GET", "/", []string{"Host", "localhost.evil.example"}, 421},
		{"GET", "/", []string{"Host", "192.168.0.7:4747"}, 421},
		{"GET", own + "events", []string{"Host", "evil.example:4747"}, 421},
		{"GET", own + "findings", []string{"Origin", "https://evil.example"}, 403},
		{"GET", own + "findings", []string{"Origin", "null"}, 403},
		{"GET", own + "findings", []string{"Host", "localhost:1", "Origin", "http://localhost:1"}, 200},
		{"GET", own + "findings", []string{"Host", "localhost:1", "Origin", "http://localhost:2"}, 403},
		{"GET", "/", []string{"Sec-Fetch-Site", "cross-site", "Sec-Fetch-Mode", "navigate", "Sec-Fetch-Dest", "document"}, 200},
		{"GET", "/", []string{"Sec-Fetch-Site", "cross-site", "Sec-Fetch-Mode", "navigate", "Sec-Fetch-Dest", "iframe"}, 403},
		{"GET", "/show-notes/plums/plums.mp3", []string{"Sec-Fetch-Site", "cross-site", "Sec-Fetch-Mode", "no-cors", "Sec-Fetch-Dest", "audio"}, 403},
		{"GET", "/", []string{"Sec-Fetch-Site", "same-site", "Sec-Fetch-Mode", "cors"}, 403},
		{"GET", "/", []string{"Sec-Fetch-Site", "same-origin", "Sec-Fetch-Mode", "cors"}, 200},
	}
	for _, test := range tests {
		if answer, _ := ask(t, server, test.method, test.address, test.headers...); answer.StatusCode != test.want {
			t.Errorf("%s %s %q: status %d, want %d", test.method, test.address, test.headers, answer.StatusCode, test.want)
		}
	}
	if !(Hosts{Open: true}).allow("192.168.0.7:4747") || (Hosts{Open: true}).allow("evil.example") {
		t.Error("an open preview answers to numbers, and to no name that it does not know")
	}
}

// No path leaves the site, whatever is written in it, and no file is served that
// is not published.
func TestServeNothingElse(t *testing.T) {
	_, _, server := serveSite(t, Hosts{})
	for _, address := range []string{
		"/../go.mod", "/%2e%2e/go.mod", "/..%2f..%2fetc/passwd", "/content/site.yaml", "/content/recipes/plum-jam.md", "/assets/../content/site.yaml",
		"/%00", "//etc/passwd", "/recipes/plum-jam/../../../x", own + "../view.go", own + "look.css/../../view.go", own + "%2e%2e%2fview.go", "/\\..\\x", "/.git/config",
	} {
		answer, body := ask(t, server, "GET", address)
		if answer.StatusCode == 200 || strings.Contains(body, "Ada Sloe\naddress") || strings.Contains(body, "package preview") {
			t.Errorf("%s: status %d\n%.200s", address, answer.StatusCode, body)
		}
	}
}

// Recordings are served in parts: RFC 9110, 14.
func TestServeParts(t *testing.T) {
	_, _, server := serveSite(t, Hosts{})
	const address = "/show-notes/plums/plums.mp3"
	tests := []struct {
		method, part string
		status       int
		body, length string
	}{
		{"GET", "", 200, "0123456789", "10"},
		{"HEAD", "", 200, "", "10"},
		{"GET", "bytes=2-4", 206, "234", "3"},
		{"GET", "bytes=-2", 206, "89", "2"},
		{"GET", "bytes=8-100", 206, "89", "2"},
		{"GET", "bytes=10-", 416, "invalid range: failed to overlap\n", ""},
	}
	for _, test := range tests {
		answer, body := ask(t, server, test.method, address, "Range", test.part)
		if answer.StatusCode != test.status || body != test.body || test.length != "" && answer.Header.Get("Content-Length") != test.length {
			t.Errorf("%s %q: status %d, %q of %s bytes", test.method, test.part, answer.StatusCode, body, answer.Header.Get("Content-Length"))
		}
	}
}

// An address that lacks its last stroke leads to the one with it; an old one to
// the new.
func TestServeMoved(t *testing.T) {
	_, _, server := serveSite(t, Hosts{})
	if answer, _ := ask(t, server, "GET", "/recipes/plum-jam"); answer.StatusCode != 302 || answer.Header.Get("Location") != "/recipes/plum-jam/" {
		t.Errorf("status %d, to %s", answer.StatusCode, answer.Header.Get("Location"))
	}
	if answer, body := ask(t, server, "GET", "/old-jam/"); answer.StatusCode != 200 || !strings.Contains(body, `http-equiv="refresh"`) {
		t.Errorf("status %d\n%s", answer.StatusCode, body)
	}
	if answer, body := ask(t, server, "GET", "/recipes/pear-jam/"); answer.StatusCode != 404 || !strings.Contains(body, "An empty place") {
		t.Errorf("status %d\n%s", answer.StatusCode, body)
	}
}

// A listener waits for events of a page.
type listener struct {
	t     testing.TB
	lines *bufio.Scanner
}

func listen(t testing.TB, server *httptest.Server, query string) *listener {
	t.Helper()
	r, err := http.NewRequestWithContext(t.Context(), "GET", server.URL+own+"events?"+query, nil)
	if err != nil {
		t.Fatal(err)
	}
	answer, err := http.DefaultTransport.RoundTrip(r)
	if err != nil || answer.Header.Get("Content-Type") != "text/event-stream" {
		t.Fatal(answer, err)
	}
	t.Cleanup(func() { answer.Body.Close() })
	return &listener{t, bufio.NewScanner(answer.Body)}
}

type event struct {
	HTML, Version string
	Notes         struct {
		Counts validate.Counts
		Marks  []struct{ Line excerpt }
	}
}

// next gives the next event.
func (l *listener) next() (e event) {
	l.t.Helper()
	for l.lines.Scan() {
		if data, ok := strings.CutPrefix(l.lines.Text(), "data: "); ok {
			if err := json.Unmarshal([]byte(data), &e); err != nil {
				l.t.Fatal(err, data)
			}
			return e
		}
	}
	l.t.Fatal("no more events")
	return e
}

// A browser is told when its page has become another, when there is more to say
// of it, and of nothing else.
func TestEvents(t *testing.T) {
	p, fsys, server := serveSite(t, Hosts{})
	v, errors := p.now.Load().view(plumPage, false), p.now.Load().report.Counts.Errors // the recording is none
	l := listen(t, server, "page="+plumPage+"&html="+v.version+"&notes="+v.noted)
	late := listen(t, server, "page="+plumPage+"&html=old&notes=old").next()
	if late.HTML != v.version || late.Version != v.noted {
		t.Error("whoever comes late is not told")
	}
	text := string(fsys[plumFile].Data)
	change := func(file, text string) {
		fsys[file] = &fstest.MapFile{Data: []byte(text)}
		p.Change([]string{file}, false)
	}
	change("content/pages/other.md", "---\nname: Other\n---\nNothing to do with plums.\n")
	first := l.next() // the menu has one more entry
	change("content/pages/other.md", "---\nname: Other\n---\nNothing at all to do with plums.\n")
	change(plumFile, strings.Replace(text, "Pick them ripe", "Pick them soft", 1))
	second := l.next()
	if first.HTML == v.version || second.HTML == first.HTML || second.Version != first.Version {
		t.Errorf("told of %s, %s, %s", v.version, first.HTML, second.HTML)
	}
	change("content/episodes/plums.md", strings.Replace(episode, "summary: All about plums.\n", "", 1))
	third := l.next()
	if third.HTML == second.HTML || third.Notes.Counts.Errors != errors+1 { // the page names the episode
		t.Errorf("told of %+v", third)
	}
	change(plumFile, strings.Replace(text, "yield: 5 half-pint jars", "yield: plenty", 1))
	fourth := l.next()
	if len(fourth.Notes.Marks) != 1 || fourth.Notes.Marks[0].Line.Meant != "plenty" || fourth.Notes.Counts.Errors != errors+2 {
		t.Errorf("told of %+v", fourth)
	}
}

// The panel lists what was found, the worst first, and not more than anybody can
// look through.
func TestListing(t *testing.T) {
	files := []string{"content/pages/about.md", "---\nname: About\nwhy: because\n---\n", "content/recipes/bad.md", "---\nname: [\n---\n"}
	for i := range 2 * inListing {
		files = append(files, "content/recipes/a"+string(rune('a'+i%26))+string(rune('a'+i/26))+".md", strings.Replace(plum, "kind: jam", "kind: jamm", 1))
	}
	p, _ := open(t, files...)
	l := p.now.Load().listing()
	shown := 0
	for _, f := range l.Files {
		shown += len(f.Marks)
	}
	if total := len(p.now.Load().report.Findings); shown != inListing || l.Left != total-inListing {
		t.Errorf("%d of %d are listed, %d left", shown, total, l.Left)
	}
	i := slices.IndexFunc(l.Files, func(f listed) bool { return f.File == "content/pages/about.md" })
	if i != 0 || l.Files[i].Name != "About" || l.Files[i].Address != "/about/" || l.Files[i].Marks[0].Rule != "unknown-key" {
		t.Errorf("the page is listed as %+v", l.Files[max(i, 0)])
	}
}

// When the preview ends, browsers that wait are let go.
func TestClose(t *testing.T) {
	p, _ := open(t, plumFile, plum)
	server := httptest.NewServer(p.Handler(Hosts{}))
	v := p.now.Load().view("/", false)
	l := listen(t, server, "page=/&html="+v.version+"&notes="+v.noted)
	p.Close()
	for l.lines.Scan() {
	}
	if err := server.Config.Shutdown(context.Background()); err != nil {
		t.Error(err)
	}
}

// What the preview adds to a page stands at one place, and is taken away again
// without a trace. A theme may write no head.
func TestServed(t *testing.T) {
	for _, html := range []string{"<!doctype html><html><head><title>x</title></head><body>x</body></html>", "<p>x</p>", ""} {
		v := &view{html: []byte(html), notes: []byte(`{"x":"<\/script>"}`)}
		got := v.served()
		before, rest, ok := bytes.Cut(got, []byte(opening))
		_, after, ok2 := bytes.Cut(rest, []byte(closing))
		if !ok || !ok2 || string(before)+string(after) != html {
			t.Errorf("%q becomes %q", html, got)
		}
	}
}

// Many may look while the site changes.
func TestTogether(t *testing.T) {
	p, fsys := open(t, plumFile, plum, "content/pages/about.md", "---\nname: About\n---\nHello.\n")
	server := httptest.NewServer(p.Handler(Hosts{}))
	defer server.Close()
	defer p.Close()
	var group sync.WaitGroup
	done := make(chan struct{})
	for _, address := range []string{"/", plumPage, "/recipes/", own + "findings", "/robots.txt"} {
		group.Go(func() {
			for {
				select {
				case <-done:
					return
				default:
				}
				if answer, body := ask(t, server, "GET", address); answer.StatusCode != 200 || body == "" {
					t.Errorf("%s: status %d", address, answer.StatusCode)
				}
			}
		})
	}
	for i := range 50 {
		fsys[plumFile] = &fstest.MapFile{Data: []byte(strings.Replace(plum, "Sing", fmt.Sprint("Sing ", i), 1))}
		p.Change([]string{plumFile}, false)
	}
	close(done)
	group.Wait()
}
