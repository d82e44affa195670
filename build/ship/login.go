package ship

import (
	"cmp"
	"crypto/x509"
	"errors"
	"fmt"
	"net/url"
	"os"
	"path/filepath"
	"strings"

	"github.com/minio/minio-go/v7/pkg/credentials"
)

// A login is where a store answers and who asks. Keys come from where other
// programs look for them, and are never shown.
type login struct {
	host   string
	secure bool
	region string
	keys   *credentials.Credentials
	from   string // where the keys were found
	bundle string // a file of authorities of the user's own, if not empty
}

func findLogin() (login, error) {
	profile := cmp.Or(os.Getenv("AWS_PROFILE"), "default")
	set := profileSettings(profile)
	l := login{region: cmp.Or(os.Getenv("AWS_REGION"), os.Getenv("AWS_DEFAULT_REGION"), set["region"])}
	l.bundle = cmp.Or(os.Getenv("AWS_CA_BUNDLE"), set["ca_bundle"])
	endpoint := cmp.Or(os.Getenv("AWS_ENDPOINT_URL_S3"), os.Getenv("AWS_ENDPOINT_URL"), set["endpoint_url"])
	if err := l.answersAt(endpoint); err != nil {
		return l, err
	}
	return l, l.find(profile)
}

// answersAt takes the address of the store. Without one it is the store that
// gave the protocol its name.
func (l *login) answersAt(endpoint string) error {
	if endpoint == "" {
		l.host, l.secure = "s3.amazonaws.com", true
		return nil
	}
	u, err := url.Parse(endpoint)
	if err != nil || u.Host == "" || u.User != nil || strings.Trim(u.Path, "/") != "" || u.Scheme != "https" && u.Scheme != "http" {
		return errors.New("AWS_ENDPOINT_URL_S3 (or AWS_ENDPOINT_URL, or endpoint_url in ~/.aws/config) is not such as https://store.example:9000")
	}
	l.host, l.secure, l.region = u.Host, u.Scheme == "https", cmp.Or(l.region, "us-east-1")
	return nil
}

// authorities are those that may vouch for the store: of the user's file, and
// none else, if there is one. Nil are those of the system.
func (l *login) authorities() (*x509.CertPool, error) {
	if l.bundle == "" {
		return nil, nil
	}
	text, err := os.ReadFile(l.bundle)
	if err != nil {
		return nil, fmt.Errorf("read the certificates that AWS_CA_BUNDLE names: %w", err)
	}
	pool := x509.NewCertPool()
	if !pool.AppendCertsFromPEM(text) {
		return nil, fmt.Errorf("%s, which AWS_CA_BUNDLE names, holds no certificate", l.bundle)
	}
	return pool, nil
}

// find looks for keys in the environment and then in the files. What a library
// says of a file that it cannot read may hold a line of it, so it is not
// repeated.
func (l *login) find(profile string) error {
	id, secret := os.Getenv("AWS_ACCESS_KEY_ID"), os.Getenv("AWS_SECRET_ACCESS_KEY")
	if id != "" && secret != "" {
		l.keys, l.from = credentials.NewStaticV4(id, secret, os.Getenv("AWS_SESSION_TOKEN")), "AWS_ACCESS_KEY_ID and AWS_SECRET_ACCESS_KEY"
		return nil
	}
	if id != "" || secret != "" {
		return errors.New("of AWS_ACCESS_KEY_ID and AWS_SECRET_ACCESS_KEY only one is set")
	}
	l.keys, l.from = credentials.NewFileAWSCredentials("", profile), fmt.Sprintf("the profile %s of ~/.aws/credentials", profile)
	v, err := l.keys.GetWithContext(nil)
	if err != nil || v.AccessKeyID == "" || v.SecretAccessKey == "" {
		return fmt.Errorf("no keys were found: set AWS_ACCESS_KEY_ID and AWS_SECRET_ACCESS_KEY, or write them into %s", l.from)
	}
	return nil
}

// profileSettings reads what a profile of ~/.aws/config says: name = value
// under [profile NAME], or under [default].
func profileSettings(profile string) map[string]string {
	name := os.Getenv("AWS_CONFIG_FILE")
	if home, err := os.UserHomeDir(); name == "" && err == nil {
		name = filepath.Join(home, ".aws", "config")
	}
	text, err := os.ReadFile(name)
	if err != nil {
		return nil
	}
	set := make(map[string]string)
	in := false
	for line := range strings.Lines(string(text)) {
		line = strings.TrimRight(line, "\r\n\t ")
		if strings.HasPrefix(line, "[") {
			head := strings.Join(strings.Fields(strings.Trim(line, "[]")), " ")
			in = head == "profile "+profile || head == profile && profile == "default"
			continue
		}
		key, value, ok := strings.Cut(line, "=")
		if in && ok && line[0] != ' ' && line[0] != '#' && line[0] != ';' {
			set[strings.TrimSpace(key)] = strings.TrimSpace(value)
		}
	}
	return set
}
