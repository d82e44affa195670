package ship

import (
	"encoding/pem"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/johannesboyne/gofakes3"
	"github.com/johannesboyne/gofakes3/backend/s3mem"
)

// bareHome is a home and an environment in which no store is spoken of.
func bareHome(t *testing.T) (home string) {
	home = t.TempDir()
	t.Setenv("HOME", home)
	for _, name := range strings.Fields("AWS_ACCESS_KEY_ID AWS_SECRET_ACCESS_KEY AWS_SESSION_TOKEN AWS_PROFILE AWS_REGION AWS_DEFAULT_REGION " +
		"AWS_ENDPOINT_URL AWS_ENDPOINT_URL_S3 AWS_CA_BUNDLE AWS_CONFIG_FILE AWS_SHARED_CREDENTIALS_FILE HTTPS_PROXY https_proxy") {
		t.Setenv(name, "")
	}
	if err := os.Mkdir(filepath.Join(home, ".aws"), 0o700); err != nil {
		t.Fatal(err)
	}
	return home
}

func write600(t *testing.T, name, text string) {
	t.Helper()
	if err := os.WriteFile(name, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
}

// Keys, region and address are found where other programs look for them:
// common practice, as the documentation of the protocol's makers has it.
func TestFindLogin(t *testing.T) {
	files := map[string]string{
		"credentials": "[default]\naws_access_key_id = plum\naws_secret_access_key = stone\n" +
			"[guest]\naws_access_key_id = pear\naws_secret_access_key = core\naws_session_token = today\n",
		"config": "[default]\nregion = north\n[profile guest]\nregion = south\nendpoint_url = https://store.example:9000\nca_bundle = /own.pem\n",
	}
	type found struct{ id, secret, token, region, host, bundle string }
	for _, tt := range []struct {
		name string
		set  map[string]string
		want found
	}{
		{"files", nil, found{"plum", "stone", "", "north", "s3.amazonaws.com", ""}},
		{"a profile", map[string]string{"AWS_PROFILE": "guest"}, found{"pear", "core", "today", "south", "store.example:9000", "/own.pem"}},
		{"the environment comes first", map[string]string{
			"AWS_PROFILE": "guest", "AWS_ACCESS_KEY_ID": "fig", "AWS_SECRET_ACCESS_KEY": "seed", "AWS_SESSION_TOKEN": "now",
			"AWS_REGION": "east", "AWS_ENDPOINT_URL_S3": "http://127.0.0.1:9", "AWS_CA_BUNDLE": "/other.pem",
		}, found{"fig", "seed", "now", "east", "127.0.0.1:9", "/other.pem"}},
	} {
		home := bareHome(t)
		for name, text := range files {
			write600(t, filepath.Join(home, ".aws", name), text)
		}
		for name, value := range tt.set {
			t.Setenv(name, value)
		}
		l, err := findLogin()
		if err != nil {
			t.Errorf("%s: %v", tt.name, err)
			continue
		}
		v, err := l.keys.GetWithContext(nil)
		if got := (found{v.AccessKeyID, v.SecretAccessKey, v.SessionToken, l.region, l.host, l.bundle}); err != nil || got != tt.want {
			t.Errorf("%s: %v, %v, want %v", tt.name, got, err, tt.want)
		}
	}
}

// A store whose certificate its owner has made is trusted by whoever has that
// certificate, and by nobody else.
func TestOwnCertificate(t *testing.T) {
	home := bareHome(t)
	backend := s3mem.New()
	if err := backend.CreateBucket("larder"); err != nil {
		t.Fatal(err)
	}
	srv := httptest.NewTLSServer(gofakes3.New(backend).Server())
	defer srv.Close()
	own, empty := filepath.Join(home, "own.pem"), filepath.Join(home, "empty.pem")
	write600(t, own, string(pem.EncodeToMemory(&pem.Block{Type: "CERTIFICATE", Bytes: srv.Certificate().Raw})))
	write600(t, empty, "")
	t.Setenv("AWS_ACCESS_KEY_ID", "jam")
	t.Setenv("AWS_SECRET_ACCESS_KEY", "canary5ecret")
	for _, tt := range []struct{ address, bundle, want string }{
		{srv.URL, "", "shows no good certificate"},
		{srv.URL, empty, "holds no certificate"},
		{srv.URL, filepath.Join(home, "none.pem"), "read the certificates that AWS_CA_BUNDLE names"},
		{strings.Replace(srv.URL, "https", "http", 1), own, "answers 400"}, // TLS asked in the clear
		{srv.URL, own, ""},
	} {
		t.Setenv("AWS_ENDPOINT_URL_S3", tt.address)
		t.Setenv("AWS_CA_BUNDLE", tt.bundle)
		r := &Run{To: Address{kind: "s3", host: "larder", path: "www"}, Seat: "this"}
		r.times = times{beat: time.Hour, silence: time.Hour, stalled: 5 * time.Second, again: make([]time.Duration, 2)}
		_, err := r.Ship(t.Context(), edition(0))
		if (err == nil) != (tt.want == "") || err != nil && !strings.Contains(err.Error(), tt.want) {
			t.Errorf("%s with %q: %v, want an error with %q", tt.address, tt.bundle, err, tt.want)
		}
		if err != nil && strings.Contains(err.Error(), "canary5ecret") {
			t.Errorf("the secret is told: %v", err)
		}
	}
}

// Where nothing ever answered the run ends at once, and says what to look at.
func TestStoreNotThere(t *testing.T) {
	bareHome(t)
	srv := httptest.NewServer(http.NotFoundHandler())
	srv.Close()
	t.Setenv("AWS_ACCESS_KEY_ID", "jam")
	t.Setenv("AWS_SECRET_ACCESS_KEY", "canary5ecret")
	t.Setenv("AWS_ENDPOINT_URL_S3", srv.URL)
	r := &Run{To: Address{kind: "s3", host: "larder"}}
	r.times = usualTimes
	r.times.again = []time.Duration{time.Hour}
	if _, err := r.Ship(t.Context(), nil); err == nil || !strings.Contains(err.Error(), "is AWS_ENDPOINT_URL_S3 right?") {
		t.Error(err)
	}
}
