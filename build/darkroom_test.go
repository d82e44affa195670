package build

import (
	"errors"
	"sync"
)

// memory is a Cache for tests.
type memory struct {
	mu   sync.Mutex
	kept map[string][]byte
	puts int
	full bool // takes no more
}

func (m *memory) Get(key string) ([]byte, bool) {
	m.mu.Lock()
	defer m.mu.Unlock()
	data, ok := m.kept[key]
	return data, ok
}

func (m *memory) Put(key string, data []byte) error {
	m.mu.Lock()
	defer m.mu.Unlock()
	if m.full {
		return errors.New("the disk is full")
	}
	if m.kept == nil {
		m.kept = make(map[string][]byte)
	}
	m.kept[key] = data
	m.puts++
	return nil
}
