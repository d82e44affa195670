package build

import (
	"fmt"
	"maps"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// A thing on a disk is a folder with names in it, or a file.
type thing struct {
	names map[string]int // nil for a file
	text  string         // that of a file
}

// A change is one that the disk may have kept or not: of a thing itself, or of a name in a folder.
type change struct {
	on   int // the thing that must be synced to keep it
	make func(disk)
}

type disk map[int]thing

// A machine has a disk, and what was done since it was last synced.
type machine struct {
	now, kept disk
	since     []change
	root      string
	made      int
}

// lying is a machine on which a site lies, all of it synced.
func lying(t *testing.T, dir string) *machine {
	m := &machine{now: disk{0: {names: map[string]int{}}}, kept: disk{0: {names: map[string]int{}}}, root: filepath.Dir(dir)}
	for name, text := range onDisk(t, m.root) {
		on := 0
		for part := range strings.SplitSeq(filepath.Dir(name), "/") {
			if next, ok := m.now[on].names[part]; ok {
				on = next
			} else {
				on = m.put(on, part, thing{names: map[string]int{}})
			}
		}
		m.put(on, filepath.Base(name), thing{text: text})
	}
	m.sync()
	return m
}

// put makes a thing under a name.
func (m *machine) put(in int, name string, made thing) int {
	m.made++
	id := m.made
	m.change(in, func(d disk) {
		d[id] = thing{maps.Clone(made.names), made.text}
		d.name(in, name, id)
	})
	return id
}

func (m *machine) change(on int, make func(disk)) {
	make(m.now)
	m.since = append(m.since, change{on, make})
}

// sync keeps everything that was done, or what was done on some things.
func (m *machine) sync(on ...int) {
	rest := m.since[:0:0]
	for _, c := range m.since {
		if len(on) == 0 || c.on == on[0] {
			c.make(m.kept)
		} else {
			rest = append(rest, c)
		}
	}
	m.since = rest
}

// cut gives the disks that may be found after a power cut.
func (m *machine) cut() (found []disk) {
	n := len(m.since)
	for i := range n + 1 {
		found = append(found,
			m.with(func(j int) bool { return j < i }),
			m.with(func(j int) bool { return j >= i }),
			m.with(func(j int) bool { return j == i }),
			m.with(func(j int) bool { return j != i }))
	}
	return found
}

func (m *machine) with(chosen func(i int) bool) disk {
	d := make(disk)
	for id, x := range m.kept {
		d[id] = thing{maps.Clone(x.names), x.text}
	}
	for i, c := range m.since {
		if chosen(i) {
			c.make(d)
		}
	}
	return d
}

// name puts a name into a folder, or takes it out for a thing of -1. A folder that the disk does not have has no names.
func (d disk) name(in int, name string, id int) {
	folder, ok := d[in]
	switch {
	case !ok:
	case id < 0:
		delete(folder.names, name)
	default:
		folder.names[name] = id
	}
}

// site says which site a disk holds.
func (d disk) site(t *testing.T, dir string) string {
	t.Helper()
	got := make(map[string]string)
	d.list(d[0].names[filepath.Base(dir)], "", got)
	delete(got, ListName)
	for name, files := range map[string][]File{"old": first, "new": second} {
		want := make(map[string]string)
		for _, f := range files {
			want[f.Path] = string(bytesOf(t, f))
		}
		if maps.Equal(got, want) {
			return name
		}
	}
	t.Errorf("after a power cut there is neither site: %q", got)
	return "neither"
}

func (d disk) list(id int, at string, found map[string]string) {
	for name, next := range d[id].names {
		if x, ok := d[next]; !ok || x.names == nil {
			found[at+name] = x.text
		} else {
			d.list(next, at+name+"/", found)
		}
	}
}

var (
	quoted  = regexp.MustCompile(`(?:AT_FDCWD|\d+)<([^>]*)>, "([^"]*)"`)
	handled = regexp.MustCompile(`^(\w+)\(\d+<([^>]*)>`)
	gave    = regexp.MustCompile(`\) = (\d+)`)
)

// do does what a call did.
func (m *machine) do(t *testing.T, call string) {
	t.Helper()
	name, _, _ := strings.Cut(call, "(")
	var in []int // the folders and names that the call is about
	var names []string
	for _, q := range quoted.FindAllStringSubmatch(call, -1) {
		path := q[2]
		if !filepath.IsAbs(path) {
			path = filepath.Join(q[1], path)
		}
		in, names = append(in, m.at(filepath.Dir(path))), append(names, filepath.Base(path))
	}
	on := -1
	if o := handled.FindStringSubmatch(call); o != nil {
		on = m.at(o[2])
	}
	switch {
	case name == "openat":
		if _, there := m.now[in[0]].names[names[0]]; !there && strings.Contains(call, "O_CREAT") {
			m.put(in[0], names[0], thing{})
		}
	case name == "mkdirat":
		m.put(in[0], names[0], thing{names: map[string]int{}})
	case name == "unlinkat":
		m.change(in[0], func(d disk) { d.name(in[0], names[0], -1) })
	case name == "linkat":
		id := m.now[in[0]].names[names[0]]
		m.change(in[1], func(d disk) { d.name(in[1], names[1], id) })
	case name == "renameat2" && strings.Contains(call, "RENAME_EXCHANGE"):
		a, b := m.now[in[0]].names[names[0]], m.now[in[1]].names[names[1]]
		m.change(in[1], func(d disk) { d.name(in[0], names[0], b); d.name(in[1], names[1], a) })
	case name == "write":
		n, _ := strconv.Atoi(gave.FindStringSubmatch(call)[1])
		text := strings.TrimPrefix(call, "write(")
		_, text, _ = strings.Cut(text, ".next/")
		text, _, _ = strings.Cut(text, ">")
		m.change(on, func(d disk) {
			if x, ok := d[on]; ok {
				d[on] = thing{text: x.text + textAt(text)[len(x.text):len(x.text)+n]}
			}
		})
	case name == "fsync":
		m.sync(on)
	case name == "syncfs":
		m.sync()
	default:
		t.Fatalf("what becomes of the disk after %s?", call)
	}
}

// textAt is what the second site holds in a file.
func textAt(path string) string {
	for _, f := range second {
		if data, err := f.Bytes(); f.Path == path && err == nil {
			return string(data)
		}
	}
	return fmt.Sprintf("%10000s", "") // the list
}

// at is the thing that a path leads to.
func (m *machine) at(path string) int {
	rel, err := filepath.Rel(m.root, path)
	id := 0
	if err != nil || strings.HasPrefix(rel, "..") {
		return -1
	}
	for part := range strings.SplitSeq(rel, "/") {
		if part != "." {
			id = m.now[id].names[part]
		}
	}
	return id
}
