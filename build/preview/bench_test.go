//go:build unix

package preview

import (
	"bytes"
	"context"
	"fmt"
	"io/fs"
	"net/http/httptest"
	"os"
	"path/filepath"
	"runtime/debug"
	"strings"
	"syscall"
	"testing"
	"time"

	"stillroom/build/preview/watch"
	"stillroom/content"
)

// BenchmarkSave measures from the writing of a recipe to the bytes of its page
// at the browser: what the system tells, reading, judging, making, and two
// answers of the server. How long processors are busy with a save depends less on
// what else the machine does than how long it takes.
func BenchmarkSave(b *testing.B) {
	for _, n := range []int{1_000, 10_000} {
		b.Run(fmt.Sprint(n, " recipes"), func(b *testing.B) { benchmarkSave(b, n) })
	}
}

func benchmarkSave(b *testing.B, recipes int) {
	defer debug.SetGCPercent(debug.SetGCPercent(400)) // as the program does
	dir := b.TempDir()
	manyRecipes(b, dir, recipes)
	ctx, cancel := context.WithCancel(b.Context())
	changes, err := watch.Folder{Dir: dir, Ignores: Ignores}.Watch(ctx)
	if err != nil {
		b.Skip("this system does not watch:", err)
	}
	p := New(Folder(dir), today, new(memory))
	if err := p.Open(nil); err != nil {
		b.Fatal(err)
	}
	server := httptest.NewServer(p.Handler(Hosts{}))
	b.Cleanup(func() {
		cancel()
		p.Close()
		server.Close()
	})
	go p.Follow(ctx, changes)
	const address = "/recipes/blackberry-jam-7/"
	file := filepath.Join(dir, "content/recipes/blackberry-jam-7.md")
	text, err := os.ReadFile(file)
	if err != nil {
		b.Fatal(err)
	}
	l := listen(b, server, "page="+address)
	l.next()
	before := processorTime(b)
	for i := 0; b.Loop(); i++ {
		word := fmt.Sprintf("Save number %d.", i)
		if err := os.WriteFile(file, append(bytes.Clone(text), word...), 0o666); err != nil {
			b.Fatal(err)
		}
		for body := ""; !strings.Contains(body, word); _, body = ask(b, server, "GET", address) {
			l.next()
		}
	}
	busy := processorTime(b) - before
	b.ReportMetric(float64(busy.Milliseconds())/float64(b.N), "processor-ms/save")
}

// processorTime is how long the program has kept processors busy.
func processorTime(b *testing.B) time.Duration {
	b.Helper()
	var u syscall.Rusage
	if err := syscall.Getrusage(syscall.RUSAGE_SELF, &u); err != nil {
		b.Fatal(err)
	}
	return time.Duration(u.Utime.Nano() + u.Stime.Nano())
}

// manyRecipes writes the starter site with so many recipes: each of its own over
// and over, under other names.
func manyRecipes(b *testing.B, dir string, n int) {
	b.Helper()
	if err := os.CopyFS(dir, content.Starter); err != nil {
		b.Fatal(err)
	}
	names, err := fs.Glob(content.Starter, "content/recipes/*.md")
	if err != nil {
		b.Fatal(err)
	}
	for i := range n - len(names) {
		name := names[i%len(names)]
		data, err := fs.ReadFile(content.Starter, name)
		if err != nil {
			b.Fatal(err)
		}
		data = formerly.ReplaceAll(data, nil)
		name = fmt.Sprintf("%s-%d.md", strings.TrimSuffix(name, ".md"), i/len(names))
		if err := os.WriteFile(filepath.Join(dir, name), data, 0o666); err != nil {
			b.Fatal(err)
		}
	}
}
