package main

import (
	"regexp"
	"slices"
	"strings"

	"github.com/alecthomas/kong"

	"stillroom/build/labels"
)

// An outline is what a command takes, as shells and the manual have to know it.
type outline struct {
	Name    string
	Summary string // from the page of usage
	Flags   []option
	Words   []string // what its arguments may be, where that can be told
	Files   bool     // its arguments are files or folders
}

// An option is a flag of a command.
type option struct {
	Name    string // without the hyphens
	Summary string // the first clause of what the command's page says of it; empty if that is elsewhere
	Value   bool   // a value follows
	Words   []string
	Files   bool
}

// offered are the words that stand for something in the program, by the command
// and the argument or flag that takes them.
var offered = map[string]func() []string{
	"rules id":        func() []string { return vocabulary().Rules },
	"processes words": func() []string { return vocabulary().Processes },
	"start --process": func() []string { return vocabulary().Processes },
	"labels --sheet":  labels.Names,
}

// paths are what pages and commands call an argument that is a file or a folder.
var paths = []string{"SITE", "DIR", "FILE", "PATH"}

// outlines lists the commands, in the order of the page of usage.
func outlines() []outline {
	parser := kong.Must(&commands{}, kong.NoDefaultHelp())
	var all []outline
	for _, node := range parser.Model.Leaves(false) {
		o := outline{Name: node.Name, Summary: inUsage(node.Name)}
		for _, arg := range node.Positional {
			o.Words = append(o.Words, words(node.Name+" "+arg.Name, arg)...)
			o.Files = o.Files || slices.Contains(paths, strings.ToUpper(arg.Name))
		}
		for _, f := range node.Flags {
			value, summary := inPage(pages[node.Name], f.Name)
			o.Flags = append(o.Flags, option{
				Name: f.Name, Summary: summary, Value: !f.IsBool(),
				Words: words(node.Name+" --"+f.Name, f.Value), Files: slices.Contains(paths, value),
			})
		}
		all = append(all, o)
	}
	return all
}

// words are what a value may be.
func words(name string, v *kong.Value) []string {
	if list := offered[name]; list != nil {
		return list()
	}
	var list []string
	for _, w := range v.EnumSlice() {
		if w != "" {
			list = append(list, w)
		}
	}
	return list
}

// inUsage is what the page of usage says of a command.
func inUsage(name string) string {
	line := regexp.MustCompile(`(?m)^    ` + name + ` .*?  +(\S.*)$`).FindStringSubmatch(usage)
	if line == nil {
		return ""
	}
	return line[1]
}

// inPage is what a command's page calls the value of a flag, and the first
// clause of what it says of the flag.
func inPage(page, flag string) (value, summary string) {
	entry := regexp.MustCompile(`(?m)^    --` + flag + `(?: (\S+))?  +(\S.*(?:\n {8,}\S.*)*)`).FindStringSubmatch(page)
	if entry == nil {
		return "", ""
	}
	text := strings.Join(strings.Fields(entry[2]), " ")
	text, _, _ = strings.Cut(text, ";")
	return strings.TrimSuffix(entry[1], "..."), text
}
