package ship

import (
	"context"
	"crypto/tls"
	"errors"
	"io"
	"io/fs"
	"net"
	"net/http"
	"slices"
	"strings"
	"sync/atomic"
	"time"

	"github.com/minio/minio-go/v7"

	"stillroom/build"
)

// s3Place is a part of a bucket. A store hands out what it holds without asking
// how a reader would like it, so texts lie there as they are: one who cannot
// read gzip would get it all the same (RFC 9110, 12.5.3). Networks that stand
// before stores compress by themselves.
type s3Place struct {
	store  *minio.Client
	bucket string
	prefix string // empty, or with a stroke at its end
	login  login
	known  atomic.Bool // the store has answered before
}

func openS3(to Address, t times) (place, error) {
	l, err := findLogin()
	if err != nil {
		return nil, err
	}
	return newS3(to, l, usualDial(t), t)
}

func newS3(to Address, l login, d dial, t times) (*s3Place, error) {
	authorities, err := l.authorities()
	if err != nil {
		return nil, err
	}
	p := &s3Place{bucket: to.host, login: l}
	if to.path != "" {
		p.prefix = to.path + "/"
	}
	transport := &http.Transport{
		Proxy:                 http.ProxyFromEnvironment,
		DialContext:           p.noting(d),
		TLSClientConfig:       &tls.Config{RootCAs: authorities},
		TLSHandshakeTimeout:   20 * time.Second,
		ResponseHeaderTimeout: t.stalled,
		MaxIdleConnsPerHost:   workers,
		IdleConnTimeout:       t.stalled,
		DisableCompression:    true,
		ForceAttemptHTTP2:     false,
	}
	p.store, err = minio.New(l.host, &minio.Options{
		Creds: l.keys, Secure: l.secure, Region: l.region, Transport: transport, MaxRetries: 1,
	})
	return p, err
}

// noting notes that the store is there.
func (p *s3Place) noting(d dial) dial {
	return func(ctx context.Context, network, address string) (net.Conn, error) {
		c, err := d(ctx, network, address)
		if err == nil {
			p.known.Store(true)
		}
		return c, err
	}
}

func (p *s3Place) close() {}

// stored are the headers that a store keeps with a file.
var stored = []string{"Content-Type", "Cache-Control", "Content-Encoding"}

func (p *s3Place) label(path string) string {
	all := headersOf(path)
	var text strings.Builder
	for _, h := range stored {
		text.WriteString(h + ": " + all[h] + "\n")
	}
	return text.String()
}

// headersOf gives the headers of a file. The list and the lock are nobody's to
// keep.
func headersOf(path string) map[string]string {
	if path == listName || path == lockName {
		return map[string]string{"Content-Type": "text/plain; charset=utf-8", "Cache-Control": "no-store"}
	}
	return build.Headers(path)
}

func (p *s3Place) list(ctx context.Context, ours func(string) bool) (map[string]found, error) {
	all := make(map[string]found)
	for o := range p.store.ListObjects(ctx, p.bucket, minio.ListObjectsOptions{Prefix: p.prefix, Recursive: true}) {
		if o.Err != nil {
			return nil, o.Err
		}
		name, within := strings.CutPrefix(o.Key, p.prefix)
		if !within || name == "" || strings.HasSuffix(name, "/") {
			continue // a folder, as some programs mark it, or what was not asked for
		}
		if dir, ok := outside(name, ours); ok {
			all[dir] = found{kind: folder}
			continue
		}
		all[name] = found{size: o.Size, stamp: strings.Trim(o.ETag, `"`)}
	}
	return all, ctx.Err()
}

// outside gives the first folder of a path that is none of ours.
func outside(name string, ours func(string) bool) (dir string, ok bool) {
	for i, c := range name {
		if c == '/' && !ours(name[:i]) {
			return name[:i], true
		}
	}
	return "", false
}

func (p *s3Place) read(ctx context.Context, path string) ([]byte, error) {
	o, err := p.store.GetObject(ctx, p.bucket, p.prefix+path, minio.GetObjectOptions{})
	if err != nil {
		return nil, err
	}
	defer o.Close()
	data, err := io.ReadAll(o)
	if minio.ToErrorResponse(err).Code == minio.NoSuchKey {
		return nil, fs.ErrNotExist
	}
	return data, err
}

// put sends a file in one request, whole or not at all, with its size, so that
// it streams.
func (p *s3Place) put(ctx context.Context, path string, body io.Reader, size int64) (stamp string, err error) {
	return p.putIf(ctx, path, body, size, func(*minio.PutObjectOptions) {})
}

func (p *s3Place) putIf(ctx context.Context, path string, body io.Reader, size int64, only func(*minio.PutObjectOptions)) (string, error) {
	h := headersOf(path)
	opts := minio.PutObjectOptions{
		ContentType: h["Content-Type"], CacheControl: h["Cache-Control"], ContentEncoding: h["Content-Encoding"],
		DisableMultipart: true,
	}
	only(&opts)
	info, err := p.store.PutObject(ctx, p.bucket, p.prefix+path, body, size, opts)
	return strings.Trim(info.ETag, `"`), err
}

func (p *s3Place) remove(ctx context.Context, path string) error {
	return p.store.RemoveObject(ctx, p.bucket, p.prefix+path, minio.RemoveObjectOptions{})
}

func (p *s3Place) tidy(context.Context) error { return nil } // a request that fails leaves nothing

// claim is one conditional request: RFC 9110, 13.1. A store that knows none
// gets an unconditional one, after a look.
func (p *s3Place) claim(ctx context.Context, path string, data, seen []byte) (bool, error) {
	condition := func(o *minio.PutObjectOptions) { o.SetMatchETagExcept("*") }
	if seen != nil {
		o, err := p.store.StatObject(ctx, p.bucket, p.prefix+path, minio.StatObjectOptions{})
		if minio.ToErrorResponse(err).StatusCode == http.StatusNotFound {
			return false, nil
		}
		now, err2 := p.read(ctx, path)
		if err := errors.Join(err, err2); err != nil || string(now) != string(seen) {
			return false, err
		}
		condition = func(opts *minio.PutObjectOptions) { opts.SetMatchETag(o.ETag) }
	}
	_, err := p.putIf(ctx, path, strings.NewReader(string(data)), int64(len(data)), condition)
	switch e := minio.ToErrorResponse(err); {
	case err == nil:
		return true, nil
	case e.StatusCode == http.StatusPreconditionFailed || e.StatusCode == http.StatusConflict:
		return false, nil
	case e.StatusCode == http.StatusNotImplemented:
		_, err = p.put(ctx, path, strings.NewReader(string(data)), int64(len(data)))
	}
	return err == nil, err
}

// passingCodes are answers that may be others a little later.
var passingCodes = []int{
	http.StatusRequestTimeout, http.StatusTooManyRequests, http.StatusInternalServerError,
	http.StatusBadGateway, http.StatusServiceUnavailable, http.StatusGatewayTimeout,
}

// passing reports whether another try may help. A store that never answered
// will not: then the address is wrong.
func (p *s3Place) passing(err error) bool {
	var answer minio.ErrorResponse
	var network net.Error
	var name *net.DNSError
	switch {
	case errors.As(err, &answer):
		return slices.Contains(passingCodes, answer.StatusCode)
	case errors.As(err, &name) && name.IsNotFound, isCertificate(err):
		return false
	}
	return errors.Is(err, io.EOF) || errors.Is(err, io.ErrUnexpectedEOF) || errors.As(err, &network) && p.known.Load()
}
