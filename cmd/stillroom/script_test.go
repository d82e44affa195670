package main

import (
	"bytes"
	"encoding/base64"
	"errors"
	"flag"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

var update = flag.Bool("update", false, "write what is printed into testdata/script")

// programs are what the test binary is under other names; a system may add its
// own.
var programs = map[string]func(){"stillroom": main, "floor": floorMain}

func TestMain(m *testing.M) {
	testscript.Main(m, programs)
}

// Each script is a session at a keyboard: what is typed, what is printed, what
// is on disk afterwards and what is not.
func TestScript(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir:                 "../../testdata/script",
		RequireExplicitExec: true,
		UpdateScripts:       *update,
		Cmds: map[string]func(*testscript.TestScript, bool, []string){
			"exits":    exits,
			"keep":     keep,
			"same":     same,
			"unbase64": unbase64,
		},
	})
}

// exits is "exits STATUS COMMAND ARGS...": it runs a command, which must end
// with just that status.
func exits(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 2 {
		ts.Fatalf("usage: exits STATUS COMMAND ARGS...")
	}
	want, err := strconv.Atoi(args[0])
	ts.Check(err)
	got := 0
	var exit *exec.ExitError
	if err := ts.Exec(args[1], args[2:]...); errors.As(err, &exit) {
		got = exit.ExitCode()
	} else {
		ts.Check(err)
	}
	if got != want {
		ts.Fatalf("%s ended with %d, want %d", args[1], got, want)
	}
}

// keep is "keep DIR COPY": it takes a copy of a folder.
func keep(ts *testscript.TestScript, neg bool, args []string) {
	ts.Check(os.CopyFS(ts.MkAbs(args[1]), os.DirFS(ts.MkAbs(args[0]))))
}

// unbase64 is "unbase64 TEXT FILE": it writes the bytes that a text stands for.
func unbase64(ts *testscript.TestScript, neg bool, args []string) {
	data, err := base64.StdEncoding.DecodeString(ts.ReadFile(args[0]))
	ts.Check(err)
	ts.Check(os.MkdirAll(filepath.Dir(ts.MkAbs(args[1])), 0o777))
	ts.Check(os.WriteFile(ts.MkAbs(args[1]), data, 0o666))
}

// same is "same A B": two folders hold the same files, to the byte.
func same(ts *testscript.TestScript, neg bool, args []string) {
	diff := difference(ts.MkAbs(args[0]), ts.MkAbs(args[1]))
	if (diff == "") == neg {
		ts.Fatalf("%s and %s: %s", args[0], args[1], diff)
	}
}

// difference names a path at which two folders differ; empty if there is none.
func difference(a, b string) string {
	for _, pair := range [][2]string{{a, b}, {b, a}} {
		from, to := pair[0], pair[1]
		var found string
		err := filepath.WalkDir(from, func(name string, d fs.DirEntry, err error) error {
			rel, _ := filepath.Rel(from, name)
			if err != nil || d.IsDir() {
				return err
			}
			one, err := os.ReadFile(name)
			if err != nil {
				return err
			}
			other, err := os.ReadFile(filepath.Join(to, rel))
			if err != nil || !bytes.Equal(one, other) {
				found = rel
				return fs.SkipAll
			}
			return nil
		})
		if err != nil {
			return err.Error()
		}
		if found != "" {
			return found
		}
	}
	return ""
}
