package main

import (
	"context"
	"os"
	"os/exec"
	"path/filepath"
	"testing"
	"time"
)

// A text editor writes with the language server behind it. What is asked of it is told in the script.
func TestEditorFromOutside(t *testing.T) {
	need(t)
	exe, err := os.Executable() // which is stillroom under that name: see TestMain
	if err != nil {
		t.Fatal(err)
	}
	ctx, cancel := context.WithTimeout(t.Context(), 2*time.Minute)
	defer cancel()
	c := exec.CommandContext(ctx, "node", filepath.Join(tools, "editor.mjs"), exe)
	if said, err := c.CombinedOutput(); err != nil {
		t.Errorf("%v\n%s", err, said)
	}
}
