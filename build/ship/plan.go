package ship

import (
	"cmp"
	"fmt"
	"io/fs"
	"maps"
	"path"
	"slices"
	"strings"
)

// A Plan is what a run has to do. Its lists are in the order in which it is
// done.
type Plan struct {
	Send    []Parcel
	Remove  []string
	Same    int      // files that are there as they should be
	Foreign []string // files and folders that Stillroom did not put there, and leaves alone

	known map[string]entry // what is there and ours
	all   []parcel
}

// size is how much travels, in bytes.
func (p *Plan) size() (sum int64) {
	for _, c := range p.Send {
		sum += c.Size
	}
	return sum
}

// A Parcel is a file that travels.
type Parcel struct {
	Path string
	Size int64
	New  bool // nothing of ours is there at its path

	turn turn
	parcel
}

// plan compares a site with what is there. takeOver has it replace what is in
// the way.
func plan(site []parcel, list map[string]entry, there map[string]found, takeOver bool) (*Plan, error) {
	p := &Plan{known: make(map[string]entry), all: site}
	wanted := make(map[string]bool, len(site))
	var clashes []string
	for _, c := range site {
		wanted[c.Path] = true
		f, is := there[c.Path]
		e, ours := list[c.Path]
		block := blocked(c.Path, there)
		switch {
		case block != "":
			return nil, fmt.Errorf("%s is in the way of %s: it is a link or a file, and may lead elsewhere; move it away", block, c.Path)
		case is && f.kind == folder:
			return nil, fmt.Errorf("the folder %s is in the way of the file; move it away", c.Path)
		case is && ours && f.kind == file && e.sum == c.sum && e.size == f.size && e.stamp == f.stamp:
			p.known[c.Path] = e
			p.Same++
			continue
		case is && !ours && !takeOver:
			clashes = append(clashes, c.Path)
		}
		if is && ours {
			p.known[c.Path] = entry{}
		}
		p.Send = append(p.Send, Parcel{c.Path, c.size, !is, turnOf(c.Path, !is), c})
	}
	if len(clashes) > 0 {
		return nil, fmt.Errorf("files are there that no list of Stillroom's names, and that the site would replace: %s; move them away, or have them replaced with --take-over", some(clashes))
	}
	p.sortRest(list, there, wanted)
	slices.SortStableFunc(p.Send, func(a, b Parcel) int { return cmp.Or(cmp.Compare(a.turn, b.turn), strings.Compare(a.Path, b.Path)) })
	return p, nil
}

// sortRest tells what is ours and goes from what is not and stays. Files that
// an earlier run was sending when it broke off go too.
func (p *Plan) sortRest(list map[string]entry, there map[string]found, wanted map[string]bool) {
	for _, at := range slices.Sorted(maps.Keys(there)) {
		f := there[at]
		e, ours := list[at]
		switch {
		case wanted[at] || at == listName || at == lockName:
		case ours && f.kind != folder:
			p.known[at] = e
			p.Remove = append(p.Remove, at)
		case f.kind == file && strings.HasSuffix(at, moving) && fs.ValidPath(at):
			p.Remove = append(p.Remove, at)
		case f.kind == folder:
			p.Foreign = append(p.Foreign, at+"/")
		default:
			p.Foreign = append(p.Foreign, at)
		}
	}
	slices.SortStableFunc(p.Remove, func(a, b string) int { return cmp.Compare(turnOf(b, false), turnOf(a, false)) })
}

// blocked names what stands where a folder above the path must be.
func blocked(p string, there map[string]found) string {
	for dir := path.Dir(p); dir != "."; dir = path.Dir(dir) {
		if f, is := there[dir]; is && f.kind != folder {
			return dir
		}
	}
	return ""
}

// some names the first few of many.
func some(names []string) string {
	const few = 5
	if len(names) <= few {
		return strings.Join(names, ", ")
	}
	return fmt.Sprintf("%s and %d more", strings.Join(names[:few], ", "), len(names)-few)
}

// A turn says when a file is sent. Nothing of a turn is sent before all of the
// turn before is there; what is removed goes in the opposite order.
type turn byte

const (
	needed    turn = iota // what pages point at: assets, pictures, recordings, data
	newPages              // to which nothing leads yet
	feeds                 // which lead to new pages, as do the sitemap and the robots' list
	oldPages              // pages that are there and change
	listPages             // pages that list pages
	homePage
)

// turnOf gives the turn of a file. A compressed copy goes with the file that
// it is a copy of.
func turnOf(p string, isNew bool) turn {
	p = strings.TrimSuffix(strings.TrimSuffix(p, ".gz"), ".br")
	page := strings.HasSuffix(p, ".html") || strings.HasSuffix(p, ".htm")
	depth := strings.Count(p, "/")
	switch {
	case page && isNew && depth > 0:
		return newPages
	case page && depth > 1:
		return oldPages
	case p == "index.html":
		return homePage
	case page:
		return listPages
	case depth == 0 && !strings.HasSuffix(p, ".webmanifest"):
		return feeds
	}
	return needed
}
