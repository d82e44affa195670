package editor

import (
	"bufio"
	"encoding/json"
	"errors"
	"io"
	"strings"
	"testing"
	"time"

	"github.com/sourcegraph/jsonrpc2"
)

// A wire is a message of either side, as much of it as these tests look at.
type wire struct {
	ID     int            `json:"id,omitempty"`
	Method string         `json:"method,omitempty"`
	Params any            `json:"params,omitempty"`
	Result map[string]any `json:"result,omitempty"`
}

// patience is how long something may take on a busy machine that takes no time.
const patience = 30 * time.Second

// soon waits until something is done.
func soon(t *testing.T, what string, do func()) {
	t.Helper()
	done := make(chan struct{})
	go func() {
		defer close(done)
		do()
	}()
	select {
	case <-done:
	case <-time.After(patience):
		t.Fatalf("%s: it never came about", what)
	}
}

// A text editor writes and writes, and reads nothing meanwhile, as those do that
// have one thread and are busy. All that it writes is taken in; what it reads in
// the end is the answer, and what is found in the last text, not in each.
func TestReadsNothing(t *testing.T) {
	to, from, _ := serve(t, "/larder", larder())
	say := func(f wire) {
		if err := (jsonrpc2.VSCodeObjectCodec{}).WriteObject(to, struct {
			Version string `json:"jsonrpc"`
			wire
		}{"2.0", f}); err != nil {
			t.Error(err)
		}
	}
	const changes = 301
	soon(t, "all of it heard", func() {
		say(wire{ID: 1, Method: "initialize", Params: map[string]any{}})
		say(wire{Method: "initialized", Params: map[string]any{}})
		say(wire{Method: "textDocument/didOpen", Params: documentParams{textDocument{URI: jamURI, Version: 1, Text: jam}}})
		for i := range changes {
			text := jam
			if i%2 == 0 {
				text = strings.Replace(jam, "15 min", "12 min", 1)
			}
			say(wire{Method: "textDocument/didChange", Params: changeParams{
				TextDocument: textDocument{URI: jamURI, Version: i + 2}, ContentChanges: []contentChange{{Text: text}},
			}})
		}
		text, at := place(jamURI, strings.Replace(jam, "headspace: 1/4", "headspace: 1‸/4", 1))
		say(wire{Method: "textDocument/didOpen", Params: documentParams{textDocument{URI: "file:///elsewhere.md", Version: 1, Text: text}}})
		say(wire{ID: 2, Method: "textDocument/hover", Params: at})
	})
	shown, answered := 0, false
	soon(t, "the answer, and what is found in the last text", func() {
		for in, last := bufio.NewReader(from), false; !last || !answered; {
			var raw struct {
				wire
				Params publishParams `json:"params"`
			}
			if err := (jsonrpc2.VSCodeObjectCodec{}).ReadObject(in, &raw); err != nil {
				t.Error(err)
				return
			}
			answered = answered || raw.ID == 2
			if raw.Method == "textDocument/publishDiagnostics" && raw.Params.URI == jamURI {
				shown++
				last = raw.Params.Version != nil && *raw.Params.Version == changes+1
				if said, _ := json.Marshal(raw.Params); last != strings.Contains(string(said), "time-short") && last {
					t.Errorf("in the last text there is found %s", said)
				}
			}
		}
	})
	if shown > changes/10 {
		t.Errorf("the findings of %d of %d texts were shown, one after the other", shown, changes)
	}
}

// A text editor that hangs does not keep the server from ending.
func TestExitUnread(t *testing.T) {
	to, _, ended := serve(t, "/larder", larder())
	soon(t, "the end", func() {
		for _, text := range []string{`{"jsonrpc":"2.0","id":1,"method":"initialize","params":{}}`, `{"jsonrpc":"2.0","method":"exit"}`} {
			raw := json.RawMessage(text)
			if err := (jsonrpc2.VSCodeObjectCodec{}).WriteObject(to, raw); err != nil {
				t.Error(err)
			}
		}
		if err := <-ended; err != errNoShutdown {
			t.Errorf("ended with %v", err)
		}
	})
}

func TestOutbox(t *testing.T) {
	from, to := io.Pipe()
	o := newOutbox(to, func() {})
	for _, text := range []string{"one", "two"} {
		if n, err := o.Write([]byte(text)); n != 3 || err != nil {
			t.Errorf("took %d, %v", n, err)
		}
	}
	o.await(6)
	read := make(chan string)
	go func() {
		all, _ := io.ReadAll(from)
		read <- string(all)
	}()
	soon(t, "an empty outbox", func() { o.await(0) })
	o.Write([]byte("last"))
	o.end(patience)
	to.Close()
	if got := <-read; got != "onetwolast" {
		t.Errorf("handed out %q", got)
	}
	if _, err := o.Write([]byte("more")); err != io.ErrClosedPipe {
		t.Errorf("after the end: %v", err)
	}
}

// When nothing can be handed out any more, nobody waits for it.
func TestOutboxFails(t *testing.T) {
	from, to := io.Pipe()
	from.CloseWithError(errors.New("gone"))
	failed := make(chan struct{})
	o := newOutbox(to, func() { close(failed) })
	o.Write([]byte("one"))
	soon(t, "the failure", func() {
		<-failed
		o.await(0)
	})
}
