package main

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"
)

func TestCache(t *testing.T) {
	c := diskCache{filepath.Join(t.TempDir(), "prints")}
	if _, ok := c.Get("print-00"); ok {
		t.Error("an empty cache gave something")
	}
	if err := c.Put("print-00", []byte("a print")); err != nil {
		t.Fatal(err)
	}
	if err := c.Put("print-01", nil); err != nil {
		t.Fatal(err)
	}
	for key, want := range map[string]string{"print-00": "a print", "print-01": ""} {
		if got, ok := c.Get(key); !ok || string(got) != want {
			t.Errorf("%s is %q, %v", key, got, ok)
		}
	}
	if _, ok := c.Get("print-10"); ok {
		t.Error("a key gave what another was put under")
	}
}

// Whatever happens to a file, the cache gives what was put or nothing.
func TestCacheKnowsDamage(t *testing.T) {
	c := diskCache{t.TempDir()}
	for cut := range 40 {
		if err := c.Put("print-00", []byte("a print")); err != nil {
			t.Fatal(err)
		}
		name := c.name("print-00")
		data, _ := os.ReadFile(name)
		if cut == len(data) {
			break
		}
		flipped := bytes.Clone(data)
		flipped[cut] ^= 1
		for _, damaged := range [][]byte{data[:cut], flipped, append(data[:len(data):len(data)], 0)} {
			if err := os.WriteFile(name, damaged, 0o600); err != nil {
				t.Fatal(err)
			}
			if got, ok := c.Get("print-00"); ok {
				t.Fatalf("at %d: a damaged file gave %q", cut, got)
			}
		}
	}
}

// Several builds at once see whole files.
func TestCacheTogether(t *testing.T) {
	c := diskCache{t.TempDir()}
	want := strings.Repeat("a print", 10_000)
	var group sync.WaitGroup
	for range 8 {
		group.Go(func() {
			for range 20 {
				if err := c.Put("print-00", []byte(want)); err != nil {
					t.Error(err)
				}
				if got, ok := c.Get("print-00"); !ok || string(got) != want {
					t.Errorf("%d bytes, %v", len(got), ok)
				}
			}
		})
	}
	group.Wait()
	if left, _ := filepath.Glob(filepath.Join(c.dir, "*", "*"+halfMade)); len(left) > 0 {
		t.Errorf("left behind: %q", left)
	}
}

func TestCacheTidies(t *testing.T) {
	c := diskCache{t.TempDir()}
	now := time.Date(2026, 11, 25, 12, 0, 0, 0, time.UTC)
	used := func(name string, ago time.Duration) {
		t.Helper()
		if err := os.Chtimes(name, now.Add(-ago), now.Add(-ago)); err != nil {
			t.Fatal(err)
		}
	}
	for i := range 6 {
		key := fmt.Sprintf("print-%02d", i)
		if err := c.Put(key, make([]byte, 68)); err != nil { // 100 bytes with the hash
			t.Fatal(err)
		}
		used(c.name(key), time.Duration(i)*30*24*time.Hour)
	}
	for name, ago := range map[string]time.Duration{"new" + halfMade: time.Minute, "old" + halfMade: 2 * time.Hour} {
		name = filepath.Join(c.dir, "00", name)
		if err := os.WriteFile(name, nil, 0o600); err != nil {
			t.Fatal(err)
		}
		used(name, ago)
	}
	c.tidy(now, 250)
	want := []string{"print-00", "print-01", "new" + halfMade} // 2 months is too much with 250 bytes, 4 and 5 in any case
	var got []string
	names, _ := filepath.Glob(filepath.Join(c.dir, "*", "*"))
	for _, n := range names {
		got = append(got, filepath.Base(n))
	}
	for _, w := range want {
		if !strings.Contains(strings.Join(got, " "), w) {
			t.Errorf("%s is gone", w)
		}
	}
	if len(got) != len(want) {
		t.Errorf("kept %q, want %q", got, want)
	}
	c.tidy(now, 0)
	diskCache{filepath.Join(c.dir, "nowhere")}.tidy(now, 0)
}

// What is used is kept longer.
func TestCacheNotesUse(t *testing.T) {
	c := diskCache{t.TempDir()}
	if err := c.Put("print-00", []byte("a print")); err != nil {
		t.Fatal(err)
	}
	long := time.Now().Add(-30 * 24 * time.Hour)
	if err := os.Chtimes(c.name("print-00"), long, long); err != nil {
		t.Fatal(err)
	}
	c.Get("print-00")
	if info, err := os.Stat(c.name("print-00")); err != nil || time.Since(info.ModTime()) > time.Hour {
		t.Errorf("last used %v, %v", info.ModTime(), err)
	}
}

func TestCacheMakesNoHome(t *testing.T) {
	home := filepath.Join(t.TempDir(), "nobody")
	for _, name := range []string{"HOME", "home", "LocalAppData"} {
		t.Setenv(name, home)
	}
	t.Setenv("XDG_CACHE_HOME", "")
	if c := openCache(); c != nil {
		t.Errorf("a cache in %+v", c)
	}
	dir, err := os.UserCacheDir()
	if err != nil {
		t.Fatal(err)
	}
	if err := os.MkdirAll(filepath.Dir(dir), 0o700); err != nil {
		t.Fatal(err)
	}
	if openCache() == nil {
		t.Error("no cache in a home")
	}
}
