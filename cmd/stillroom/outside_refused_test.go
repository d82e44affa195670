package main

import (
	"encoding/pem"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"golang.org/x/crypto/ssh"
)

// What a server must not let pass, or we must not.

func (s shipper) refused(t *testing.T, what, want string) {
	t.Helper()
	said, status := s.publish(t, s.to)
	if status != failed || !regexp.MustCompile(want).MatchString(said) {
		t.Errorf("%s: status %d\n%s", what, status, said)
	}
}

func (s shipper) keysRefused(t *testing.T) {
	aws := filepath.Join(os.Getenv("HOME"), ".aws")
	t.Setenv("AWS_SECRET_ACCESS_KEY", canary+"wrong")
	s.refused(t, "a wrong secret", `s3://larder/www: 127.0.0.1:\d+ does not accept the keys \(SignatureDoesNotMatch\), which are from AWS_ACCESS_KEY_ID`)
	t.Setenv("AWS_SECRET_ACCESS_KEY", canary)
	t.Setenv("AWS_SESSION_TOKEN", canary+"token")
	s.publish(t, s.to) // whether or not the store minds, nothing is told
	t.Setenv("AWS_SESSION_TOKEN", "")
	t.Setenv("AWS_SECRET_ACCESS_KEY", "")
	s.refused(t, "no secret", `only one is set`)
	t.Setenv("AWS_ACCESS_KEY_ID", "")
	s.refused(t, "no keys", `no keys were found: set AWS_ACCESS_KEY_ID`)
	lay(t, filepath.Join(aws, "credentials"), "[default]\naws_access_key_id = jam\naws_secret_access_key "+canary+"\n")
	s.refused(t, "a file that cannot be read", `no keys were found`)
	lay(t, filepath.Join(aws, "credentials"), "[default]\naws_access_key_id = jam\naws_secret_access_key = "+canary+"\n")
	lay(t, filepath.Join(aws, "config"), "[default]\nregion = us-east-1\n[profile other]\nregion = other\n")
	if said, status := s.publish(t, s.to); status != succeeded {
		t.Errorf("keys from a file: %s", said)
	}
	if said, _ := s.publish(t, "s3://cellar/www"); !strings.Contains(said, "there is no bucket cellar") {
		t.Errorf("a bucket that is not there: %s", said)
	}
}

func (s shipper) hostsRefused(t *testing.T) {
	home := os.Getenv("HOME")
	known := filepath.Join(home, ".ssh", "known_hosts")
	right := readFile(t, known)
	_, other := writeKey(t, filepath.Join(home, "other_key"))
	lay(t, known, fmt.Sprintf("[127.0.0.1]:%d %s", s.line.port, ssh.MarshalAuthorizedKey(other)))
	s.refused(t, "another host key", `shows another key \(SHA256:.*known_hosts line 1 knows`)
	lay(t, known, "")
	said, status := s.publish(t, s.to)
	line := regexp.MustCompile(`(?m)^\[127\.0\.0\.1\]:\d+ ssh-ed25519 \S+$`).FindString(said)
	if status != failed || !strings.Contains(said, "the host is not known, so nothing was sent") || line+"\n" != right {
		t.Errorf("an unknown host: status %d, line %q\n%s", status, line, said)
	}
	lay(t, known, line)
	if said, status := s.publish(t, s.to); status != succeeded {
		t.Errorf("with the line that was told: %s", said)
	}
}

func (s shipper) userRefused(t *testing.T) {
	home := os.Getenv("HOME")
	key := filepath.Join(home, ".ssh", "id_ed25519")
	good := readFile(t, key)
	writeKey(t, key)
	s.refused(t, "another key", `does not let \S+ in \(none of the keys is one that it knows\)`)
	raw, err := ssh.ParseRawPrivateKey([]byte(good))
	if err != nil {
		t.Fatal(err)
	}
	block, err := ssh.MarshalPrivateKeyWithPassphrase(raw, "", []byte(canary))
	if err != nil {
		t.Fatal(err)
	}
	lay(t, key, string(pem.EncodeToMemory(block)))
	s.refused(t, "a key with a passphrase", `id_ed25519 has a passphrase, so it counts only once it is in the agent: ssh-add`)
	lay(t, key, good)
	lay(t, filepath.Join(home, ".ssh", "config"), fmt.Sprintf("Host pantry\n  HostName 127.0.0.1\n  Port %d\n  IdentityFile ~/.ssh/id_ed25519\n", s.line.port))
	if said, status := s.publish(t, "sftp://pantry"+s.dir); status != succeeded {
		t.Errorf("by a name of ~/.ssh/config: %s", said)
	}
}
