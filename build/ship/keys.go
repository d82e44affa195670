package ship

import (
	"errors"
	"fmt"
	"io/fs"
	"net"
	"os"
	"time"

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
	const patience = 20 * time.Second
	keys, err := agentKeys(s.agent, patience)
	if err != nil {
		s.notes = append(s.notes, "the agent does not answer")
	}
	return keys
}

// agentKeys asks the agent at a socket for its keys. One that is slow to sign may
// be waiting for its owner, and is waited for.
func agentKeys(socket string, patience time.Duration) ([]ssh.Signer, error) {
	conn, err := net.DialTimeout("unix", socket, patience) // open as long as the program: it signs at every new connection
	if err != nil {
		return nil, err
	}
	conn.SetDeadline(time.Now().Add(patience))
	keys, err := agent.NewClient(conn).Signers()
	if err != nil {
		conn.Close()
		return nil, err
	}
	conn.SetDeadline(time.Time{})
	return keys, nil
}
