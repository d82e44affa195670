package editor

import (
	"fmt"

	"github.com/sourcegraph/jsonrpc2"
)

// longest is how long a document may be. Nobody writes one of that size; it would
// be sent, read and judged anew at every key.
const longest = 4 << 20

func (s *Server) didOpen(p documentParams) (any, error) {
	d := p.TextDocument
	if len(d.Text) > longest {
		s.leave(d.URI, &document{})
		return nil, nil
	}
	s.open[d.URI] = &document{paper: newPaper([]byte(d.Text), s.wide), file: s.root.file(d.URI), version: d.Version}
	s.write(s.open[d.URI])
	s.judgeSoon()
	return nil, nil
}

func (s *Server) didChange(p changeParams) (any, error) {
	d, ok := s.open[p.TextDocument.URI]
	if !ok {
		return nil, notOpen(p.TextDocument.URI)
	}
	changed, err := d.change(p.ContentChanges)
	if err != nil {
		return nil, err
	}
	if len(changed.text) > longest {
		s.leave(p.TextDocument.URI, d)
		return nil, nil
	}
	d.paper, d.version = changed, p.TextDocument.Version
	s.write(d)
	s.judgeSoon()
	return nil, nil
}

// didSave needs nothing: what was saved is what was written last.
func (s *Server) didSave(documentParams) (any, error) { return nil, nil }

func (s *Server) didClose(p documentParams) (any, error) {
	d, ok := s.open[p.TextDocument.URI]
	if !ok {
		return nil, notOpen(p.TextDocument.URI)
	}
	s.drop(p.TextDocument.URI, d)
	return nil, nil
}

// leave has no eye on a document that is too long.
func (s *Server) leave(uri string, d *document) {
	s.say(messageWarning, "Stillroom: %s is longer than %d MiB, and is not looked at.", uri, longest>>20)
	s.drop(uri, d)
}

// drop goes back to the file of a document.
func (s *Server) drop(uri string, d *document) {
	delete(s.open, uri)
	if s.site != nil && d.file != "" {
		s.site.Drop(d.file)
	}
	s.judgeSoon()
}

// didChangeWatchedFiles looks again at files that another program has changed.
func (s *Server) didChangeWatchedFiles(p watchedParams) (any, error) {
	if s.site == nil {
		return nil, nil
	}
	var files []string
	for _, c := range p.Changes {
		if file := s.root.file(c.URI); file != "" {
			files = append(files, file)
		}
	}
	if len(files) > 0 {
		s.site.Look(files...)
		s.judgeSoon()
	}
	return nil, nil
}

// write puts a document into the site.
func (s *Server) write(d *document) {
	if s.site != nil && d.file != "" {
		s.site.Write(d.file, d.text)
	}
}

func notOpen(uri string) error {
	return &jsonrpc2.Error{Code: jsonrpc2.CodeInvalidParams, Message: fmt.Sprintf("%s is not open", uri)}
}

// paperOf gives a file of the site by lines, as its author sees it; nil if there
// is none.
func (s *Server) paperOf(file string) *paper {
	for _, d := range s.open {
		if d.file == file {
			return d.paper
		}
	}
	text := s.site.Text(file)
	if text == nil {
		return nil
	}
	return newPaper(text, s.wide)
}

// document gives an open document of the site; nil if it is none.
func (s *Server) document(d textDocument) *document {
	doc := s.open[d.URI]
	if doc == nil || s.site == nil || doc.file == "" {
		return nil
	}
	return doc
}
