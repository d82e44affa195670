package main

import (
	"bufio"
	"context"
	"encoding/json"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"
)

// longest is how long a checker may take.
const longest = 5 * time.Minute

// A crew runs the commands of checkers. Scripts of .ci/checks are left to inspectors, of which each runs many in turn: to
// start Node, load its packages and start a browser takes longer than most of them.
type crew struct {
	mu   sync.Mutex
	idle []*inspector
}

// newCrew is dismissed when the test ends.
func newCrew(t *testing.T) *crew {
	c := new(crew)
	t.Cleanup(func() {
		for _, i := range c.idle {
			i.dismiss()
		}
	})
	return c
}

func (c *crew) run(t *testing.T, args []string) (said string, err error) {
	if args[0] == "node" && filepath.Dir(args[1]) == filepath.Clean(tools) {
		return c.inspect(args[1:])
	}
	ctx, cancel := context.WithTimeout(t.Context(), longest)
	defer cancel()
	out, err := exec.CommandContext(ctx, args[0], args[1:]...).CombinedOutput()
	return string(out), err
}

// inspect has an inspector run a script. One that does not come to its end is of no more use.
func (c *crew) inspect(script []string) (said string, err error) {
	i, err := c.take()
	if err != nil {
		return "", err
	}
	said, status, err := i.run(script)
	if err != nil {
		i.dismiss()
		return said, err
	}
	c.mu.Lock()
	c.idle = append(c.idle, i)
	c.mu.Unlock()
	if status != "0" {
		err = fmt.Errorf("exit status %s", status)
	}
	return said, err
}

func (c *crew) take() (*inspector, error) {
	c.mu.Lock()
	defer c.mu.Unlock()
	if n := len(c.idle); n > 0 {
		i := c.idle[n-1]
		c.idle = c.idle[:n-1]
		return i, nil
	}
	return newInspector()
}

// An inspector is a process that runs scripts in turn: see inspector.mjs.
type inspector struct {
	process *exec.Cmd
	orders  io.WriteCloser
	said    *bufio.Reader
}

func newInspector() (*inspector, error) {
	process := exec.Command("node", filepath.Join(tools, "inspector.mjs"))
	orders, err := process.StdinPipe()
	if err != nil {
		return nil, err
	}
	said, err := process.StdoutPipe()
	if err != nil {
		return nil, err
	}
	process.Stderr = process.Stdout // the same pipe: what is said stays in order
	return &inspector{process, orders, bufio.NewReader(said)}, process.Start()
}

// run gives what a script prints, and its status.
func (i *inspector) run(script []string) (said, status string, err error) {
	order, err := json.Marshal(script)
	if err != nil {
		return "", "", err
	}
	if _, err := i.orders.Write(append(order, '\n')); err != nil {
		return "", "", err
	}
	late := time.AfterFunc(longest, func() { i.process.Process.Signal(os.Interrupt) })
	defer late.Stop()
	said, err = i.said.ReadString(0)
	if err == nil {
		status, err = i.said.ReadString('\n')
	}
	return strings.TrimSuffix(said, "\x00"), strings.TrimSpace(status), err
}

// dismiss ends an inspector, and its browsers with it.
func (i *inspector) dismiss() {
	i.orders.Close()
	late := time.AfterFunc(10*time.Second, func() { i.process.Process.Kill() })
	defer late.Stop()
	i.process.Wait()
}
