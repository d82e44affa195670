package main

import "slices"

const usage = `Stillroom makes a website of your recipes for keeping food, and refuses to
publish a canning recipe that no tested process stands behind.

    stillroom COMMAND [SITE]

SITE is the folder that holds content/; the current folder if you leave it out.

    start DIR            write the starter site into a new or empty folder
    start recipe NAME    begin a recipe, or an episode, as a draft to fill in
    check [SITE]         judge everything and write nothing
    preview [SITE]       look at the site while you write it
    editor [SITE]        answer a text editor while you write (a language server)
    publish [SITE]       check, then write the whole site
    fill FILE            write into a recipe the values of the process it cites
    scale FILE           work a recipe out for other than one batch
    labels FILE          draw a sheet of jar labels as a PDF file
    notes FILE           print an episode's show notes, to paste elsewhere
    calendar [SITE]      tell what is ripe, scheduled, or due to be done again
    import FILE...       move recipes in from saved pages, and episodes from a feed
    rules [ID]           list the rules, or explain one with its source
    processes [WORDS]    list tested processes, or show one in full
    schema [SORT]        print the JSON Schema of the front matter, for editors
    completion SHELL     print what makes bash, zsh or fish complete commands
    manual               print all of this as a page for man

Every command tells more with --help, and gives an example; --version tells
which Stillroom this is.
It ends with 0 if all is well, 1 if the site has errors, 2 if it could not run.
`

// pages are what the commands say of themselves.
var pages = map[string]string{
	"start":      startHelp,
	"check":      checkHelp,
	"preview":    previewHelp,
	"editor":     editorHelp,
	"publish":    publishHelp,
	"fill":       fillHelp,
	"scale":      scaleHelp,
	"labels":     labelsHelp,
	"notes":      notesHelp,
	"calendar":   calendarHelp,
	"import":     importHelp,
	"rules":      rulesHelp,
	"processes":  processesHelp,
	"schema":     schemaHelp,
	"completion": completionHelp,
	"manual":     manualHelp,
}

// helpFor gives the page that is asked for: stillroom help, stillroom --help,
// stillroom help check, stillroom check SITE --help.
func helpFor(args []string) (page string, ok bool) {
	if end := slices.Index(args, "--"); end >= 0 {
		args = args[:end]
	}
	asked := len(args) > 0 && args[0] == "help" || slices.Contains(args, "--help") || slices.Contains(args, "-h")
	if !asked {
		return "", false
	}
	for _, a := range args {
		if page, ok := pages[a]; ok {
			return page, true
		}
	}
	return usage, true
}

// named gives the command line as far as its command, if it has one.
func named(args []string) string {
	for _, a := range args {
		if _, ok := pages[a]; ok {
			return "stillroom " + a
		}
	}
	return "stillroom"
}
