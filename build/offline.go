package build

// An OfflinePage stands for all pages that a reader's browser has not kept when
// there is no network. The worker writes into it which it has.
type OfflinePage struct{ Shell }

func (e *edition) offlinePage() *OfflinePage {
	p := &OfflinePage{e.shell(leaf{
		address:     "/offline.html",
		name:        "The road to the larder is closed",
		description: "There is no network: these recipes were kept in this browser.",
	})}
	p.Hidden, p.Canonical, p.Share = true, "", nil
	return p
}

// keepsCopies reports whether readers' browsers keep what they open of the
// recipes. A theme that leaves offline.js empty wants that not.
func (a *Assets) keepsCopies() bool { return len(a.own["offline.js"]) > 0 }

// worker is /offline.js, the service worker that keeps recipes: at the root of
// the site, since it answers for pages below its own folder only. Where none is
// wanted, there stands one that takes the one of before out of browsers.
// https://www.w3.org/TR/service-workers/
func (e *edition) worker() []File {
	script := e.assets.own["goodbye.js"]
	if e.assets.keepsCopies() {
		script = e.assets.own["offline.js"]
	}
	return []File{NewFile("offline.js", script)}
}
