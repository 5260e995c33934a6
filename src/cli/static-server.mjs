import { createReadStream, readFileSync } from 'node:fs';
import { realpath, stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, sep } from 'node:path';
import { pipeline } from 'node:stream';

const types = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.webp': 'image/webp',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.woff': 'font/woff',
  '.wasm': 'application/wasm',
};

/**
 * Sent with every answer. The page carries its content security policy in a meta tag, so that it holds on any static host; the
 * header repeats that one policy and adds what counts in a header only.
 * @throws Error when the folder has no page, or its page no policy
 */
function securityHeadersFor(folder) {
  const page = readFileSync(join(folder, 'index.html'), 'utf8');
  const policy = /http-equiv="Content-Security-Policy"\s+content="([^"]+)"/.exec(page)?.[1];
  if (!policy) throw new Error(`${join(folder, 'index.html')} carries no content security policy`);
  return {
    'Content-Security-Policy': `${policy}; frame-ancestors 'self'`,
    'X-Content-Type-Options': 'nosniff',
    'Referrer-Policy': 'no-referrer',
  };
}

// The build writes assets/name-HASH.ext, and the hash changes with the content.
const hashedAsset = /^\/assets\/.+-[\w-]{8}\.\w+$/;

/** The path of a request: decoded, and undefined when it is not one a page could ask for. */
function pathOf(url) {
  try {
    const path = decodeURIComponent(new URL(url, 'http://localhost').pathname);
    const parts = path.split('/');
    return path.includes('\0') || path.includes('\\') || parts.some((part) => part.startsWith('.')) ? undefined : path;
  } catch {
    return undefined;
  }
}

/** The file a path stands for, with its length and change time; undefined when there is none inside the folder. */
async function fileFor(folder, path) {
  try {
    const top = await realpath(folder);
    let file = await realpath(join(top, path));
    if ((await stat(file)).isDirectory()) file = await realpath(join(file, 'index.html'));
    if (!file.startsWith(top + sep)) return undefined;
    const found = await stat(file);
    return found.isFile() ? { file, size: found.size, changedMs: found.mtimeMs } : undefined;
  } catch {
    return undefined;
  }
}

async function answer(folder, securityHeaders, request, response) {
  const answerText = (code, text, headers = {}) => {
    response.writeHead(code, {
      ...securityHeaders,
      'Content-Type': types['.txt'],
      'Cache-Control': 'no-cache',
      ...headers,
    });
    response.end(`${text}\n`);
  };
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    answerText(405, 'Only GET and HEAD', { Allow: 'GET, HEAD' });
    return;
  }
  const path = pathOf(request.url ?? '/');
  const found = path === undefined ? undefined : await fileFor(folder, path);
  if (path === undefined || !found) {
    answerText(404, 'Not found');
    return;
  }
  const tag = `"${found.size.toString(16)}-${Math.round(found.changedMs).toString(16)}"`;
  const headers = {
    ...securityHeaders,
    'Content-Type': types[extname(found.file).toLowerCase()] ?? 'application/octet-stream',
    // A page and its service worker are asked for anew each time; a file with its hash in the name never changes.
    'Cache-Control': hashedAsset.test(path) ? 'public, max-age=31536000, immutable' : 'no-cache',
    ETag: tag,
  };
  if (request.headers['if-none-match'] === tag) {
    response.writeHead(304, headers).end();
    return;
  }
  response.writeHead(200, { ...headers, 'Content-Length': found.size });
  if (request.method === 'HEAD') response.end();
  else pipeline(createReadStream(found.file), response, () => {});
}

/**
 * A web server for one folder of files, and nothing outside it.
 * @param {string} folder
 * @returns {import('node:http').Server} not yet listening
 */
export function createStaticServer(folder) {
  const securityHeaders = securityHeadersFor(folder);
  return createServer((request, response) => {
    answer(folder, securityHeaders, request, response).catch(() => response.destroy());
  });
}

/**
 * Listens, and tells the port it got.
 * @param {import('node:http').Server} server
 * @param {number} port 0 for any free one
 * @param {string} host
 * @returns {Promise<number>}
 */
export function listen(server, port, host) {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, () => {
      server.removeListener('error', reject);
      resolve(server.address().port);
    });
  });
}
