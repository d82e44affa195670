package ship

import (
	"errors"
	"fmt"
	"net"
	"os"

	"golang.org/x/crypto/ssh"
	"golang.org/x/crypto/ssh/knownhosts"
)

// A stranger is a host whose key is not known, or another one than is known.
type stranger struct {
	server *server
	key    ssh.PublicKey
	known  []knownhosts.KnownKey
	cause  error // if it is neither: the key was revoked, or its certificate is not good
}

func (e *stranger) Error() string {
	print := ssh.FingerprintSHA256(e.key)
	switch {
	case e.cause != nil:
		return fmt.Sprintf("the key of the host was refused: %v", e.cause)
	case len(e.known) > 0:
		k := e.known[0]
		return fmt.Sprintf("the host shows another key (%s) than %s line %d knows: somebody may stand between. "+
			"Ask whoever runs it whether its key was changed; if it was, replace that line by this one:\n%s", print, k.Filename, k.Line, e.line())
	}
	return fmt.Sprintf("the host is not known, so nothing was sent to it. Its key has the fingerprint %s. "+
		"Compare that with what whoever runs the host has published; if it is the same, add this line to %s:\n%s", print, e.server.trusted[0], e.line())
}

func (e *stranger) line() string {
	return knownhosts.Line([]string{knownhosts.Normalize(e.server.knownAs())}, e.key)
}

// verify lets a host pass whose key is known. There is no way around it.
func (s *server) verify(_ string, remote net.Addr, key ssh.PublicKey) error {
	known, err := s.known()
	if err != nil {
		return err
	}
	err = known(s.knownAs(), remote, key)
	var mismatch *knownhosts.KeyError
	switch {
	case err == nil:
		return nil
	case errors.As(err, &mismatch):
		return &stranger{server: s, key: key, known: mismatch.Want}
	}
	return &stranger{server: s, key: key, cause: err}
}

func (s *server) known() (ssh.HostKeyCallback, error) {
	var files []string
	for _, name := range s.trusted {
		if _, err := os.Stat(name); err == nil {
			files = append(files, name)
		}
	}
	return knownhosts.New(files...)
}

// algorithms asks the host for a key of a sort that is known of it: of several
// it would else show whichever comes first. Nil leaves the choice to it.
func (s *server) algorithms() []string {
	known, err := s.known()
	if err != nil {
		return nil // verify says so
	}
	var mismatch *knownhosts.KeyError
	if !errors.As(known(s.knownAs(), &net.TCPAddr{IP: net.IPv4zero}, noKey{}), &mismatch) {
		return nil
	}
	var all []string
	for _, k := range mismatch.Want {
		if k.Key.Type() == ssh.KeyAlgoRSA {
			all = append(all, ssh.KeyAlgoRSASHA512, ssh.KeyAlgoRSASHA256)
			continue
		}
		all = append(all, k.Key.Type())
	}
	return all
}

// noKey is a key that no host has.
type noKey struct{}

func (noKey) Type() string                        { return "none" }
func (noKey) Marshal() []byte                     { return []byte("none") }
func (noKey) Verify([]byte, *ssh.Signature) error { return errors.New("no key") }
