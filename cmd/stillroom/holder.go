package main

import (
	"bytes"
	"fmt"
	"io/fs"
	"os/user"
	"path"
	"strings"
)

// holder says which program has a port, as far as the folder /proc of Linux
// tells: proc(5), proc_net(5). Of what another user runs it tells no more than
// the user.
func holder(proc fs.FS, port int) string {
	inode, uid, ok := listener(proc, port)
	if !ok {
		return "another program"
	}
	links, _ := fs.Glob(proc, "[0-9]*/fd/*") // those that may not be read are another user's
	for _, link := range links {
		if target, err := fs.ReadLink(proc, link); err == nil && target == "socket:["+inode+"]" {
			id, _, _ := strings.Cut(link, "/")
			return fmt.Sprintf("%s (process %s)", commandLine(proc, id), id)
		}
	}
	if u, err := user.LookupId(uid); err == nil {
		return "a program of the user " + u.Username
	}
	return "a program of another user"
}

// listening is how /proc/net/tcp writes TCP_LISTEN.
const listening = "0A"

// listener finds the socket that waits at a port: the number of its inode, and
// the user that it belongs to.
func listener(proc fs.FS, port int) (inode, uid string, ok bool) {
	end := fmt.Sprintf(":%04X", port)
	for _, table := range []string{"net/tcp", "net/tcp6"} {
		text, err := fs.ReadFile(proc, table)
		if err != nil {
			continue
		}
		for line := range strings.Lines(string(text)) {
			f := strings.Fields(line)
			if len(f) > 9 && strings.HasSuffix(f[1], end) && f[3] == listening {
				return f[9], f[7], true
			}
		}
	}
	return "", "", false
}

// commandLine is what was typed to run a process, cut short.
func commandLine(proc fs.FS, id string) string {
	const longest = 60
	data, err := fs.ReadFile(proc, path.Join(id, "cmdline"))
	args := strings.Split(string(bytes.TrimRight(data, "\x00")), "\x00")
	if err != nil || args[0] == "" {
		return "a program"
	}
	args[0] = path.Base(args[0])
	line := []rune(strings.Join(args, " "))
	if len(line) > longest {
		line = append(line[:longest], '…')
	}
	return string(line)
}
