package main

import (
	"bytes"
	"context"
	"crypto/ed25519"
	"encoding/pem"
	"fmt"
	"net"
	"os"
	"os/exec"
	"os/user"
	"path/filepath"
	"testing"
	"time"

	"golang.org/x/crypto/ssh"
)

// A harbour is a server, the folder of this machine in which it keeps what is shipped, and a line to it that can be cut.
type harbour struct {
	to   string
	dir  string
	line *cutLine
}

const canary = "canary5ecret0f7he7est"

// openSSHServer is OpenSSH, with keys and settings of its own.
func openSSHServer(t *testing.T) harbour { return openSSHWithin(t) }

// openSSHWithin has another program start it.
func openSSHWithin(t *testing.T, starter ...string) harbour {
	needProgram(t, "sshd", "apt-get install -y --no-install-recommends openssh-server")
	home := newHome(t)
	_, hostKey := writeKey(t, filepath.Join(home, "host_key"))
	_, userKey := writeKey(t, filepath.Join(home, ".ssh", "id_ed25519"))
	lay(t, filepath.Join(home, "authorized_keys"), string(ssh.MarshalAuthorizedKey(userKey)))
	port := freePort(t)
	lay(t, filepath.Join(home, "sshd_config"), fmt.Sprintf("ListenAddress 127.0.0.1:%d\nHostKey %[2]s/host_key\nAuthorizedKeysFile %[2]s/authorized_keys\n"+
		"PidFile none\nUsePAM no\nStrictModes no\nPasswordAuthentication no\nKbdInteractiveAuthentication no\nMaxStartups 100\nSubsystem sftp internal-sftp\n", port, home))
	os.MkdirAll("/run/sshd", 0o755) // root's needs it
	program, _ := exec.LookPath("sshd")
	if program == "" {
		program = "/usr/sbin/sshd"
	}
	command := append(starter, program, "-D", "-e", "-f", filepath.Join(home, "sshd_config"))
	answering(t, port, command[0], command[1:]...)
	line := newLine(t, port)
	lay(t, filepath.Join(home, ".ssh", "known_hosts"), fmt.Sprintf("[127.0.0.1]:%d %s", line.port, ssh.MarshalAuthorizedKey(hostKey)))
	me, err := user.Current()
	if err != nil {
		t.Fatal(err)
	}
	dir := filepath.Join(home, "www")
	return harbour{fmt.Sprintf("sftp://%s@127.0.0.1:%d%s", me.Username, line.port, dir), dir, line}
}

// s3Server is versitygw, which keeps objects as files.
func s3Server(t *testing.T) harbour {
	needProgram(t, "versitygw", "go install github.com/versity/versitygw/cmd/versitygw@v1.8.0")
	newHome(t)
	root := t.TempDir()
	port := freePort(t)
	answering(t, port, "versitygw", "--access", "jam", "--secret", canary, "--port", fmt.Sprintf("127.0.0.1:%d", port), "--quiet", "posix", root)
	if err := os.Mkdir(filepath.Join(root, "larder"), 0o755); err != nil { // a folder is a bucket
		t.Fatal(err)
	}
	line := newLine(t, port)
	t.Setenv("AWS_ACCESS_KEY_ID", "jam")
	t.Setenv("AWS_SECRET_ACCESS_KEY", canary)
	t.Setenv("AWS_ENDPOINT_URL_S3", fmt.Sprintf("http://127.0.0.1:%d", line.port))
	return harbour{"s3://larder/www", filepath.Join(root, "larder", "www"), line}
}

func needProgram(t *testing.T, name, how string) {
	t.Helper()
	_, err := exec.LookPath(name)
	if _, found := os.Stat("/usr/sbin/" + name); err == nil || found == nil {
		return
	}
	why := fmt.Sprintf("missing: %s. To get it: %s", name, how)
	if os.Getenv("STILLROOM_CHECKERS") == "required" {
		t.Fatal(why)
	}
	t.Skip(why)
}

// newHome is a home without keys and settings, and with the usual cache.
func newHome(t *testing.T) string {
	home := t.TempDir()
	t.Setenv("XDG_CACHE_HOME", filepath.Join(home, ".cache"))
	t.Setenv("HOME", home)
	for _, name := range []string{"SSH_AUTH_SOCK", "AWS_PROFILE", "AWS_ENDPOINT_URL", "AWS_REGION", "AWS_DEFAULT_REGION", "AWS_SESSION_TOKEN", "HTTP_PROXY", "http_proxy"} {
		t.Setenv(name, "")
	}
	return home
}

func writeKey(t *testing.T, name string) (ed25519.PrivateKey, ssh.PublicKey) {
	_, key, err := ed25519.GenerateKey(nil)
	if err != nil {
		t.Fatal(err)
	}
	block, err := ssh.MarshalPrivateKey(key, "")
	if err != nil {
		t.Fatal(err)
	}
	lay(t, name, string(pem.EncodeToMemory(block)))
	if err := os.Chmod(name, 0o600); err != nil {
		t.Fatal(err)
	}
	public, err := ssh.NewPublicKey(key.Public())
	if err != nil {
		t.Fatal(err)
	}
	return key, public
}

func freePort(t *testing.T) int {
	l, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	defer l.Close()
	return l.Addr().(*net.TCPAddr).Port
}

// answering runs a server until the test ends, and waits until it answers.
func answering(t *testing.T, port int, program string, args ...string) {
	ctx, stop := context.WithCancel(context.Background())
	cmd := exec.CommandContext(ctx, program, args...)
	var said bytes.Buffer
	cmd.Stdout, cmd.Stderr = &said, &said
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { stop(); cmd.Wait() })
	for range 200 {
		if c, err := net.Dial("tcp", fmt.Sprintf("127.0.0.1:%d", port)); err == nil {
			c.Close()
			return
		}
		time.Sleep(50 * time.Millisecond)
	}
	t.Fatalf("%s does not answer\n%s", program, &said)
}
