// Package editor is a language server for the files of a site: it tells a text
// editor what is found in them while they are written, what may stand at a
// place, and what was tested.
//
// It speaks the Language Server Protocol 3.17. It holds the site in memory, as
// its author has it before the eyes, and writes nothing: what is to be changed
// in a file, the text editor changes.
package editor

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"sync"
	"time"

	"github.com/sourcegraph/jsonrpc2"

	"stillroom/build/preview"
	"stillroom/content"
	"stillroom/validate"
)

// A Server serves one text editor.
type Server struct {
	Dir    string                          // the folder of the site; empty for the one that the text editor has open
	Open   func(dir string) (fs.FS, error) // gives the files of a site's folder, or says that it is none
	Day    func() content.Date             // as of which the site is judged
	Schema func() content.Vocabulary       // the words that keys may have; asked once

	mu       sync.Mutex
	root     root
	site     *preview.Manuscript // nil if there is none
	open     map[string]*document
	wide     bool
	report   validate.Report   // what is found in the site
	shown    map[string]string // what was last published, by file
	asked    bool              // to shut down
	stale    bool              // something was changed since the site was judged
	versions bool              // edits may be of a version of a document
	watches  bool              // the text editor can be asked to tell of changed files
	judging  chan struct{}
	conn     *jsonrpc2.Conn
	said     *outbox
	ctx      context.Context // done when the text editor has gone
}

// A document is a text that the editor has open.
type document struct {
	*paper
	file    string // relative to the folder of the site; empty if it is no part of it
	version int
}

// errNoShutdown tells that the text editor has left without a word.
var errNoShutdown = errors.New("the text editor has ended the connection without asking to shut down")

// Serve answers a text editor until it goes. It gives an error if it could not
// be understood, or went without being asked to shut down.
func (s *Server) Serve(ctx context.Context, in io.Reader, out io.Writer) error {
	s.open = make(map[string]*document)
	s.shown = make(map[string]string)
	s.judging = make(chan struct{}, 1)
	ctx, cancel := context.WithCancel(ctx)
	defer cancel()
	s.ctx = ctx
	s.said = newOutbox(out, cancel)
	defer s.said.end(farewell)
	heard := &heard{ObjectStream: jsonrpc2.NewBufferedStream(line{in, s.said, cancel}, jsonrpc2.VSCodeObjectCodec{}), said: s.said}
	s.mu.Lock()
	s.conn = jsonrpc2.NewConn(ctx, heard, jsonrpc2.HandlerWithError(s.handle), jsonrpc2.SetLogger(silent{}))
	s.mu.Unlock()
	go s.judge(ctx)
	select {
	case <-s.conn.DisconnectNotify():
	case <-ctx.Done():
	}
	s.mu.Lock()
	defer s.mu.Unlock()
	switch {
	case s.asked:
		return nil
	case heard.err != nil:
		return fmt.Errorf("understand what the text editor says: %w", heard.err)
	}
	return errNoShutdown
}

// farewell is how long a text editor has to take the last words.
const farewell = time.Second

// A line has two directions; to close it ends the serving.
type line struct {
	io.Reader
	io.Writer
	end func()
}

func (l line) Close() error {
	l.end()
	return nil
}

// heard remembers why nothing more could be understood. Of a text editor that
// asks and asks and reads no answer nothing more is heard until it does.
type heard struct {
	jsonrpc2.ObjectStream
	said *outbox
	err  error
}

// unread is how many bytes a text editor may leave unread and still be heard.
const unread = 64 << 20

func (h *heard) ReadObject(v any) error {
	h.said.await(unread)
	err := h.ObjectStream.ReadObject(v)
	if err != nil && err != io.EOF {
		h.err = err
	}
	return err
}

// silent has the connection say nothing of its own.
type silent struct{}

func (silent) Printf(string, ...any) {}

// handle answers a request, or takes a notification. They come one at a time.
func (s *Server) handle(_ context.Context, _ *jsonrpc2.Conn, r *jsonrpc2.Request) (any, error) {
	do, ok := methods[r.Method]
	switch {
	case !ok && r.Notif:
		return nil, nil // whatever it is, nobody waits for an answer
	case !ok:
		return nil, &jsonrpc2.Error{Code: jsonrpc2.CodeMethodNotFound, Message: "this server does not know " + r.Method}
	}
	s.mu.Lock()
	defer s.mu.Unlock()
	switch {
	case s.asked && r.Method != "exit":
		return nil, &jsonrpc2.Error{Code: jsonrpc2.CodeInvalidRequest, Message: "the server was asked to shut down"}
	case s.root.dir == "" && r.Method != "initialize" && r.Method != "exit":
		const notInitialized = -32002 // of the protocol
		return nil, &jsonrpc2.Error{Code: notInitialized, Message: "the server was not initialized"}
	}
	params := json.RawMessage("{}")
	if r.Params != nil {
		params = *r.Params
	}
	return do(s, params)
}

// methods are what the server can do.
var methods = map[string]func(*Server, json.RawMessage) (any, error){
	"initialize":                      with((*Server).initialize),
	"initialized":                     with((*Server).initialized),
	"shutdown":                        with((*Server).shutdown),
	"exit":                            with((*Server).exit),
	"textDocument/didOpen":            with((*Server).didOpen),
	"textDocument/didChange":          with((*Server).didChange),
	"textDocument/didSave":            with((*Server).didSave),
	"textDocument/didClose":           with((*Server).didClose),
	"workspace/didChangeWatchedFiles": with((*Server).didChangeWatchedFiles),
	"textDocument/completion":         with((*Server).completion),
	"textDocument/hover":              with((*Server).hover),
	"textDocument/definition":         with((*Server).definition),
	"textDocument/references":         with((*Server).references),
	"textDocument/codeAction":         with((*Server).codeAction),
}

// with reads the parameters of a method.
func with[P any](do func(*Server, P) (any, error)) func(*Server, json.RawMessage) (any, error) {
	return func(s *Server, raw json.RawMessage) (any, error) {
		var p P
		if err := json.Unmarshal(raw, &p); err != nil {
			return nil, &jsonrpc2.Error{Code: jsonrpc2.CodeInvalidParams, Message: err.Error()}
		}
		return do(s, p)
	}
}

// nothing are the parameters of a method that needs none.
type nothing struct{}

func (s *Server) shutdown(nothing) (any, error) {
	s.asked = true
	return nil, nil
}

func (s *Server) exit(nothing) (any, error) {
	go s.conn.Close()
	return nil, nil
}

// say shows the author a message.
func (s *Server) say(kind int, format string, args ...any) {
	s.notify("window/showMessage", messageParams{kind, fmt.Sprintf(format, args...)})
}

func (s *Server) notify(method string, params any) {
	s.conn.Notify(context.Background(), method, params) // whoever has gone hears nothing
}
