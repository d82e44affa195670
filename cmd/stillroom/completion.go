package main

import (
	_ "embed"
	"fmt"
	"strings"
	"text/template"
)

const completionHelp = `Print what makes your shell complete the commands of stillroom.

    stillroom completion bash|zsh|fish

It completes commands, flags, the words that a flag takes, the ids of rules and
processes, and files. For example:

    stillroom completion bash

Write what it prints where your shell looks for such files:

    bash   ~/.local/share/bash-completion/completions/stillroom
    zsh    a folder of your fpath, as _stillroom
    fish   ~/.config/fish/completions/stillroom.fish

Write it again with each new Stillroom.
`

type completionCommand struct {
	Shell string `arg:"" enum:"bash,zsh,fish"`
}

//go:embed completion.tmpl
var completionText string

// completion holds a template for each shell. Words are lower-case letters, digits
// and hyphens; only summaries need quoting.
var completion = template.Must(template.New("").Funcs(template.FuncMap{
	"join":   strings.Join,
	"quote":  func(s string) string { return "'" + strings.ReplaceAll(s, "'", `'\''`) + "'" },
	"fish":   func(s string) string { return "'" + strings.NewReplacer(`\`, `\\`, "'", `\'`).Replace(s) + "'" },
	"square": strings.NewReplacer("[", `\[`, "]", `\]`).Replace,
}).Parse(completionText))

func (c *completionCommand) run(p *program) int {
	if err := completion.ExecuteTemplate(p.out, c.Shell, outlines()); err != nil {
		return p.fail(fmt.Errorf("write the completion: %w", err))
	}
	return succeeded
}
