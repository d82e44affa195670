package ship

import (
	"errors"
	"fmt"
	"io/fs"
	"net"
	"os"

	"golang.org/x/crypto/ssh"
	"golang.org/x/crypto/ssh/agent"
)

// signers are the keys of the agent, and then those of the user's files that
// need no passphrase. No key and no part of one is ever shown.
func (s *server) signers() ([]ssh.Signer, error) {
	all := s.fromAgent()
	for _, name := range s.keys {
		text, err := os.ReadFile(name)
		if errors.Is(err, fs.ErrNotExist) {
			continue
		}
		if err != nil {
			s.notes = append(s.notes, fmt.Sprintf("%s cannot be read", name))
			continue
		}
		var locked *ssh.PassphraseMissingError
		key, err := ssh.ParsePrivateKey(text)
		switch {
		case errors.As(err, &locked):
			s.notes = append(s.notes, fmt.Sprintf("%s has a passphrase, so it counts only once it is in the agent: ssh-add %[1]s", name))
		case err != nil:
			s.notes = append(s.notes, fmt.Sprintf("%s holds no private key", name))
		default:
			all = append(all, key)
		}
	}
	if len(all) == 0 {
		s.notes = append(s.notes, "no agent and no file offers a key")
	}
	return all, nil
}

// fromAgent are the keys that an agent holds.
func (s *server) fromAgent() []ssh.Signer {
	if s.agent == "" {
		return nil
	}
	conn, err := net.Dial("unix", s.agent) // open as long as the program: it signs at every new connection
	if err != nil {
		s.notes = append(s.notes, "the agent does not answer")
		return nil
	}
	keys, err := agent.NewClient(conn).Signers()
	if err != nil {
		conn.Close()
		s.notes = append(s.notes, "the agent does not answer")
	}
	return keys
}
