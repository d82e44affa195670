package ship

import (
	"errors"
	"fmt"
	"io/fs"
	"net"
	"os"
	"os/user"
	"path/filepath"
	"strings"
	"time"

	"github.com/kevinburke/ssh_config"
	"golang.org/x/crypto/ssh"
)

// A server is what is known of a host before it is called: what the address
// says, then ~/.ssh/config, then the system's.
type server struct {
	name    string // as the address has it
	host    string
	port    string
	user    string
	home    string
	keys    []string // the files of the user's own keys
	agent   string   // the socket of the agent, if one runs
	trusted []string // the files of known hosts
	alias   string   // the name under which the host is known, if it is another one
	notes   []string // why keys were passed over
}

// findServer reads what there is about a host.
func findServer(to Address) (*server, error) {
	home, err := os.UserHomeDir()
	if err != nil {
		return nil, fmt.Errorf("no home folder is known, so no keys and no known hosts: %w", err)
	}
	s := &server{name: to.host, user: to.user, port: to.port, home: home}
	var configs []*ssh_config.Config
	for _, name := range []string{filepath.Join(home, ".ssh", "config"), "/etc/ssh/ssh_config"} {
		c, err := readConfig(name)
		if err != nil {
			return nil, err
		}
		if c != nil {
			configs = append(configs, c)
		}
	}
	return s, s.fill(configs)
}

func readConfig(name string) (*ssh_config.Config, error) {
	text, err := os.ReadFile(name)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	if err != nil {
		return nil, err
	}
	c, err := ssh_config.DecodeBytes(text)
	if err != nil {
		return nil, fmt.Errorf("read %s: %w", name, err)
	}
	return c, nil
}

// fill takes from the configuration what the address does not say.
func (s *server) fill(configs []*ssh_config.Config) error {
	get := func(key string) string {
		all := getAll(configs, s.name, key)
		if len(all) == 0 {
			return ""
		}
		return all[0]
	}
	if jump := get("ProxyJump") + get("ProxyCommand"); jump != "" && jump != "none" {
		return fmt.Errorf("~/.ssh/config sends %s by way of another host, which Stillroom cannot: ship from a machine that reaches it", s.name)
	}
	s.host, s.alias = firstOf(strings.ReplaceAll(get("HostName"), "%h", s.name), s.name), get("HostKeyAlias")
	s.port = firstOf(s.port, get("Port"), "22")
	s.user = firstOf(s.user, get("User"), ownName())
	s.agent = os.Getenv("SSH_AUTH_SOCK")
	if a := get("IdentityAgent"); a != "" && a != "SSH_AUTH_SOCK" {
		s.agent = s.expand(a)
	}
	if s.agent == "none" {
		s.agent = ""
	}
	s.keys = s.expandAll(getAll(configs, s.name, "IdentityFile"), "~/.ssh/id_ed25519", "~/.ssh/id_ecdsa", "~/.ssh/id_rsa")
	s.trusted = s.expandAll(strings.Fields(get("UserKnownHostsFile")), "~/.ssh/known_hosts", "~/.ssh/known_hosts2")
	s.trusted = append(s.trusted, s.expandAll(strings.Fields(get("GlobalKnownHostsFile")), "/etc/ssh/ssh_known_hosts")...)
	return nil
}

func getAll(configs []*ssh_config.Config, host, key string) []string {
	var all []string
	for _, c := range configs {
		if values, err := c.GetAll(host, key); err == nil {
			all = append(all, values...)
		}
	}
	return all
}

func firstOf(texts ...string) string {
	for _, t := range texts {
		if t != "" {
			return t
		}
	}
	return ""
}

func ownName() string {
	if u, err := user.Current(); err == nil {
		return u.Username
	}
	return os.Getenv("USER")
}

func (s *server) expandAll(names []string, usual ...string) []string {
	if len(names) == 0 {
		names = usual
	}
	var all []string
	for _, n := range names {
		all = append(all, s.expand(n))
	}
	return all
}

// expand puts in what ssh_config(5) lets stand for something else.
func (s *server) expand(name string) string {
	name = strings.Trim(name, `"`)
	if rest, ok := strings.CutPrefix(name, "~/"); ok {
		name = filepath.Join(s.home, rest)
	}
	return strings.NewReplacer("%d", s.home, "%h", s.host, "%r", s.user, "%p", s.port, "%%", "%").Replace(name)
}

func (s *server) address() string { return net.JoinHostPort(s.host, s.port) }

// knownAs is the name under which the host's key is kept.
func (s *server) knownAs() string {
	if s.alias != "" {
		return net.JoinHostPort(s.alias, "22")
	}
	return s.address()
}

// config is for one connection.
func (s *server) config() *ssh.ClientConfig {
	s.notes = nil
	return &ssh.ClientConfig{
		User:              s.user,
		Auth:              []ssh.AuthMethod{ssh.PublicKeysCallback(s.signers)},
		HostKeyCallback:   s.verify,
		HostKeyAlgorithms: s.algorithms(),
		Timeout:           20 * time.Second,
	}
}
