package editor

import (
	"context"
	"encoding/json"
	"errors"
	"io"
	"io/fs"
	"maps"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/sourcegraph/jsonrpc2"

	"stillroom/content"
	"stillroom/validate"
)

const jam = `---
name: Blackberry jam
summary: Dark.
published: 2026-08-21
kind: jam
produce: [blackberries]
yield: 4 half-pint jars
ingredients:
  - 4 cups crushed blackberries
  - 4 cups (800 g) sugar
keeping:
  - way: boiling-water
    process: berry-jam-no-added-pectin
    pack: hot
    acid: natural
    headspace: 1/4 in
    processing:
      - jar: half-pint
        altitude:
          0-1,000 ft: 5 min
          1,001-6,000 ft: 10 min
          above 6,000 ft: 15 min
    jars_sterilised: true # mine
    keeps: 12 months
---
`

const episode = `---
name: Brambles
published: 2026-09-01
recipes: [blackberry-jam]
---
See [the jam](/recipes/blackberry-jam/).
`

// A client is a text editor that opens a folder with a jam and an episode.
type client struct {
	t     testing.TB
	conn  *jsonrpc2.Conn
	shown chan publishParams
	said  chan messageParams
	ended chan error
}

func newClient(t testing.TB, files fstest.MapFS) *client { return newClientIn(t, "/larder", files) }

// newClientIn makes a client that has a folder open.
func newClientIn(t testing.TB, dir string, files fstest.MapFS) *client {
	c := &client{t: t, shown: make(chan publishParams, 20_000), said: make(chan messageParams, 10)}
	var toServer io.WriteCloser
	var fromServer io.Reader
	toServer, fromServer, c.ended = serve(t, dir, files)
	stream := jsonrpc2.NewBufferedStream(line{fromServer, toServer, func() { toServer.Close() }}, jsonrpc2.VSCodeObjectCodec{})
	c.conn = jsonrpc2.NewConn(t.Context(), stream, jsonrpc2.HandlerWithError(c.take))
	c.call("initialize", map[string]any{"capabilities": map[string]any{}}, nil)
	c.tell("initialized", map[string]any{})
	return c
}

// serve starts a server, and gives both directions and how it ends.
func serve(t testing.TB, dir string, files fstest.MapFS) (io.WriteCloser, io.Reader, chan error) {
	in, toServer := io.Pipe()
	fromServer, out := io.Pipe()
	s := Server{
		Dir: dir,
		Open: func(dir string) (fs.FS, error) {
			if dir != "/larder" {
				return nil, errors.New("this is no site")
			}
			return files, nil
		},
		Day:    func() content.Date { return content.Date{Year: 2026, Month: 11, Day: 28} },
		Schema: func() content.Vocabulary { return content.Vocabulary{Rules: []string{"recheck"}} },
	}
	ended := make(chan error, 1)
	go func() { ended <- s.Serve(t.Context(), in, out) }()
	return toServer, fromServer, ended
}

func larder() fstest.MapFS {
	return fstest.MapFS{
		"content/site.yaml":                 {Data: []byte("name: Larder\naddress: https://larder.example\n")},
		"content/recipes/blackberry-jam.md": {Data: []byte(jam)},
		"content/episodes/brambles.md":      {Data: []byte(episode)},
	}
}

func (c *client) take(_ context.Context, _ *jsonrpc2.Conn, r *jsonrpc2.Request) (any, error) {
	switch r.Method {
	case "textDocument/publishDiagnostics":
		var p publishParams
		if err := json.Unmarshal(*r.Params, &p); err != nil {
			c.t.Error(err)
		}
		c.shown <- p
	case "window/showMessage":
		var p messageParams
		if err := json.Unmarshal(*r.Params, &p); err != nil {
			c.t.Error(err)
		}
		c.said <- p
	}
	return nil, nil
}

func (c *client) call(method string, params, result any) {
	c.t.Helper()
	if err := c.conn.Call(c.t.Context(), method, params, result); err != nil {
		c.t.Fatalf("%s: %v", method, err)
	}
}

func (c *client) tell(method string, params any) {
	c.t.Helper()
	if err := c.conn.Notify(c.t.Context(), method, params); err != nil {
		c.t.Fatalf("%s: %v", method, err)
	}
}

const (
	jamURI     = "file:///larder/content/recipes/blackberry-jam.md"
	episodeURI = "file:///larder/content/episodes/brambles.md"
)

func (c *client) open(uri, text string) {
	c.t.Helper()
	c.tell("textDocument/didOpen", documentParams{textDocument{URI: uri, Version: 1, Text: text}})
}

// until gives the codes of what is shown of a document as soon as some rule is
// among them, or is not.
func (c *client) until(uri, rule string, there bool) publishParams {
	c.t.Helper()
	for p := range c.shown {
		if p.URI == uri && there == slices.ContainsFunc(p.Diagnostics, func(d diagnostic) bool { return d.Code == rule }) {
			return p
		}
	}
	panic("never")
}

// place gives the document with the cursor at a sign ‸ in a text, which is taken
// out.
func place(uri, text string) (string, placeParams) {
	at := strings.Index(text, "‸")
	text = strings.Replace(text, "‸", "", 1)
	return text, placeParams{textDocument{URI: uri}, newPaper([]byte(text), true).at(at)}
}

func TestWriting(t *testing.T) {
	c := newClient(t, larder())
	short := strings.Replace(jam, "15 min", "12 min", 1)
	c.open(jamURI, short)
	p := c.until(jamURI, "time-short", true)
	i := slices.IndexFunc(p.Diagnostics, func(d diagnostic) bool { return d.Code == "time-short" })
	d := p.Diagnostics[i]
	if want := (textRange{position{21, 26}, position{21, 32}}); d.Range != want || d.Severity != 1 || !strings.Contains(d.Message, "Source: ") {
		t.Errorf("%+v", d)
	}
	var actions []codeAction
	params := actionParams{TextDocument: textDocument{URI: jamURI}, Range: d.Range}
	params.Context.Diagnostics = []diagnostic{d}
	c.call("textDocument/codeAction", params, &actions)
	if len(actions) != 1 || len(actions[0].Diagnostics) != 1 {
		t.Fatalf("actions: %+v", actions)
	}
	filled, _ := validate.Fill("content/recipes/blackberry-jam.md", []byte(short), content.Date{Year: 2026, Month: 11, Day: 28})
	edits := slices.Clone(actions[0].Edit.Changes[jamURI])
	slices.Reverse(edits)
	mended := newPaper([]byte(short), true)
	for _, e := range edits {
		mended, _ = mended.change([]contentChange{{&e.Range, e.NewText}})
	}
	if string(mended.text) != string(filled.Data) {
		t.Errorf("the edits make\n%s\nand fill makes\n%s", mended.text, filled.Data)
	}
	change := changeParams{TextDocument: textDocument{URI: jamURI, Version: 2}}
	change.ContentChanges = []contentChange{{&textRange{position{21, 26}, position{21, 28}}, "15"}}
	c.tell("textDocument/didChange", change)
	if p := c.until(jamURI, "time-short", false); p.Version == nil || *p.Version != 2 {
		t.Errorf("shown for version %v", p.Version)
	}
}

// TestOtherFiles changes one file, and what is found in another changes.
func TestOtherFiles(t *testing.T) {
	c := newClient(t, larder())
	c.open(episodeURI, strings.Replace(episode, "[blackberry-jam]", "[blackbery-jam]", 1))
	p := c.until(episodeURI, "unknown-recipe", true)
	i := slices.IndexFunc(p.Diagnostics, func(d diagnostic) bool { return d.Code == "unknown-recipe" })
	params := actionParams{TextDocument: textDocument{URI: episodeURI}, Range: p.Diagnostics[i].Range}
	params.Context.Diagnostics = p.Diagnostics[i : i+1]
	var actions []codeAction
	c.call("textDocument/codeAction", params, &actions)
	if len(actions) != 1 || actions[0].Edit.Changes[episodeURI][0].NewText != "blackberry-jam" {
		t.Errorf("actions: %+v", actions)
	}
	c.open("file:///larder/content/recipes/blackbery-jam.md", jam)
	c.until(episodeURI, "unknown-recipe", false)
	c.tell("textDocument/didClose", documentParams{textDocument{URI: "file:///larder/content/recipes/blackbery-jam.md"}})
	c.until(episodeURI, "unknown-recipe", true)
}

func TestOffers(t *testing.T) {
	for _, test := range []struct{ uri, old, new, first, among, never string }{
		{jamURI, "kind: jam", "kind: ‸", "jam", "pickle", "name"},
		{jamURI, "process: berry-jam-no-added-pectin", "process: ‸", "berry-jam-no-added-pectin", "plum-preserves", "green-beans-raw"},
		{jamURI, "    keeps: 12 months", "    ke‸", "keeps", "tested_by", "temperature"},
		{jamURI, "jar: half-pint", "jar: ‸", "half-pint", "pint", "half-gallon"},
		{jamURI, "published: 2026-08-21", "published: ‸", "2026-11-28", "", "true"},
		{jamURI, "jars_sterilised: true", "jars_sterilised: ‸", "true", "false", ""},
		{jamURI, "produce: [blackberries]", "produce: [blackberries, ‸]", "", "plum", "jam"},
		{jamURI, "summary: Dark.\n", "s‸\n", "summary", "season", "kind"},
		{episodeURI, "recipes: [blackberry-jam]", "recipes: [‸]", "blackberry-jam", "", "jam"},
		{episodeURI, "recipes: [blackberry-jam]", "recipes:\n  - ‸", "blackberry-jam", "", "jam"},
	} {
		c := newClient(t, larder())
		whole := map[string]string{jamURI: jam, episodeURI: episode}[test.uri]
		if !strings.Contains(whole, test.old) {
			t.Fatal(test.old)
		}
		text, at := place(test.uri, strings.Replace(whole, test.old, test.new, 1))
		c.open(test.uri, text)
		var items []completionItem
		c.call("textDocument/completion", at, &items)
		slices.SortFunc(items, func(a, b completionItem) int { return strings.Compare(a.SortText, b.SortText) })
		has := func(w string) bool {
			return slices.ContainsFunc(items, func(i completionItem) bool { return i.Label == w })
		}
		switch {
		case len(items) == 0:
			t.Errorf("%s: nothing is offered", test.new)
		case test.first != "" && items[0].Label != test.first, test.among != "" && !has(test.among), test.never != "" && has(test.never):
			t.Errorf("%s: %s is offered first, of %d", test.new, items[0].Label, len(items))
		}
	}
}

// The figures are those of berry jam without added pectin, USDA Complete Guide to
// Home Canning, Guide 7.
func TestAbout(t *testing.T) {
	c := newClient(t, larder())
	for _, test := range []struct{ uri, old, new, want string }{
		{jamURI, "process: berry", "process: be‸rry", "| above 6,000 ft | 15 min |"},
		{jamURI, "headspace: 1/4", "headspace: 1‸/4", "headspace 1/4 in"},
		{jamURI, "yield: 4", "yi‸eld: 4", "what one batch makes"},
		{episodeURI, "[blackberry-jam]", "[blackberry‸-jam]", "**Blackberry jam**"},
	} {
		text, at := place(test.uri, strings.Replace(map[string]string{jamURI: jam, episodeURI: episode}[test.uri], test.old, test.new, 1))
		c.open(test.uri, text)
		var h hover
		c.call("textDocument/hover", at, &h)
		if !strings.Contains(h.Contents.Value, test.want) {
			t.Errorf("%s: %q", test.new, h.Contents.Value)
		}
	}
}

// The doses are those of crushed tomatoes, USDA Complete Guide to Home Canning,
// Guide 3.
func TestAcid(t *testing.T) {
	for _, p := range validate.Processes() {
		if p.ID == "tomatoes-crushed-hot" && !strings.Contains(aboutProcess(p), "2 tbsp bottled lemon juice per quart") {
			t.Errorf("%s", aboutProcess(p))
		}
	}
}

// TestOtherTerms agrees with a text editor on bytes, and on edits of a version.
func TestOtherTerms(t *testing.T) {
	c := newClientIn(t, "/larder", larder())
	if err := c.conn.Call(t.Context(), "initialize", map[string]any{}, nil); err == nil {
		t.Error("initialized twice")
	}
	s := Server{Dir: "/larder"}
	var p initializeParams
	p.Capabilities.General.PositionEncodings = []string{"utf-16", "utf-8"}
	p.Capabilities.Workspace.WorkspaceEdit.DocumentChanges = true
	r, err := s.initialize(p)
	if err != nil || r.(initializeResult).Capabilities.PositionEncoding != "utf-8" || s.wide {
		t.Errorf("%+v, %v", r, err)
	}
	e := s.edit(jamURI, &document{version: 7}, textEdit{NewText: "a"})
	if len(e.Changes) > 0 || len(e.DocumentChanges) != 1 || e.DocumentChanges[0].TextDocument != (versioned{jamURI, 7}) {
		t.Errorf("%+v", e)
	}
}

func TestTooLong(t *testing.T) {
	c := newClient(t, larder())
	c.open(jamURI, strings.Replace(jam, "15 min", "12 min", 1))
	c.until(jamURI, "time-short", true)
	change := changeParams{TextDocument: textDocument{URI: jamURI, Version: 2}}
	change.ContentChanges = []contentChange{{Text: strings.Repeat("a", longest+1)}}
	c.tell("textDocument/didChange", change)
	if m := <-c.said; !strings.Contains(m.Message, "longer than 4 MiB") {
		t.Errorf("%+v", m)
	}
	c.until(jamURI, "time-short", false) // what is on disk is shown again
}

// TestUnreadable asks for the values of the entry under the cursor while a line
// above the last readable text was put in.
func TestUnreadable(t *testing.T) {
	c := newClient(t, larder())
	two := strings.Replace(jam, "keeping:\n", "keeping:\n  - way: freezer\n    keeps: 1 year\n", 1)
	text, at := place(jamURI, strings.Replace(two, "    headspace: 1/4 in", "    headspace: 1‸/4 in\n    sa", 1))
	c.open(jamURI, text)
	var h *hover
	c.call("textDocument/hover", at, &h)
	if h != nil && !strings.Contains(h.Contents.Value, "headspace") {
		t.Errorf("%+v", h)
	}
	var items []completionItem
	at.Position = position{at.Position.Line + 1, 6}
	c.call("textDocument/completion", at, &items)
	if slices.ContainsFunc(items, func(i completionItem) bool { return i.Label == "container" }) {
		t.Error("a key of the freezer is offered for boiling water")
	}
}

func TestLinks(t *testing.T) {
	c := newClient(t, larder())
	c.open(jamURI, jam)
	for _, where := range []string{"recipes: [black‸berry-jam]", "](/recipes/black‸berry-jam/)"} {
		text, at := place(episodeURI, strings.Replace(episode, strings.Replace(where, "‸", "", 1), where, 1))
		c.open(episodeURI, text)
		var to location
		c.call("textDocument/definition", at, &to)
		if to.URI != jamURI {
			t.Errorf("%s leads to %q", where, to.URI)
		}
	}
	var from []location
	c.call("textDocument/references", placeParams{TextDocument: textDocument{URI: jamURI}}, &from)
	if len(from) != 1 || from[0].URI != episodeURI || from[0].Range != (textRange{position{3, 10}, position{3, 24}}) {
		t.Errorf("named at %+v", from)
	}
}

// Some text editors take the folder of the file for the one that is open.
func TestFolderWithin(t *testing.T) {
	c := newClientIn(t, "/larder/content/recipes", larder())
	c.open(jamURI, strings.Replace(jam, "15 min", "12 min", 1))
	c.until(jamURI, "time-short", true)
}

func TestNoSite(t *testing.T) {
	c := newClientIn(t, "/cellar", larder())
	if m := <-c.said; m.Type != messageWarning || !strings.Contains(m.Message, "this is no site") {
		t.Errorf("%+v", m)
	}
	c.open("file:///cellar/a.md", jam)
	var items []completionItem
	c.call("textDocument/completion", placeParams{TextDocument: textDocument{URI: "file:///cellar/a.md"}}, &items)
	if len(items) > 0 {
		t.Errorf("offers %+v", items)
	}
}

func TestFarewell(t *testing.T) {
	c := newClient(t, larder())
	var e *jsonrpc2.Error
	if err := c.conn.Call(t.Context(), "textDocument/fold", nil, nil); !asError(err, &e) || e.Code != jsonrpc2.CodeMethodNotFound {
		t.Errorf("an unknown method: %v", err)
	}
	c.call("shutdown", nil, nil)
	if err := c.conn.Call(t.Context(), "textDocument/hover", placeParams{}, nil); !asError(err, &e) || e.Code != jsonrpc2.CodeInvalidRequest {
		t.Errorf("after shutdown: %v", err)
	}
	c.tell("exit", nil)
	if err := <-c.ended; err != nil {
		t.Errorf("ended with %v", err)
	}
}

func TestAbruptEnd(t *testing.T) {
	c := newClient(t, larder())
	c.tell("exit", nil)
	if err := <-c.ended; err != errNoShutdown {
		t.Errorf("ended with %v", err)
	}
}

func asError(err error, to **jsonrpc2.Error) bool {
	e, ok := err.(*jsonrpc2.Error)
	*to = e
	return ok
}

func TestGarbage(t *testing.T) {
	s := Server{Open: func(string) (fs.FS, error) { return larder(), nil }, Day: func() content.Date { return content.Date{} }}
	err := s.Serve(t.Context(), strings.NewReader("GET / HTTP/1.1\r\nHost: here\r\n\r\n"), io.Discard)
	if err == nil || !strings.Contains(err.Error(), "Content-Length") {
		t.Errorf("got %v", err)
	}
}

// TestMended holds that the rules are there that the tested values put right.
func TestMended(t *testing.T) {
	for _, id := range slices.Sorted(maps.Keys(mendedBy)) {
		if validate.FindRule(id) == nil {
			t.Errorf("there is no rule %s", id)
		}
	}
}
