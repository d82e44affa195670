package main

import (
	"errors"
	"regexp"
	"strings"

	"github.com/alecthomas/kong"

	"stillroom/content"
)

// commands are what can be asked for. The arguments of each are fields of its
// own type.
type commands struct {
	Start      startCommand      `cmd:""`
	Check      checkCommand      `cmd:""`
	Preview    previewCommand    `cmd:""`
	Editor     editorCommand     `cmd:""`
	Publish    publishCommand    `cmd:""`
	Fill       fillCommand       `cmd:""`
	Scale      scaleCommand      `cmd:""`
	Labels     labelsCommand     `cmd:""`
	Notes      notesCommand      `cmd:""`
	Calendar   calendarCommand   `cmd:""`
	Import     importCommand     `cmd:""`
	Rules      rulesCommand      `cmd:""`
	Processes  processesCommand  `cmd:""`
	Schema     schemaCommand     `cmd:""`
	Completion completionCommand `cmd:""`
	Manual     manualCommand     `cmd:""`
}

// A command does its work and gives the exit status.
type command interface {
	run(p *program) int
}

// parse reads the arguments. The error names the nearest command or flag if one
// is misspelt.
func parse(args []string) (command, error) {
	parser, err := kong.New(&commands{}, kong.Name("stillroom"), kong.NoDefaultHelp())
	if err != nil {
		panic(err) // the commands above are not as kong wants them
	}
	ctx, err := parser.Parse(spread(args))
	if err != nil {
		return nil, errors.New(inPlainWords(err.Error()))
	}
	return ctx.Selected().Target.Addr().Interface().(command), nil
}

// inPlainWords says what kong says for whoever typed the arguments.
func inPlainWords(s string) string {
	for _, k := range kongSays {
		s = k.says.ReplaceAllString(s, k.plain)
	}
	return s
}

var kongSays = []struct {
	says  *regexp.Regexp
	plain string
}{
	{regexp.MustCompile(`^(--\S+): expected .* but got "EOL".*$`), "$1 needs a value"},
	{regexp.MustCompile(`^(--\S+): expected a valid 64 bit int but got (".*")$`), "$1: $2 is no whole number"},
	{regexp.MustCompile(`^expected "<(\w+)>.*$`), "$1 is needed"},
	{regexp.MustCompile(`^missing flags: (.*)$`), "$1 is needed"},
	{regexp.MustCompile(`(--\w+)=([A-Z]+\b)`), "$1 $2"},
}

// spread lets a flag be followed by several paths: --only A B is read as
// --only=A --only=B. A number below zero is the value of the flag before it, and
// no flag of its own.
func spread(args []string) []string {
	var all []string
	only := false
	for _, a := range args {
		switch {
		case len(all) > 0 && below0.MatchString(a) && valueless.MatchString(all[len(all)-1]):
			all[len(all)-1] += "=" + a
		case strings.HasPrefix(a, "-"):
			only = a == "--only"
			all = append(all, a)
		case only && all[len(all)-1] == "--only":
			all[len(all)-1] += "=" + a
		case only:
			all = append(all, "--only="+a)
		default:
			all = append(all, a)
		}
	}
	return all
}

var (
	below0    = regexp.MustCompile(`^-[0-9.¼½¾]`)
	valueless = regexp.MustCompile(`^--[^=]+$`)
)

// A day is a flag's YYYY-MM-DD.
type day struct{ content.Date }

// UnmarshalText reads a day.
func (d *day) UnmarshalText(text []byte) (err error) {
	d.Date, err = content.ParseDate(string(text))
	return err
}
