// Serves the built page on loopback with the headers of a good host; can be stopped and started again
// at the same address, which is how a lost network is tested.

import { createServer } from 'node:http';
import { readFile } from 'node:fs/promises';
import { extname, join, normalize, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

const top = fileURLToPath(new URL('../../../', import.meta.url));

const types = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
};

// `change(path, bytes)` may give other bytes for a file: a later version, a damaged one.
export async function startServer({ folder = join(top, 'dist'), change = (_path, bytes) => bytes } = {}) {
  const policy = await pagePolicy();
  const asked = [];
  let server = null;
  let port = 0;

  async function answer(request, response) {
    const path = decodeURIComponent(new URL(request.url, 'http://localhost').pathname);
    asked.push(path);
    const file = normalize(join(folder, path.endsWith('/') ? `${path}index.html` : path));
    const bytes = file.startsWith(folder + sep) ? await readFile(file).catch(() => null) : null;
    if (bytes === null) {
      response.writeHead(404).end('Not here.');
      return;
    }
    response.writeHead(200, {
      'Content-Type': types[extname(file)] ?? 'application/octet-stream',
      'Content-Security-Policy': `${policy}; frame-ancestors 'none'`,
      'X-Content-Type-Options': 'nosniff',
      'Referrer-Policy': 'no-referrer',
      'Cache-Control': 'no-cache',
    });
    response.end(change(path, bytes));
  }

  async function start() {
    server = createServer((request, response) => {
      answer(request, response).catch(() => response.destroy());
    });
    await new Promise((done, failed) => {
      server.once('error', failed);
      server.listen(port, '127.0.0.1', done);
    });
    port = server.address().port;
  }

  async function stop() {
    if (server === null) {
      return;
    }
    const stopped = new Promise((done) => server.close(done));
    server.closeAllConnections();
    await stopped;
    server = null;
  }

  await start();
  return { start, stop, asked, url: `http://127.0.0.1:${port}/` };
}

// The page's own policy, so that the test server is as strict as the page.
async function pagePolicy() {
  const page = await readFile(join(top, 'index.html'), 'utf8');
  return page.match(/http-equiv="Content-Security-Policy" content="([^"]+)"/)[1];
}
