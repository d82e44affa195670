package build

import (
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"
)

// A length is rounded as the standard library does it, ties and all.
func TestPx(t *testing.T) {
	lengths := []float64{0, -0.04, 0.04, 0.05, 0.15, 0.25, -0.25, 0.35, 7, -7, 12.5, 99.95, 123.449999, 99999.95, 1e6, -3e9}
	d := rand.New(rand.NewPCG(1, 2))
	for range 20_000 {
		lengths = append(lengths, d.Float64()*2000-1000, float64(d.IntN(40_000))/40)
	}
	for _, x := range lengths {
		want := strings.TrimSuffix(strconv.FormatFloat(x, 'f', 1, 64), ".0")
		if want == "-0" {
			want = "0"
		}
		if got := px(x); got != want {
			t.Errorf("px(%v) = %q, want %q", x, got, want)
		}
	}
}
