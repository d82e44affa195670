package ship

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"net"
	"os"
	"strings"
	"syscall"

	"github.com/pkg/sftp"
)

// explain says what an error of a server means.
func (p *sftpPlace) explain(err error) error {
	var unknown *stranger
	var name *net.DNSError
	var bare noSubsystem
	var status *sftp.StatusError
	var op *net.OpError
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return err
	case errors.As(err, &unknown):
		return unknown
	case errors.As(err, &bare):
		return fmt.Errorf("the host lets %s in, but offers no SFTP; ask whoever runs it to switch it on", p.server.user)
	case strings.Contains(err.Error(), "unable to authenticate"):
		return p.server.notLetIn()
	case errors.Is(err, os.ErrPermission):
		return fmt.Errorf("%s may not write below %s; the folder must be theirs, or their group's", p.server.user, p.base)
	case errors.As(err, &name):
		return fmt.Errorf("there is no host %s: is it spelt right, and is this machine online?", p.server.host)
	case errors.Is(err, syscall.ECONNREFUSED):
		return fmt.Errorf("nothing answers at %s: is the port right?", p.server.address())
	case errors.As(err, &op) && op.Timeout():
		return fmt.Errorf("%s did not answer for %s", p.server.address(), p.times.stalled)
	case errors.As(err, &status):
		return fmt.Errorf("the host could not: %s; is its disk full?", strings.Trim(status.Error(), `"`))
	case p.passing(err):
		return errors.New("the connection broke off")
	}
	return err
}

// notLetIn says which keys were tried, by the names of their files.
func (s *server) notLetIn() error {
	why := "none of the keys is one that it knows"
	if len(s.notes) > 0 {
		why = strings.Join(s.notes, "; ")
	}
	return fmt.Errorf("the host does not let %s in (%s); put your public key into its ~/.ssh/authorized_keys", s.user, why)
}

// passing reports whether a new connection may help. One that could never be
// made will not be: then the address is wrong.
func (p *sftpPlace) passing(err error) bool {
	var status *sftp.StatusError
	if errors.As(err, &status) {
		return status.FxCode() == sftp.ErrSSHFxConnectionLost || status.FxCode() == sftp.ErrSSHFxNoConnection
	}
	for _, e := range []error{sftp.ErrSSHFxConnectionLost, io.EOF, io.ErrUnexpectedEOF, net.ErrClosed, syscall.ECONNRESET, syscall.EPIPE} {
		if errors.Is(err, e) {
			return true
		}
	}
	p.mu.Lock()
	defer p.mu.Unlock()
	var network net.Error
	return p.known && errors.As(err, &network)
}
