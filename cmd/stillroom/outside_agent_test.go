package main

import (
	"bytes"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

// TestOutsideShipAgent has the key in the agent of OpenSSH and nowhere else: it is let in by it, and told plainly when the
// agent has no key, another one, or is gone. No line of a key is ever said.
func TestOutsideShipAgent(t *testing.T) {
	if testing.Short() {
		t.Skip("needs a server; run without -short")
	}
	needProgram(t, "ssh-agent", "apt-get install -y --no-install-recommends openssh-client")
	s := shipper{openSSHServer(t), shippedLarder(t)}
	key := filepath.Join(os.Getenv("HOME"), ".ssh", "id_ed25519")
	secret := strings.Split(readFile(t, key), "\n")[2]
	other := filepath.Join(os.Getenv("HOME"), "other_key")
	writeKey(t, other)
	end := startAgent(t)
	sshAdd(t, key)
	if err := os.Remove(key); err != nil {
		t.Fatal(err)
	}
	said := s.ship(t, "--dry-run") + s.ship(t)
	s.arrived(t)
	refused := func(what, want string) {
		t.Helper()
		now, status := s.publish(t, s.to)
		if status != failed || !strings.Contains(now, want) {
			t.Errorf("%s: status %d, no word of %q in\n%s", what, status, want, now)
		}
		said += now
	}
	sshAdd(t, "-D")
	refused("an empty agent", "no agent and no file offers a key")
	sshAdd(t, other)
	refused("another key in the agent", "none of the keys is one that it knows")
	end()
	refused("an agent that is gone", "the agent does not answer")
	if strings.Contains(said, secret) || strings.Contains(said, "PRIVATE") {
		t.Errorf("a key is told:\n%s", said)
	}
	s.arrived(t)
}

// startAgent runs an agent, which is found as usual, until the test or end ends it.
func startAgent(t *testing.T) (end func()) {
	dir, err := os.MkdirTemp("", "") // a socket's name has at most 107 bytes: unix(7)
	if err != nil {
		t.Fatal(err)
	}
	socket := filepath.Join(dir, "agent")
	cmd := exec.Command("ssh-agent", "-D", "-a", socket)
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	end = func() { cmd.Process.Kill(); cmd.Wait() }
	t.Cleanup(func() { end(); os.RemoveAll(dir) })
	t.Setenv("SSH_AUTH_SOCK", socket)
	for range 100 {
		if _, err := os.Stat(socket); err == nil {
			return end
		}
		time.Sleep(20 * time.Millisecond)
	}
	t.Fatal("ssh-agent makes no socket")
	return nil
}

func sshAdd(t *testing.T, arg string) {
	t.Helper()
	if said, err := exec.Command("ssh-add", arg).CombinedOutput(); err != nil {
		t.Fatalf("ssh-add %s: %v\n%s", arg, err, bytes.TrimSpace(said))
	}
}
