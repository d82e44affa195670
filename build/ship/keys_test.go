package ship

import (
	"net"
	"os"
	"path/filepath"
	"testing"
	"time"
)

func TestAgentThatSaysNothing(t *testing.T) {
	dir, err := os.MkdirTemp("", "agent") // t.TempDir is too long for the name of a socket
	if err != nil {
		t.Fatal(err)
	}
	defer os.RemoveAll(dir)
	socket := filepath.Join(dir, "socket")
	silent, err := net.Listen("unix", socket)
	if err != nil {
		t.Fatal(err)
	}
	defer silent.Close()
	if keys, err := agentKeys(socket, 50*time.Millisecond); err == nil {
		t.Errorf("it gave %d keys", len(keys))
	}
}
