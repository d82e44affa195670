package main

import (
	"bytes"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// record gives an episode of 52 minutes, 50 MB, to the site: frames of MPEG 1, layer III, 128 kbit/s at 44.1 kHz (ISO/IEC 11172-3).
func record(t *testing.T, site string) {
	t.Helper()
	var sound bytes.Buffer
	frame := append([]byte{0xff, 0xfb, 0x90, 0x00}, make([]byte, 413)...)
	for n := 0; sound.Len() < 50e6; n++ {
		copy(frame[4:], []byte{byte(n) & 0x7f, byte(n>>7) & 0x7f, byte(n>>14) & 0x7f}) // no two alike, so that a part sent twice shows
		sound.Write(frame)
	}
	lay(t, filepath.Join(site, "content/episodes/kraut.mp3"), sound.String())
	lay(t, filepath.Join(site, "content/episodes/kraut.md"),
		"---\nname: Kraut\nnumber: 1\npublished: 2026-09-30\nsummary: Cabbage and salt.\naudio: {file: kraut.mp3}\n---\nCabbage.\n")
	settings := filepath.Join(site, "content/site.yaml")
	lay(t, settings, readFile(t, settings)+"programme:\n  name: Larder talk\n  summary: Of jars.\n  category: Food\n  explicit: false\n"+
		"  owner: {name: Ada Sloe, email: ada@larder.example}\n  feed_id: 05f56159-bd34-5bd8-986d-a4f5fe2955d7\n")
}

// recordingTravels: a line that breaks in the middle of a recording leaves a site that holds together, and the next run brings it.
func (s shipper) recordingTravels(t *testing.T, program string) {
	record(t, s.folder)
	cmd := exec.CommandContext(t.Context(), program, "publish", s.folder, "--day", "2026-10-01", "--to", s.to)
	s.line.cutAfter(25e6, func() { cmd.Process.Kill() })
	said, err := cmd.CombinedOutput()
	s.line.mend()
	if err == nil {
		t.Fatalf("25 MB were never sent:\n%s", said)
	}
	if dead := deadLinks(t, s.dir); dead != "" {
		t.Errorf("%s\n%s", dead, said)
	}
	if page := readFile(t, filepath.Join(s.dir, "index.html")); strings.Contains(page, "/show-notes/kraut/") {
		t.Error("a page leads to the episode before its recording is there")
	}
	s.ship(t)
	s.arrived(t)
}
