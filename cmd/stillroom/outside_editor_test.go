package main

import (
	"testing"
	"time"
)

// A text editor writes with the language server behind it. What is asked of it is told in the script.
func TestEditorFromOutside(t *testing.T) {
	need(t)
	drive(t, "editor.mjs", 2*time.Minute)
}
