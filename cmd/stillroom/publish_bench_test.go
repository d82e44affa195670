//go:build unix

package main

import (
	"bytes"
	"fmt"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"runtime"
	"strconv"
	"strings"
	"syscall"
	"testing"
	"time"

	"stillroom/content"
)

// BenchmarkPublish publishes the same site twice, each time as a process of
// its own with two workers, beside the bare floor: reading, goldmark, and
// writing what publishing has written. Pictures were printed before.
// STILLROOM_RECIPES=1000,10000,50000 says how many recipes there are.
//
// It tells the least of all rounds: wall and processor time a recipe in
// microseconds, and in bytes a recipe what publishing holds beyond the content.
func BenchmarkPublish(b *testing.B) {
	sizes := strings.Split(os.Getenv("STILLROOM_RECIPES"), ",")
	if sizes[0] == "" {
		sizes = []string{"1000"}
	}
	for _, size := range sizes {
		n, err := strconv.Atoi(size)
		if err != nil {
			b.Fatal(err)
		}
		b.Run(size, func(b *testing.B) { benchmarkPublish(b, n) })
	}
}

func benchmarkPublish(b *testing.B, n int) {
	site := generate(b, n)
	out := filepath.Join(b.TempDir(), "published")
	publish := []string{"stillroom", "publish", site, "--to", out, "--day", "2026-11-25"}
	costOf(b, publish...) // prints the pictures
	var least [3]cost
	for b.Loop() {
		if err := os.RemoveAll(out); err != nil {
			b.Fatal(err)
		}
		round := [3]cost{1: costOf(b, publish...), 2: costOf(b, publish...)}
		bare := filepath.Join(b.TempDir(), "bare")
		round[0] = costOf(b, "floor", site, out, bare)
		if err := os.RemoveAll(bare); err != nil {
			b.Fatal(err)
		}
		for i := range least {
			least[i] = least[i].least(round[i])
		}
	}
	each := func(what string, v float64) { b.ReportMetric(v/float64(n), what) }
	for i, what := range []string{"floor", "first", "again"} {
		each(what+"-wall-µs/recipe", float64(least[i].wall.Microseconds()))
		each(what+"-cpu-µs/recipe", float64(least[i].processor.Microseconds()))
	}
	b.ReportMetric(ratio(least[1].wall, least[0].wall), "first/floor-wall")
	b.ReportMetric(ratio(least[1].processor, least[0].processor), "first/floor-cpu")
	b.ReportMetric(ratio(least[2].wall, least[1].wall), "again/first-wall")
	b.ReportMetric(ratio(least[2].processor, least[1].processor), "again/first-cpu")
	content := contentOf(b, site)
	each("content-B/recipe", float64(content))
	each("held-B/recipe", float64(least[1].live-content))
	b.ReportMetric(float64(least[1].resident)/1e6, "peak-MB")
	b.ReportMetric(float64(sizeOf(b, out))/float64(n), "written-B/recipe")
	b.ReportMetric(0, "ns/op")
}

func ratio(a, b time.Duration) float64 { return float64(a) / float64(b) }

// A cost is what a process takes.
type cost struct {
	wall, processor time.Duration
	resident        int64 // the most bytes that it has from the system at a time
	live            int64 // the most bytes that it holds after collecting garbage, in whole megabytes
}

func (c cost) least(d cost) cost {
	if c.wall == 0 {
		return d
	}
	return cost{min(c.wall, d.wall), min(c.processor, d.processor), min(c.resident, d.resident), min(c.live, d.live)}
}

// costOf runs a command with two processors. It stops while garbage is collected:
// else what is made meanwhile counts as held. On Linux a process counts as its own
// the most memory of the one that began it, so this one has to stay small.
func costOf(b *testing.B, args ...string) cost {
	b.Helper()
	cmd := exec.Command(args[0], args[1:]...)
	cmd.Env = append(os.Environ(), "GOMAXPROCS=2", "GODEBUG=gctrace=1,gcstoptheworld=1")
	var said bytes.Buffer
	cmd.Stderr = &said
	began := time.Now()
	if err := cmd.Run(); err != nil {
		b.Fatalf("%s: %v\n%s", args, err, &said)
	}
	wall := time.Since(began)
	s := cmd.ProcessState
	most := s.SysUsage().(*syscall.Rusage).Maxrss
	if most < 1<<24 {
		most *= 1024
	}
	return cost{wall, s.UserTime() + s.SystemTime(), int64(most), mostLive(said.Bytes())}
}

// collected is what the runtime tells of a collection: gctrace in the doc of
// package runtime. The last of three sizes is that of the live heap.
var collected = regexp.MustCompile(`(?m)^gc .* \d+->\d+->(\d+) MB`)

func mostLive(said []byte) (most int64) {
	for _, m := range collected.FindAllSubmatch(said, -1) {
		if mb, err := strconv.ParseInt(string(m[1]), 10, 64); err == nil {
			most = max(most, mb<<20)
		}
	}
	return most
}

// contentOf gives how many bytes a site takes once it has been read.
func contentOf(b *testing.B, site string) int64 {
	before := heap()
	s, _, err := content.Read(os.DirFS(site), nil)
	if err != nil {
		b.Fatal(err)
	}
	held := heap() - before
	runtime.KeepAlive(s)
	return held
}

// heap is how many bytes are held.
func heap() int64 {
	runtime.GC()
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	return int64(m.HeapAlloc)
}

func sizeOf(b *testing.B, dir string) (sum int64) {
	err := filepath.WalkDir(dir, func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		info, err := d.Info()
		if err == nil {
			sum += info.Size()
		}
		return err
	})
	if err != nil {
		b.Fatal(err)
	}
	return sum
}

func BenchmarkCheck1000(b *testing.B) {
	site := generate(b, 1000)
	for b.Loop() {
		var stderr bytes.Buffer
		if status := run([]string{"check", site, "--day", "2026-11-25"}, strings.NewReader(""), os.Stdout, &stderr); status != succeeded {
			b.Fatal(fmt.Errorf("status %d: %s", status, &stderr))
		}
	}
}
