package preview

import (
	"embed"
	"fmt"
	"net/http"

	"stillroom/build"
)

//go:embed browser/*.js browser/*.css
var browser embed.FS

// serveOwn gives what belongs to the preview and to no page.
func (p *Preview) serveOwn(w http.ResponseWriter, r *http.Request, name string) {
	switch name {
	case "events":
		p.serveEvents(w, r)
	case "findings":
		p.now.Load().serveFindings(w)
	case "look.js": // a style for what stands apart from the page's own
		style, err := browser.ReadFile("browser/look.css")
		if err != nil {
			panic(err)
		}
		w.Header().Set("Content-Type", build.MediaType(name))
		fmt.Fprintf(w, "export default %s;\n", inJSON(string(style)))
	default:
		data, err := browser.ReadFile("browser/" + name)
		if err != nil {
			http.NotFound(w, r)
			return
		}
		w.Header().Set("Content-Type", build.MediaType(name))
		w.Write(data)
	}
}

// serveEvents tells a browser whenever the page that it shows has become
// another one, or its notes have. https://html.spec.whatwg.org/multipage/server-sent-events.html
func (p *Preview) serveEvents(w http.ResponseWriter, r *http.Request) {
	query := r.URL.Query()
	address, last := query.Get("page"), query.Has("last")
	page, noted := query.Get("html"), query.Get("notes")
	w.Header().Set("Content-Type", "text/event-stream")
	out := http.NewResponseController(w)
	fmt.Fprint(w, "retry: 300\n\n")
	for {
		s := p.now.Load()
		if v := s.view(address, last); v.version != page || v.noted != noted {
			page, noted = v.version, v.noted
			fmt.Fprintf(w, "data: {\"html\":%q,\"version\":%q,\"notes\":%s}\n\n", page, noted, v.notes)
		}
		if out.Flush() != nil {
			return
		}
		select {
		case <-s.over:
		case <-r.Context().Done():
			return
		case <-p.end:
			return
		}
	}
}
