// Package webp reads and writes pictures in the WebP format, RFC 9649.
//
// To write, it runs libwebp 1.4.0, compiled to WebAssembly, in wazero: the same bytes on
// every system, and no C compiler to build with. The file libwebp.wasm.gz is
// that of github.com/gen2brain/webp v0.5.5. The module itself is not used,
// since it calls the system's own libwebp wherever it finds one, of whatever
// version, and only a build tag can stop it.
package webp

import (
	"bytes"
	"compress/gzip"
	"context"
	"crypto/sha256"
	_ "embed"
	"encoding/hex"
	"errors"
	"fmt"
	"image"
	"io"
	"sync"

	"github.com/tetratelabs/wazero"
	"github.com/tetratelabs/wazero/api"
	"github.com/tetratelabs/wazero/imports/wasi_snapshot_preview1"
)

// MaxSide is the most pixels that a picture may have on one side: RFC 9649,
// 2.6.
const MaxSide = 16383

// Version changes with whatever changes the bytes that Encode gives.
var Version = version()

//go:embed libwebp.wasm.gz
var program []byte

func version() string {
	sum := sha256.Sum256(program)
	return hex.EncodeToString(sum[:8])
}

// Effort is how long the encoder looks for a smaller file, from 0 to 6.
type Effort int

// Encode gives the picture as a WebP file. The quality is from 1 to 99, as
// libwebp has it. Whatever can be seen through stays so.
//
// It may be called by several goroutines; each call takes about 30 bytes of
// memory for each pixel.
func Encode(m *image.NRGBA, quality int, effort Effort) ([]byte, error) {
	w, h := m.Rect.Dx(), m.Rect.Dy()
	if w < 1 || h < 1 || w > MaxSide || h > MaxSide {
		return nil, fmt.Errorf("a picture of %d by %d pixels does not fit into a WebP file", w, h)
	}
	ctx := context.Background()
	p, err := start(ctx)
	if err != nil {
		return nil, err
	}
	defer p.Close(ctx)
	data, err := encode(ctx, p, m, uint64(quality), uint64(effort))
	if err != nil {
		return nil, fmt.Errorf("write a WebP picture of %d by %d pixels: %w", w, h, err)
	}
	return data, nil
}

// compiled is the program, made ready when it is first needed.
var compiled = sync.OnceValues(compile)

type ready struct {
	runtime wazero.Runtime
	module  wazero.CompiledModule
}

func compile() (ready, error) {
	z, err := gzip.NewReader(bytes.NewReader(program))
	if err != nil {
		return ready{}, err
	}
	code, err := io.ReadAll(z)
	if err != nil {
		return ready{}, err
	}
	ctx := context.Background()
	r := wazero.NewRuntime(ctx)
	if _, err := wasi_snapshot_preview1.Instantiate(ctx, r); err != nil {
		return ready{}, err
	}
	m, err := r.CompileModule(ctx, code)
	return ready{r, m}, err
}

// start begins a run of the program with memory of its own.
func start(ctx context.Context) (api.Module, error) {
	c, err := compiled()
	if err != nil {
		return nil, fmt.Errorf("make libwebp ready: %w", err)
	}
	return c.runtime.InstantiateModule(ctx, c.module, wazero.NewModuleConfig().WithName(""))
}

var errMemory = errors.New("there is not enough memory")

func encode(ctx context.Context, p api.Module, m *image.NRGBA, quality, effort uint64) ([]byte, error) {
	w, h := m.Rect.Dx(), m.Rect.Dy()
	pixels, err := allocate(ctx, p, uint64(4*w*h))
	if err != nil {
		return nil, err
	}
	for y := range h {
		row := m.Pix[y*m.Stride:][:4*w]
		if !p.Memory().Write(pixels+uint32(4*w*y), row) {
			return nil, errMemory
		}
	}
	size, err := allocate(ctx, p, 8)
	if err != nil {
		return nil, err
	}
	const rgba, lossless, exact = 0, 0, 0
	res, err := p.ExportedFunction("encode").Call(ctx,
		uint64(pixels), uint64(w), uint64(h), uint64(size), rgba, quality, effort, lossless, exact)
	if err != nil {
		return nil, err
	}
	length, ok := p.Memory().ReadUint32Le(size)
	if !ok || res[0] == 0 {
		return nil, errMemory
	}
	out, ok := p.Memory().Read(uint32(res[0]), length)
	if !ok {
		return nil, errMemory
	}
	return bytes.Clone(out), nil // the memory ends with the run
}

// allocate gives the place of so many bytes in the program's memory.
func allocate(ctx context.Context, p api.Module, n uint64) (uint32, error) {
	res, err := p.ExportedFunction("malloc").Call(ctx, n)
	if err != nil {
		return 0, err
	}
	if res[0] == 0 {
		return 0, errMemory
	}
	return uint32(res[0]), nil
}
