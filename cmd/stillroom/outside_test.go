package main

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// The example site is published once and handed to checkers that others wrote: they, not we, say what good HTML, an
// accessible page or a sound feed is. Each checker is also set on damaged copies, and must refuse them, so that none
// passes for having looked at nothing. The scripts, schemas and versions are in .ci/checks.

const (
	example = "../.." // the repository is itself a site
	tools   = example + "/.ci/checks"
)

// An outsider is a checker that others wrote.
type outsider struct {
	name     string
	source   string   // the standard that it speaks for
	programs []string // what it needs besides the packages of .ci/checks
	command  func(site) []string
	damages  []damage
}

// A damage is done to a copy of the site, which the outsider must then refuse, saying why.
type damage struct {
	name string
	do   func(t *testing.T, dir string)
	says string // a regular expression
}

func TestOutside(t *testing.T) {
	if testing.Short() {
		t.Skip("the outside checkers take minutes; run without -short")
	}
	s, c := publishExample(t), newCrew(t)
	t.Run("side by side", func(t *testing.T) {
		for _, o := range slices.Concat(pageCheckers, stoveCheckers, searchCheckers, offlineCheckers, listeningCheckers, dataCheckers, feedCheckers, paperCheckers) {
			t.Run(o.name, func(t *testing.T) {
				t.Parallel()
				o.judge(t, c, s)
			})
		}
	})
	t.Run(lighthouse.name, func(t *testing.T) { lighthouse.judge(t, c, s) }) // measures time, so it runs alone
}

// judge has the outsider accept the site and refuse each damaged copy of it.
func (o outsider) judge(t *testing.T, c *crew, s site) {
	need(t, o.programs...)
	t.Run("accepts", func(t *testing.T) {
		if said, err := c.run(t, o.command(s)); err != nil {
			t.Errorf("%s (%s): %v\n%s", o.name, o.source, err, said)
		}
	})
	for _, d := range o.damages {
		t.Run("refuses "+d.name, func(t *testing.T) {
			damaged := s.damaged(t)
			damaged.fault = d.says
			d.do(t, damaged.dir)
			said, err := c.run(t, o.command(damaged))
			if err == nil {
				t.Errorf("%s accepted it\n%s", o.name, said)
			} else if !regexp.MustCompile(d.says).MatchString(said) {
				t.Errorf("%s refused it without a word of %q: %v\n%s", o.name, d.says, err, said)
			}
		})
	}
}

// script is the command that runs a script of .ci/checks.
func script(name string, args ...string) []string {
	return append([]string{"node", filepath.Join(tools, name)}, args...)
}

// need skips the test where a checker is not installed, and fails it where STILLROOM_CHECKERS says that all are.
func need(t *testing.T, programs ...string) {
	t.Helper()
	var missing []string
	for _, p := range append([]string{"node"}, programs...) {
		if _, err := exec.LookPath(p); err != nil {
			missing = append(missing, p)
		}
	}
	if _, err := os.Stat(filepath.Join(tools, "node_modules")); err != nil {
		missing = append(missing, ".ci/checks/node_modules")
	}
	if missing == nil {
		return
	}
	why := fmt.Sprintf(`missing: %s. On Debian, as root, "bash .ci/run" installs every checker and runs every test; or only install them:
	apt-get install -y --no-install-recommends nodejs npm default-jre-headless chromium-headless-shell fish fonts-dejavu-core jing libxml2-utils mandoc openssl poppler-utils zsh
	npm ci --prefix .ci/checks --ignore-scripts`, strings.Join(missing, ", "))
	if os.Getenv("STILLROOM_CHECKERS") == "required" {
		t.Fatal(why)
	}
	t.Skip(why)
}
