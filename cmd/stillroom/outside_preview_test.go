package main

import (
	"context"
	"os"
	"os/exec"
	"path/filepath"
	"testing"
	"time"
)

// An author writes with the preview in Chromium beside the editor. What is asked of it is told in the script.
func TestPreviewInBrowser(t *testing.T) {
	if testing.Short() {
		t.Skip("a browser takes its time; run without -short")
	}
	need(t, "chromium-headless-shell")
	drive(t, "preview.mjs", 5*time.Minute)
}

// drive has a script of .ci/checks use the program, which it starts itself.
func drive(t *testing.T, script string, most time.Duration) {
	t.Helper()
	exe, err := os.Executable() // which is stillroom under that name: see TestMain
	if err != nil {
		t.Fatal(err)
	}
	ctx, cancel := context.WithTimeout(t.Context(), most)
	defer cancel()
	c := exec.CommandContext(ctx, "node", filepath.Join(tools, script), exe)
	if said, err := c.CombinedOutput(); err != nil {
		t.Errorf("%v\n%s", err, said)
	}
}
