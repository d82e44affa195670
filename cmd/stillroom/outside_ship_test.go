package main

import (
	"bytes"
	"context"
	"crypto/ed25519"
	"encoding/pem"
	"fmt"
	"io/fs"
	"net"
	"os"
	"os/exec"
	"os/user"
	"path/filepath"
	"regexp"
	"strings"
	"sync/atomic"
	"testing"
	"time"

	"github.com/minio/minio-go/v7"
	"github.com/minio/minio-go/v7/pkg/credentials"
	"github.com/rogpeppe/go-internal/txtar"
	"golang.org/x/crypto/ssh"
)

// A site is shipped to servers that others wrote, each a process of its own that answers on this machine alone. They say
// whether our keys, names, headers and renames are as servers want them, and what is left when the line breaks.

// A harbour is a server, the folder of this machine in which it keeps what is shipped, and a line to it that can be cut.
type harbour struct {
	to   string
	dir  string
	line *cutLine
}

const canary = "canary5ecret0f7he7est"

// openSSHServer is OpenSSH, with keys and settings of its own.
func openSSHServer(t *testing.T) harbour {
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
	answering(t, port, program, "-D", "-e", "-f", filepath.Join(home, "sshd_config"))
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

func TestOutsideShip(t *testing.T) {
	if testing.Short() {
		t.Skip("needs servers; run without -short")
	}
	for _, tt := range []struct {
		name string
		open func(*testing.T) harbour
	}{{"OpenSSH", openSSHServer}, {"versitygw", s3Server}} {
		t.Run(tt.name, func(t *testing.T) { voyages(t, tt.open(t)) })
	}
}

// voyages ships a site, and the same with another recipe, whole and cut off.
func voyages(t *testing.T, h harbour) {
	folder := shippedLarder(t)
	want := filepath.Join(t.TempDir(), "want")
	publishTo := func(to string, more ...string) (string, int) {
		var out bytes.Buffer
		status := run(append([]string{"publish", folder, "--day", "2026-10-01", "--to", to}, more...), strings.NewReader(""), &out, &out)
		if strings.Contains(out.String(), canary) {
			t.Errorf("a secret is told:\n%s", &out)
		}
		return out.String(), status
	}
	ship := func(more ...string) string {
		t.Helper()
		said, status := publishTo(h.to, more...)
		if status != succeeded {
			t.Fatalf("status %d\n%s", status, said)
		}
		return said
	}
	arrived := func() {
		t.Helper()
		if said, status := publishTo(want); status != succeeded {
			t.Fatal(said)
		}
		if differ := differences(t, want, h.dir); differ != "" {
			t.Fatal(differ)
		}
	}
	if said := ship("--dry-run"); !regexp.MustCompile(`(?m)^send    new .*  index.html$`).MatchString(said) {
		t.Errorf("--dry-run:\n%s", said)
	}
	if _, err := os.Stat(h.dir); err == nil {
		t.Error("--dry-run has made the folder")
	}
	ship()
	arrived()
	if said := ship(); !strings.Contains(said, " 0 files sent") {
		t.Errorf("nothing had changed:\n%s", said)
	}
	if strings.HasPrefix(h.to, "s3") {
		headersArrive(t, h)
	}

	// Killed, or cut off for once, at moments of a run that sends and removes a third of it.
	program := filepath.Join(t.TempDir(), "stillroom")
	self, err := os.Executable()
	if err == nil {
		err = os.Symlink(self, program) // under that name the test is the program: see TestMain
	}
	if err != nil {
		t.Fatal(err)
	}
	whole := h.line.passed.Load()
	killed := 0
	const cuts = 8
	for i := range int64(cuts) {
		name := filepath.Join(folder, "content/recipes/kraut.md")
		lay(t, name, regexp.MustCompile("Cabbage( [0-9]+)?").ReplaceAllString(readFile(t, name), fmt.Sprintf("Cabbage %d", i)))
		lay(t, filepath.Join(folder, "themes/enamel/files/style.css"), fmt.Sprintf("body{margin:%dpx}", i))
		cmd := exec.CommandContext(t.Context(), program, "publish", folder, "--day", "2026-10-01", "--to", h.to)
		h.line.cutAfter(whole*(i+1)/(cuts*3), func() {
			if i%4 != 0 {
				cmd.Process.Kill()
			}
		})
		said, err := cmd.CombinedOutput()
		h.line.mend()
		if dead := deadLinks(t, h.dir); dead != "" {
			t.Fatalf("cut %d: %s\n%s", i, dead, said)
		}
		if err != nil {
			killed++
			ship()
		}
		arrived()
	}
	t.Logf("%d of %d runs were killed and ended by the next", killed, cuts)
	if killed < cuts/3 {
		t.Errorf("only %d of %d runs were killed", killed, cuts)
	}

	// What is not ours stays, and is named.
	lay(t, filepath.Join(h.dir, "recipes", "mine.txt"), "mine")
	os.Remove(filepath.Join(folder, "content/recipes/kraut.md"))
	if said := ship(); !strings.Contains(said, "Left alone, since Stillroom did not put it there: recipes/mine.txt.") {
		t.Errorf("nothing of a file that is not ours:\n%s", said)
	}
	if readFile(t, filepath.Join(h.dir, "recipes", "mine.txt")) != "mine" {
		t.Error("a file of the author's own was changed")
	}
	os.Remove(filepath.Join(h.dir, "recipes", "mine.txt"))
	arrived()

	// A list that is lost leads to a question, not to loss.
	os.Remove(filepath.Join(h.dir, ".stillroom"))
	if said, status := publishTo(h.to); status != failed || !strings.Contains(said, "--take-over") {
		t.Errorf("without a list: %d\n%s", status, said)
	}
	ship("--take-over")
	arrived()
	refusals(t, h, publishTo)
}

// refusals are what a server must not let pass, or we must not.
func refusals(t *testing.T, h harbour, publish func(string, ...string) (string, int)) {
	home := os.Getenv("HOME")
	refuse := func(what, want string) {
		t.Helper()
		said, status := publish(h.to)
		if status != failed || !regexp.MustCompile(want).MatchString(said) {
			t.Errorf("%s: status %d\n%s", what, status, said)
		}
	}
	if strings.HasPrefix(h.to, "s3") {
		t.Setenv("AWS_SECRET_ACCESS_KEY", canary+"wrong")
		refuse("a wrong secret", `s3://larder/www: 127.0.0.1:\d+ does not accept the keys \(SignatureDoesNotMatch\), which are from AWS_ACCESS_KEY_ID`)
		t.Setenv("AWS_SECRET_ACCESS_KEY", "")
		refuse("no secret", `only one is set`)
		t.Setenv("AWS_ACCESS_KEY_ID", "")
		refuse("no keys", `no keys were found: set AWS_ACCESS_KEY_ID`)
		lay(t, filepath.Join(home, ".aws", "credentials"), "[default]\naws_access_key_id = jam\naws_secret_access_key "+canary+"\n")
		refuse("a file that cannot be read", `no keys were found`)
		lay(t, filepath.Join(home, ".aws", "credentials"), "[default]\naws_access_key_id = jam\naws_secret_access_key = "+canary+"\n")
		lay(t, filepath.Join(home, ".aws", "config"), "[default]\nregion = us-east-1\n[profile other]\nregion = other\n")
		if said, status := publish(h.to); status != succeeded {
			t.Errorf("keys from a file: %s", said)
		}
		if said, _ := publish("s3://cellar/www"); !strings.Contains(said, "there is no bucket cellar") {
			t.Errorf("a bucket that is not there: %s", said)
		}
		return
	}
	known := filepath.Join(home, ".ssh", "known_hosts")
	right := readFile(t, known)
	writeKey(t, filepath.Join(home, "other_key"))
	other, _ := ssh.ParsePrivateKey([]byte(readFile(t, filepath.Join(home, "other_key"))))
	lay(t, known, fmt.Sprintf("[127.0.0.1]:%d %s", h.line.port, ssh.MarshalAuthorizedKey(other.PublicKey())))
	refuse("another host key", `shows another key \(SHA256:.*known_hosts line 1 knows`)
	lay(t, known, "")
	said, status := publish(h.to)
	line := regexp.MustCompile(`(?m)^\[127\.0\.0\.1\]:\d+ ssh-ed25519 \S+$`).FindString(said)
	if status != failed || !strings.Contains(said, "the host is not known, so nothing was sent") || line+"\n" != right {
		t.Errorf("an unknown host: status %d, line %q\n%s", status, line, said)
	}
	lay(t, known, line)
	if said, status := publish(h.to); status != succeeded {
		t.Errorf("with the line that was told: %s", said)
	}
	key := filepath.Join(home, ".ssh", "id_ed25519")
	good := readFile(t, key)
	lay(t, key, readFile(t, filepath.Join(home, "other_key")))
	refuse("another key", `does not let \S+ in \(none of the keys is one that it knows\)`)
	raw, err := ssh.ParseRawPrivateKey([]byte(good))
	if err != nil {
		t.Fatal(err)
	}
	block, err := ssh.MarshalPrivateKeyWithPassphrase(raw, "", []byte(canary))
	if err != nil {
		t.Fatal(err)
	}
	lay(t, key, string(pem.EncodeToMemory(block)))
	refuse("a key with a passphrase", `id_ed25519 has a passphrase, so it counts only once it is in the agent: ssh-add`)
	lay(t, key, good)
	lay(t, filepath.Join(home, ".ssh", "config"), fmt.Sprintf("Host pantry\n  HostName 127.0.0.1\n  Port %d\n  IdentityFile ~/.ssh/id_ed25519\n", h.line.port))
	if said, status := publish("sftp://pantry" + h.dir); status != succeeded {
		t.Errorf("by a name of ~/.ssh/config: %s", said)
	}
}

// headersArrive asks the store for files as a reader's browser gets them: HC-01, HC-02 and SE-06 of the table of standards.
func headersArrive(t *testing.T, h harbour) {
	store, err := minio.New(fmt.Sprintf("127.0.0.1:%d", h.line.port), &minio.Options{Creds: credentials.NewStaticV4("jam", canary, "")})
	if err != nil {
		t.Fatal(err)
	}
	style, err := filepath.Glob(filepath.Join(h.dir, "assets", "style.*.css"))
	if err != nil || len(style) == 0 {
		t.Fatal("no style", err)
	}
	for name, want := range map[string][2]string{
		"index.html":                        {"text/html; charset=utf-8", "no-cache"},
		"recipes.atom":                      {"application/atom+xml", "no-cache"},
		"assets/" + filepath.Base(style[0]): {"text/css; charset=utf-8", "public, max-age=31536000, immutable"},
	} {
		o, err := store.GetObject(t.Context(), "larder", "www/"+name, minio.GetObjectOptions{})
		if err != nil {
			t.Fatal(err)
		}
		info, err := o.Stat()
		if got := [2]string{info.ContentType, info.Metadata.Get("Cache-Control")}; err != nil || got != want {
			t.Errorf("%s: %q, %v, want %q", name, got, err, want)
		}
	}
}

// shippedLarder is a small site with a theme of its own over ours.
func shippedLarder(t *testing.T) string {
	ar, err := txtar.ParseFile("../../testdata/script/publish.txtar")
	if err != nil {
		t.Fatal(err)
	}
	dir := t.TempDir()
	for _, f := range ar.Files {
		name := f.Name
		if name == "good.md" {
			name = "larder/content/recipes/damson-jam.md"
		}
		lay(t, filepath.Join(dir, name), string(f.Data))
	}
	return filepath.Join(dir, "larder")
}

// differences compares what was shipped with what was published into a folder.
func differences(t *testing.T, want, got string) string {
	clean := t.TempDir()
	if err := os.CopyFS(clean, os.DirFS(got)); err != nil {
		t.Fatal(err)
	}
	os.Remove(filepath.Join(clean, ".stillroom"))
	plain := t.TempDir()
	if err := os.CopyFS(plain, os.DirFS(want)); err != nil {
		t.Fatal(err)
	}
	os.Remove(filepath.Join(plain, ".stillroom"))
	return difference(plain, clean)
}

var ownLinks = regexp.MustCompile(`(?:href|src)="?(/[^" ><#]*)`)

// deadLinks names a page that leads to something that is not there.
func deadLinks(t *testing.T, dir string) (dead string) {
	err := filepath.WalkDir(dir, func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || filepath.Ext(name) != ".html" {
			return err
		}
		for _, m := range ownLinks.FindAllStringSubmatch(readFile(t, name), -1) {
			to := m[1]
			if strings.HasSuffix(to, "/") {
				to += "index.html"
			}
			to, _, _ = strings.Cut(to, "?")
			if _, err := os.Stat(filepath.Join(dir, filepath.FromSlash(to))); err != nil {
				dead = name + " leads to " + to
			}
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return dead
}

// lay writes a file, and makes the folders above it.
func lay(t *testing.T, name, text string) {
	t.Helper()
	if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
		t.Fatal(err)
	}
	put(t, name, text)
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

// A cutLine passes bytes on to a server. It is cut once after so many of them, and somebody is told.
type cutLine struct {
	port   int
	passed atomic.Int64
	cut    atomic.Pointer[cutting]
}

type cutting struct {
	at   int64
	done func()
}

func newLine(t *testing.T, to int) *cutLine {
	l, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	line := &cutLine{port: l.Addr().(*net.TCPAddr).Port}
	t.Cleanup(func() { l.Close() })
	go func() {
		for {
			c, err := l.Accept()
			if err != nil {
				return
			}
			s, err := net.Dial("tcp", fmt.Sprintf("127.0.0.1:%d", to))
			if err != nil {
				c.Close()
				continue
			}
			go line.pass(c, s)
			go line.pass(s, c)
		}
	}()
	return line
}

func (l *cutLine) mend() { l.cut.Store(nil) }

func (l *cutLine) cutAfter(n int64, done func()) {
	l.cut.Store(&cutting{l.passed.Load() + n, done})
}

func (l *cutLine) pass(from, to net.Conn) {
	defer from.Close()
	defer to.Close()
	piece := make([]byte, 4<<10)
	for {
		n, err := from.Read(piece)
		passed := l.passed.Add(int64(n))
		if c := l.cut.Load(); c != nil && passed > c.at && l.cut.CompareAndSwap(c, nil) {
			c.done()
			return
		}
		if err != nil {
			return
		}
		if _, err := to.Write(piece[:n]); err != nil {
			return
		}
	}
}
