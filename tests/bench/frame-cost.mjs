// What one frame of each scene costs (update and render call), beside a bare scene of the renderer with as many pieces.
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { rolldown } from 'rolldown';
import { findChromium } from '../../src/cli/find-chromium.mjs';
import { formulaModule } from '../../src/cli/formula-mathml.mjs';

const here = path.dirname(fileURLToPath(import.meta.url));
const bundle = await rolldown({
  input: path.join(here, 'frame-cost-page.ts'),
  platform: 'browser',
  // No scene shows a formula.
  plugins: [formulaModule({})],
});
const { output } = await bundle.generate({ format: 'esm' });
const files = new Map(output.map((chunk) => [`/${chunk.fileName}`, chunk.code ?? chunk.source]));
const entry = output.find((chunk) => chunk.isEntry).fileName;
const browser = await chromium.launch({
  executablePath: findChromium(),
  args: ['--no-sandbox', '--enable-unsafe-swiftshader'],
});
const page = await browser.newPage({ viewport: { width: 860, height: 560 } });
page.on('pageerror', (error) => console.error(error.message));
// The scenes are drawn and measured in one go, and the page answers after it.
page.setDefaultTimeout(0);
// A page that shares its process with nobody has a clock of 5 instead of 100 microseconds.
const alone = { 'Cross-Origin-Opener-Policy': 'same-origin', 'Cross-Origin-Embedder-Policy': 'require-corp' };
await page.route('https://scene.test/**', (route) => {
  const { pathname } = new URL(route.request().url());
  if (pathname === '/')
    return route.fulfill({
      contentType: 'text/html',
      headers: alone,
      body: `<!doctype html><script type="module" src="/${entry}"></script>`,
    });
  const body = files.get(pathname);
  return body === undefined
    ? route.fulfill({ status: 404 })
    : route.fulfill({ contentType: 'text/javascript', headers: alone, body });
});
await page.goto('https://scene.test/');
await page.waitForFunction(() => window.frameCost !== undefined);
for (const { station, pieces, oursMs, bareMs } of await page.evaluate(() => window.frameCost)) {
  console.log(
    `${station.padEnd(9)} ${String(pieces).padStart(3)} pieces  ours ${oursMs.toFixed(3)} ms  bare ${bareMs.toFixed(3)} ms  ${(oursMs / bareMs).toFixed(2)} times`,
  );
}
await browser.close();
