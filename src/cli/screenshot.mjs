import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { buildSite, siteFolder } from './build-site.mjs';
import { findChromium } from './find-chromium.mjs';
import { root } from './project-root.mjs';
import { ensurePackages } from './set-up.mjs';
import { runMain, SetUpError } from './set-up-error.mjs';
import { createStaticServer, listen } from './static-server.mjs';

/** The pictures the README shows: where each is taken, and how large. */
const pictures = [
  { name: 'season.png', path: '#/season/ginning?v=1&farm=coastal-plain&seed=1', width: 1366, height: 768 },
];

/** Takes the README's pictures from the built app, so that they never show what the app does not. */
await runMain(async () => {
  await ensurePackages();
  const executablePath = findChromium();
  if (!executablePath) throw new SetUpError('no Chromium found: install one, or set SEAMFIELD_CHROMIUM to its path');
  const { code, output } = await buildSite((line) => console.log(line));
  if (code !== 0) throw new SetUpError(`the app could not be built:\n${output.trim()}`);
  const server = createStaticServer(siteFolder);
  const port = await listen(server, 0, '127.0.0.1');
  const { chromium } = await import('playwright-core');
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--enable-unsafe-swiftshader'] });
  const folder = join(root, 'content', 'pictures');
  mkdirSync(folder, { recursive: true });
  for (const { name, path, width, height } of pictures) {
    const page = await browser.newPage({ viewport: { width, height }, reducedMotion: 'reduce' });
    await page.goto(`http://127.0.0.1:${port}/${path}`);
    await page.locator('.scene svg').waitFor();
    await page.evaluate(() => document.fonts.ready);
    await page.screenshot({ path: join(folder, name) });
    console.log(`content/pictures/${name}`);
  }
  await browser.close();
  server.close();
  server.closeAllConnections();
});
