// A plain web server for the checks, with the manners of a host that one would choose: it compresses text, lets
// hashed names be kept for a year and asks again for the rest, names types truly, gives parts of recordings, and answers
// 404 with the 404 page. Sources: RFC 9110, 14 for the parts, and RFC 9111; RFC 8246 (immutable).
import fs from 'node:fs';
import http from 'node:http';
import path from 'node:path';
import zlib from 'node:zlib';

const types = {
  '.html': 'text/html; charset=utf-8', '.css': 'text/css; charset=utf-8', '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json', '.txt': 'text/plain; charset=utf-8', '.xml': 'application/xml', '.atom': 'application/atom+xml',
  '.svg': 'image/svg+xml', '.png': 'image/png', '.jpg': 'image/jpeg', '.webp': 'image/webp', '.avif': 'image/avif',
  '.ico': 'image/x-icon', '.woff2': 'font/woff2', '.webmanifest': 'application/manifest+json', '.vtt': 'text/vtt; charset=utf-8',
  '.srt': 'application/x-subrip', '.mp3': 'audio/mpeg', '.m4a': 'audio/mp4', '.pdf': 'application/pdf',
};
const text = /^text\/|json|xml|javascript/;

// serve answers on a free port of the loopback address with the files under root.
export async function serve(root) {
  const server = http.createServer((request, response) => answer(path.resolve(root), request, response));
  await new Promise(ready => server.listen(0, '127.0.0.1', ready));
  return {
    url: `http://127.0.0.1:${server.address().port}`,
    close() { server.closeAllConnections(); server.close(); },
  };
}

// answer answers one request with the files under root.
export function answer(root, request, response) {
  const { pathname } = new URL(request.url, 'http://localhost');
  let file = path.join(root, decodeURIComponent(pathname)); // URL has already resolved every ".."
  if (isFolder(file)) {
    if (!pathname.endsWith('/')) {
      response.writeHead(301, { Location: pathname + '/' });
      return response.end();
    }
    file = path.join(file, 'index.html');
  }
  if (fs.existsSync(file)) return send(200, file, request, response);
  const lost = path.join(root, '404.html');
  if (fs.existsSync(lost)) return send(404, lost, request, response);
  response.writeHead(404, { 'Content-Type': 'text/plain' });
  response.end('not found\n');
}

const isFolder = name => fs.statSync(name, { throwIfNoEntry: false })?.isDirectory();

function send(status, file, request, response) {
  const type = types[path.extname(file)] ?? 'application/octet-stream';
  const hashed = /\/assets\/.*\.[0-9a-zA-Z_-]{8,}\.\w+$/.test(file);
  const headers = {
    'Content-Type': type,
    'Cache-Control': hashed ? 'public, max-age=31536000, immutable' : 'no-cache',
    'X-Content-Type-Options': 'nosniff',
  };
  let body = fs.readFileSync(file);
  if (text.test(type) && /\bbr\b/.test(request.headers['accept-encoding'] ?? '')) {
    body = zlib.brotliCompressSync(body, { params: { [zlib.constants.BROTLI_PARAM_QUALITY]: 5 } });
    headers['Content-Encoding'] = 'br';
    headers.Vary = 'Accept-Encoding';
  }
  if (/^audio\//.test(type)) {
    headers['Accept-Ranges'] = 'bytes'; // without which no browser plays from the middle
    const part = /^bytes=(\d+)-(\d*)$/.exec(request.headers.range ?? '');
    if (part) {
      const [first, last] = [Number(part[1]), Math.min(Number(part[2] || body.length), body.length - 1)];
      headers['Content-Range'] = first > last ? `bytes */${body.length}` : `bytes ${first}-${last}/${body.length}`;
      [status, body] = first > last ? [416, Buffer.alloc(0)] : [206, body.subarray(first, last + 1)];
    }
  }
  headers['Content-Length'] = body.length;
  response.writeHead(status, headers);
  response.end(request.method === 'HEAD' ? undefined : body);
}
