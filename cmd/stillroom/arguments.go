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
		return nil, errors.New(noValue.ReplaceAllString(err.Error(), "$1 needs a value"))
	}
	return ctx.Selected().Target.Addr().Interface().(command), nil
}

// noValue is what kong says of a flag that ends the line.
var noValue = regexp.MustCompile(`^(--\S+): expected .* but got "EOL".*$`)

// spread lets a flag be followed by several paths: --only A B is read as
// --only=A --only=B.
func spread(args []string) []string {
	var all []string
	only := false
	for _, a := range args {
		switch {
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

// A day is a flag's YYYY-MM-DD.
type day struct{ content.Date }

// UnmarshalText reads a day.
func (d *day) UnmarshalText(text []byte) (err error) {
	d.Date, err = content.ParseDate(string(text))
	return err
}
