package main

import (
	"errors"
	"fmt"
	"net"
	"os"
	"strconv"
	"strings"
	"syscall"

	"stillroom/build/preview"
)

// A door is where a preview answers browsers.
type door struct {
	net.Listener
	hosts     preview.Hosts
	addresses []string // to open in a browser, the one for this machine first
}

// usualAddress is where only this machine can look.
const usualAddress = "127.0.0.1:4747"

// open opens a door at the address that is asked for, and nowhere else. If none
// is, a port that is taken is no reason to stop.
func (c *previewCommand) open(p *program) (*door, error) {
	address := c.Address
	if address == "" {
		address = usualAddress
	}
	host, port, err := parseAddress(address)
	if err != nil {
		return nil, err
	}
	l, err := net.Listen("tcp", address)
	if !isTaken(err) {
		if err != nil {
			return nil, fmt.Errorf("answer at %s: %w", address, cause(err))
		}
		return newDoor(l, host), nil
	}
	taken := fmt.Sprintf("%s is taken by %s", address, holder(os.DirFS("/proc"), port))
	l, err = nextFree(host, port)
	switch {
	case err != nil:
		return nil, errors.New(taken)
	case c.Address != "":
		l.Close()
		free := net.JoinHostPort(host, strconv.Itoa(l.Addr().(*net.TCPAddr).Port)) // the host as it was typed
		return nil, fmt.Errorf("%s; %s is free: --address %[2]s", taken, free)
	}
	p.say("%s; this preview has taken the next port.", taken)
	return newDoor(l, host), nil
}

func parseAddress(address string) (host string, port int, err error) {
	host, number, err := net.SplitHostPort(address)
	if err == nil {
		port, err = strconv.Atoi(number)
	}
	if err != nil || port < 0 || port > 65535 {
		return "", 0, fmt.Errorf("--address %s is not a host and a port, such as %s", address, usualAddress)
	}
	return host, port, nil
}

// isTaken reports whether somebody else has the port. Windows has a number of
// its own for that, WSAEADDRINUSE.
func isTaken(err error) bool {
	return errors.Is(err, syscall.EADDRINUSE) || errors.Is(err, syscall.Errno(10048))
}

// cause is what the system says, without the address that it was said of.
func cause(err error) error {
	if op, ok := errors.AsType[*net.OpError](err); ok {
		return op.Err
	}
	return err
}

// nextFree takes the first port after one that nobody has.
func nextFree(host string, port int) (l net.Listener, err error) {
	const most = 100
	for next := port + 1; next <= min(port+most, 65535); next++ {
		l, err = net.Listen("tcp", net.JoinHostPort(host, strconv.Itoa(next)))
		if !isTaken(err) {
			return l, err
		}
	}
	return nil, errors.New("no port is free")
}

func newDoor(l net.Listener, host string) *door {
	d := &door{Listener: l}
	at := l.Addr().(*net.TCPAddr)
	port := strconv.Itoa(at.Port)
	web := func(host string) string { return "http://" + net.JoinHostPort(host, port) + "/" }
	named := host != "" && net.ParseIP(host) == nil
	if named {
		d.hosts.Names = []string{host}
		d.addresses = []string{web(host)}
	}
	d.hosts.Open = !at.IP.IsLoopback()
	switch {
	case at.IP.IsUnspecified():
		d.hosts.Names = append(d.hosts.Names, machineNames()...)
		d.addresses = append(d.addresses, web("127.0.0.1"))
		for _, ip := range ownAddresses() {
			d.addresses = append(d.addresses, web(ip))
		}
	case !named:
		d.addresses = []string{web(at.IP.String())}
	}
	return d
}

// machineNames are those under which other machines may know this one: RFC 6762
// adds .local.
func machineNames() []string {
	name, err := os.Hostname()
	if err != nil {
		return nil
	}
	short, _, _ := strings.Cut(name, ".")
	return []string{name, short, short + ".local"}
}

// ownAddresses are those of this machine in its networks.
func ownAddresses() []string {
	var all []string
	nets, _ := net.InterfaceAddrs() // without them there is less to print
	for _, n := range nets {
		if ip, ok := n.(*net.IPNet); ok && ip.IP.IsGlobalUnicast() && ip.IP.To4() != nil {
			all = append(all, ip.IP.String())
		}
	}
	return all
}
