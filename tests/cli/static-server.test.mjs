import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { createStaticServer, listen } from '../../src/cli/static-server.mjs';

const policy = "default-src 'none'; script-src 'self'";
let box;
let server;
let port;

beforeAll(async () => {
  box = mkdtempSync(join(tmpdir(), 'seamfield-'));
  const site = join(box, 'site');
  mkdirSync(join(site, 'assets'), { recursive: true });
  mkdirSync(join(site, 'kiosk'));
  writeFileSync(
    join(site, 'index.html'),
    `<meta http-equiv="Content-Security-Policy" content="${policy}" /><h1>Hi</h1>`,
  );
  writeFileSync(join(site, 'kiosk', 'index.html'), '<h1>Kiosk</h1>');
  writeFileSync(join(site, 'sw.js'), '// worker');
  writeFileSync(join(site, 'assets', 'index-o59OQzDr.js'), 'export {};');
  writeFileSync(join(site, 'algodón crudo.svg'), '<svg xmlns="http://www.w3.org/2000/svg"/>');
  writeFileSync(join(site, '.hidden'), 'secret');
  writeFileSync(join(box, 'secret.txt'), 'secret');
  symlinkSync(join(box, 'secret.txt'), join(site, 'link.txt'));
  server = createStaticServer(site);
  port = await listen(server, 0, '127.0.0.1');
});
afterAll(() => {
  server.close();
  server.closeAllConnections();
  rmSync(box, { recursive: true });
});

/** Asks for a path exactly as it stands: no client tidies it up first. */
const ask = (path, { method = 'GET', headers = {} } = {}) =>
  new Promise((resolve, reject) => {
    const sent = request({ host: '127.0.0.1', port, path, method, headers }, (response) => {
      let text = '';
      response.setEncoding('utf8').on('data', (chunk) => {
        text += chunk;
      });
      response.on('end', () => resolve({ code: response.statusCode, headers: response.headers, text }));
    });
    sent.on('error', reject).end();
  });

describe('what is there', () => {
  test.each([
    ['/', 'text/html; charset=utf-8', 'no-cache'],
    ['/index.html?x=1#y', 'text/html; charset=utf-8', 'no-cache'],
    ['/kiosk/', 'text/html; charset=utf-8', 'no-cache'],
    ['/sw.js', 'text/javascript; charset=utf-8', 'no-cache'],
    ['/assets/index-o59OQzDr.js', 'text/javascript; charset=utf-8', 'public, max-age=31536000, immutable'],
    ['/algod%C3%B3n%20crudo.svg', 'image/svg+xml', 'no-cache'],
  ])('%s is %s, %s', async (path, type, cache) => {
    const { code, headers } = await ask(path);
    expect(code).toBe(200);
    expect(headers['content-type']).toBe(type);
    expect(headers['cache-control']).toBe(cache);
  });

  test('HEAD has the headers and no body; a known tag answers 304', async () => {
    const head = await ask('/', { method: 'HEAD' });
    expect(head.text).toBe('');
    expect(Number(head.headers['content-length'])).toBeGreaterThan(0);
    const again = await ask('/', { headers: { 'if-none-match': head.headers.etag } });
    expect([again.code, again.text]).toEqual([304, '']);
  });
});

describe('what is not there, or is none of the asker’s business', () => {
  test.each([
    '/nothing.html',
    '/../secret.txt',
    '/%2e%2e/secret.txt',
    '/..%2fsecret.txt',
    '/assets/../../secret.txt',
    '/%2e%2e%5csecret.txt',
    '//etc/passwd',
    '/link.txt',
    '/.hidden',
    '/index.html%00.js',
    '/%E0%A4%A',
    '/assets',
    '/index.html/',
  ])('%s', async (path) => {
    const { code, text } = await ask(path);
    expect(code).toBe(404);
    expect(text).not.toContain('secret');
  });

  test('other methods are refused', async () => {
    const { code, headers } = await ask('/', { method: 'POST' });
    expect([code, headers.allow]).toEqual([405, 'GET, HEAD']);
  });
});

test.each(['/', '/nothing.html'])('%s carries the page’s own policy and forbids guessing types', async (path) => {
  const { headers } = await ask(path);
  expect(headers['content-security-policy']).toBe(`${policy}; frame-ancestors 'self'`);
  expect(headers['x-content-type-options']).toBe('nosniff');
  expect(headers['referrer-policy']).toBe('no-referrer');
});

test('a page without a policy is not served', () => {
  const site = mkdtempSync(join(tmpdir(), 'seamfield-'));
  writeFileSync(join(site, 'index.html'), '<h1>Hi</h1>');
  expect(() => createStaticServer(site)).toThrow(/no content security policy/);
  rmSync(site, { recursive: true });
});

test('a taken port is an error that says so', async () => {
  const second = createStaticServer(join(box, 'site'));
  await expect(listen(second, port, '127.0.0.1')).rejects.toMatchObject({ code: 'EADDRINUSE' });
});
