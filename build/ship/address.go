package ship

import (
	"cmp"
	"errors"
	"fmt"
	"net"
	"net/url"
	"path"
	"strings"
)

// An Address says where a site goes: sftp://[USER@]HOST[:PORT]/PATH, where a
// path that begins with /~/ is in the user's own folder, or s3://BUCKET/PREFIX.
type Address struct {
	kind string // sftp or s3
	user string
	host string // the bucket of a store
	port string // empty for the usual one
	path string // absolute; of a store without the stroke at its beginning
}

// IsAddress reports whether a destination is an address, and not a folder of
// this machine.
func IsAddress(to string) bool { return strings.Contains(to, "://") }

// ParseAddress reads an address. The error never repeats what may be a secret.
func ParseAddress(to string) (Address, error) {
	u, err := url.Parse(to)
	if err != nil {
		scheme, _, _ := strings.Cut(to, "://")
		return Address{}, fmt.Errorf("the destination %s://... is not an address such as %s", scheme, examples)
	}
	if _, secret := u.User.Password(); secret || u.Scheme == "s3" && u.User != nil {
		return Address{}, fmt.Errorf("the destination at %s holds a password: leave it out, since an address is shown and kept in histories; %s", u.Host, instead(u.Scheme))
	}
	if u.RawQuery != "" || u.Fragment != "" || u.Host == "" {
		return Address{}, fmt.Errorf("%s is not an address such as %s", u.Redacted(), examples)
	}
	switch u.Scheme {
	case "sftp":
		return sftpAddress(u)
	case "s3":
		if u.Port() != "" {
			return Address{}, fmt.Errorf("%s: a bucket has no port; where the store answers is said by AWS_ENDPOINT_URL_S3", u.Redacted())
		}
		return Address{kind: "s3", host: u.Host, path: strings.Trim(path.Clean("/"+u.Path), "/")}, nil
	}
	return Address{}, fmt.Errorf("%s: a site goes into a folder, to %s, and nowhere else", u.Redacted(), examples)
}

const examples = "sftp://user@host/path or s3://bucket/prefix"

// instead says where secrets of a kind of place belong.
func instead(scheme string) string {
	if scheme == "s3" {
		return "keys belong into AWS_ACCESS_KEY_ID and AWS_SECRET_ACCESS_KEY, or into ~/.aws/credentials"
	}
	return "a key belongs into ~/.ssh or an agent"
}

func sftpAddress(u *url.URL) (Address, error) {
	if u.Path == "" {
		return Address{}, fmt.Errorf("%s says no folder: write sftp://%s/path, or sftp://%[2]s/~/path for one in your own", u.Redacted(), u.Host)
	}
	if u.Hostname() == "" {
		return Address{}, errors.New("the destination names no host; an address is such as " + examples)
	}
	return Address{"sftp", u.User.Username(), u.Hostname(), u.Port(), path.Clean(u.Path)}, nil
}

// String gives the address as it is shown.
func (a Address) String() string {
	u := url.URL{Scheme: a.kind, Host: a.host, Path: "/" + strings.TrimPrefix(a.path, "/")}
	if a.port != "" {
		u.Host = net.JoinHostPort(a.host, a.port)
	} else if strings.Contains(a.host, ":") {
		u.Host = "[" + a.host + "]"
	}
	if a.user != "" {
		u.User = url.User(a.user)
	}
	return cmp.Or(strings.TrimSuffix(u.String(), "/"), u.String())
}
