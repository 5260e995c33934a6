// Draws one frame with pixi in chromium, under a strict content policy, and writes a PNG to look at. `--no-webgl` tries the canvas renderer.
import { mkdirSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { rolldown } from 'rolldown';

const here = path.dirname(fileURLToPath(import.meta.url));
const folder = process.env.LOOKS ?? '/tmp/looks';
mkdirSync(folder, { recursive: true });
const bundle = await rolldown({ input: path.join(here, 'pixi-page.ts'), platform: 'browser' });
const { output } = await bundle.generate({ format: 'esm' });
const files = new Map(output.map((chunk) => [`/${chunk.fileName}`, chunk.code ?? chunk.source]));
const entry = output.find((chunk) => chunk.isEntry).fileName;

const noWebgl = process.argv.includes('--no-webgl');
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: noWebgl
    ? ['--no-sandbox', '--disable-gpu', '--disable-3d-apis']
    : ['--no-sandbox', '--enable-unsafe-swiftshader'],
});
const page = await browser.newPage({ viewport: { width: 860, height: 560 } });
page.on('console', (message) => console.log('console:', message.text()));
page.on('pageerror', (error) => console.log('page error:', error.message));
await page.route('http://scene.test/**', (route) => {
  const { pathname } = new URL(route.request().url());
  if (pathname === '/')
    return route.fulfill({
      contentType: 'text/html',
      headers: { 'content-security-policy': "default-src 'self'" },
      body: `<!doctype html><body><div id="host"></div><script type="module" src="/${entry}"></script>`,
    });
  const body = files.get(pathname);
  return body === undefined ? route.fulfill({ status: 404 }) : route.fulfill({ contentType: 'text/javascript', body });
});
await page.goto('http://scene.test/');
await page.waitForFunction(() => window.sceneReport !== undefined, undefined, { timeout: 20000 });
await page.screenshot({ path: path.join(folder, noWebgl ? 'pixi-canvas.png' : 'pixi-webgl.png') });
console.log(await page.evaluate(() => JSON.stringify(window.sceneReport)));
if (!noWebgl) console.log(await page.evaluate(() => window.sceneLossTrial().then(JSON.stringify)));
await page.screenshot({ path: path.join(folder, noWebgl ? 'pixi-canvas-after.png' : 'pixi-webgl-after.png') });
await browser.close();
