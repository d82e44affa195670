package editor

import (
	"encoding/json"
	"io/fs"
	"net/url"
	"path/filepath"
	"strings"

	"github.com/sourcegraph/jsonrpc2"

	"stillroom/build/preview"
)

// A root is the folder of a site.
type root struct {
	dir  string // as it was named, absolute
	real string // without links
}

func newRoot(dir string) (r root, err error) {
	if r.dir, err = filepath.Abs(dir); err != nil {
		return root{}, err
	}
	if r.real, err = filepath.EvalSymlinks(r.dir); err != nil {
		r.real = r.dir
	}
	return r, nil
}

// file gives the path of a document relative to the root; empty if it is not
// within.
func (r root) file(uri string) string {
	name := pathOf(uri)
	if name == "" {
		return ""
	}
	for _, dir := range []string{r.dir, r.real} {
		if rel, err := filepath.Rel(dir, name); err == nil && filepath.IsLocal(rel) {
			return filepath.ToSlash(rel)
		}
	}
	return ""
}

// uri gives the address of a file of the site.
func (r root) uri(file string) string {
	name := filepath.ToSlash(filepath.Join(r.dir, filepath.FromSlash(file)))
	if !strings.HasPrefix(name, "/") {
		name = "/" + name // a drive of Windows
	}
	return (&url.URL{Scheme: "file", Path: name}).String()
}

// pathOf gives the path of a file: address; empty for any other.
func pathOf(uri string) string {
	u, err := url.Parse(uri)
	if err != nil || u.Scheme != "file" {
		return ""
	}
	name := u.Path
	if len(name) > 2 && name[0] == '/' && name[2] == ':' {
		name = name[1:]
	}
	return filepath.FromSlash(name)
}

// initialize agrees on what both sides can do, and reads the site.
func (s *Server) initialize(p initializeParams) (any, error) {
	if s.root.dir != "" {
		return nil, &jsonrpc2.Error{Code: jsonrpc2.CodeInvalidRequest, Message: "the server was initialized before"}
	}
	var err error
	if s.root, err = newRoot(s.folder(p)); err != nil {
		return nil, err
	}
	s.wide = true
	encoding := "utf-16"
	for _, e := range p.Capabilities.General.PositionEncodings {
		if e == "utf-8" {
			s.wide, encoding = false, e
		}
	}
	s.versions = p.Capabilities.Workspace.WorkspaceEdit.DocumentChanges
	s.watches = p.Capabilities.Workspace.DidChangeWatchedFiles.DynamicRegistration
	var r initializeResult
	r.ServerInfo.Name = "stillroom"
	r.Capabilities = capabilities{
		PositionEncoding:   encoding,
		TextDocumentSync:   syncOptions{OpenClose: true, Change: incremental},
		CompletionProvider: completionOptions{TriggerCharacters: []string{":", " ", "[", "{", ",", "-"}},
		HoverProvider:      true,
		DefinitionProvider: true,
		ReferencesProvider: true,
		CodeActionProvider: codeActionOptions{CodeActionKinds: []string{quickFix}},
	}
	return r, nil
}

// folder is the one that is asked for, or else the first that the text editor
// has open.
func (s *Server) folder(p initializeParams) string {
	switch {
	case s.Dir != "":
		return s.Dir
	case len(p.WorkspaceFolders) > 0 && pathOf(p.WorkspaceFolders[0].URI) != "":
		return pathOf(p.WorkspaceFolders[0].URI)
	case pathOf(p.RootURI) != "":
		return pathOf(p.RootURI)
	}
	return "."
}

// initialized opens the site, once messages may be sent.
func (s *Server) initialized(nothing) (any, error) {
	fsys, err := s.nearest()
	if err == nil {
		err = s.openSite(fsys)
	}
	if err != nil {
		s.site = nil
		s.say(messageWarning, "Stillroom: %v. Open the folder that holds content/.", err)
		return nil, nil
	}
	if s.watches {
		go s.conn.Call(s.ctx, "client/registerCapability", registrationParams{[]registration{{
			ID: "content", Method: "workspace/didChangeWatchedFiles",
			Options: json.RawMessage(`{"watchers":[{"globPattern":"**/content/**"}]}`),
		}}}, nil)
	}
	s.judgeSoon()
	return nil, nil
}

// nearest opens the site of the folder, or of the nearest one above it that is a
// site: some text editors take the folder of a recipe for the one that is open.
func (s *Server) nearest() (fs.FS, error) {
	fsys, err := s.Open(s.root.dir)
	for r := s.root; err != nil && filepath.Dir(r.dir) != r.dir; {
		if r, _ = newRoot(filepath.Dir(r.dir)); r.dir == "" {
			break
		}
		if above, failed := s.Open(r.dir); failed == nil {
			s.root = r
			return above, nil
		}
	}
	return fsys, err
}

func (s *Server) openSite(fsys fs.FS) error {
	s.site = preview.NewManuscript(fsys, s.Day)
	if err := s.site.Open(nil); err != nil {
		return err
	}
	for _, d := range s.open {
		s.write(d)
	}
	return nil
}
