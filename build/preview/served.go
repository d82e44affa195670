package preview

import (
	"bytes"
	"fmt"
	"slices"
)

// served is the page with what makes it a preview, right at the beginning of
// its head. Take away what stands between the two comments, and it is the page
// again.
func (v *view) served() []byte {
	head := fmt.Appendf(nil, opening+`<script type="application/json" id="stillroom-notes" data-preview data-version="%s" data-notes="%s">%s</script>`+
		`<link rel="stylesheet" href="%spage.css" data-preview>`+modules+closing,
		v.version, v.noted, v.notes, own)
	i := bytes.Index(v.html, []byte("<head>"))
	if i < 0 {
		return slices.Concat(v.html, head)
	}
	i += len("<head>")
	return slices.Concat(v.html[:i], head, v.html[i:])
}

// modules are the preview's scripts. Those that the first one calls for are
// fetched along with it.
const modules = `<link rel="modulepreload" href="` + own + `swap.js" data-preview><link rel="modulepreload" href="` + own + `state.js" data-preview>` +
	`<link rel="modulepreload" href="` + own + `slips.js" data-preview><link rel="modulepreload" href="` + own + `tag.js" data-preview>` +
	`<link rel="modulepreload" href="` + own + `look.js" data-preview><script type="module" src="` + own + `preview.js" data-preview></script>`

const (
	own     = "/.stillroom/" // where the preview's own files stand; no page has such an address
	opening = "<!--preview-->"
	closing = "<!--/preview-->"
)
