// What one frame of each scene costs (update and render call), beside a bare scene of the renderer with as many pieces.
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { rolldown } from 'rolldown';
import { findChromium } from '../../src/cli/find-chromium.mjs';

const here = path.dirname(fileURLToPath(import.meta.url));
const bundle = await rolldown({ input: path.join(here, 'frame-cost-page.ts'), platform: 'browser' });
const { output } = await bundle.generate({ format: 'esm' });
const files = new Map(output.map((chunk) => [`/${chunk.fileName}`, chunk.code ?? chunk.source]));
const entry = output.find((chunk) => chunk.isEntry).fileName;
const browser = await chromium.launch({
  executablePath: findChromium(),
  args: ['--no-sandbox', '--enable-unsafe-swiftshader'],
});
const page = await browser.newPage({ viewport: { width: 860, height: 560 } });
page.on('pageerror', (error) => console.error(error.message));
await page.route('http://scene.test/**', (route) => {
  const { pathname } = new URL(route.request().url());
  if (pathname === '/')
    return route.fulfill({
      contentType: 'text/html',
      body: `<!doctype html><script type="module" src="/${entry}"></script>`,
    });
  const body = files.get(pathname);
  return body === undefined ? route.fulfill({ status: 404 }) : route.fulfill({ contentType: 'text/javascript', body });
});
await page.goto('http://scene.test/');
await page.waitForFunction(() => window.frameCost !== undefined);
for (const { station, pieces, oursMs, bareMs } of await page.evaluate(() => window.frameCost)) {
  console.log(
    `${station.padEnd(9)} ${String(pieces).padStart(3)} pieces  ours ${oursMs.toFixed(2)} ms  bare ${bareMs.toFixed(2)} ms  ${(oursMs / bareMs).toFixed(2)} times`,
  );
}
await browser.close();
