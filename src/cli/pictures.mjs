import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { buildSite, siteFolder } from './build-site.mjs';
import { findChromium } from './find-chromium.mjs';
import { buildFolder, ensurePackages } from './set-up.mjs';
import { runMain, SetUpError } from './set-up-error.mjs';
import { createStaticServer, listen } from './static-server.mjs';

const stations = [
  'planting',
  'bloom',
  'boll',
  'harvest',
  'module',
  'cleaning',
  'ginning',
  'pressing',
  'classing',
  'spinning',
  'weaving',
  'sewing',
];
const screens = [
  { name: 'desk', width: 1366, height: 768, theme: 'day' },
  { name: 'phone', width: 390, height: 844, theme: 'day' },
  { name: 'tall', width: 1080, height: 1920, theme: 'day' },
  { name: 'projector', width: 1024, height: 768, theme: 'projector' },
];
const languages = { en: 'en-US', es: 'es-US' };
/** How long a picture lives before it is taken: the renderer is fetched, and the season is under way. */
const livesMs = 2500;

const folder = join(buildFolder, 'pictures');
const usage = 'allowed: --farm ID, --station ID';

/** The values of --farm and --station. */
function readOptions(args) {
  const options = { farm: 'coastal-plain', station: undefined };
  for (let i = 0; i < args.length; i += 2) {
    const name = args[i].replace(/^--/, '');
    if (!args[i].startsWith('--') || !(name in options)) throw new SetUpError(`unknown option ${args[i]}; ${usage}`);
    const value = args[i + 1];
    if (value === undefined) throw new SetUpError(`${args[i]} needs a value; ${usage}`);
    options[name] = value;
  }
  if (options.station !== undefined && !stations.includes(options.station))
    throw new SetUpError(`--station ${options.station}; allowed: ${stations.join(', ')}`);
  return options;
}

/** Takes every scene at every size in both languages, to be looked at one by one. */
await runMain(async () => {
  const { farm, station } = readOptions(process.argv.slice(2));
  await ensurePackages();
  const executablePath = findChromium();
  if (!executablePath) throw new SetUpError('no Chromium found: install one, or set SEAMFIELD_CHROMIUM to its path');
  const { code, output } = await buildSite((line) => console.log(line));
  if (code !== 0) throw new SetUpError(`the app could not be built:\n${output.trim()}`);
  const server = createStaticServer(siteFolder);
  const port = await listen(server, 0, '127.0.0.1');
  const { chromium } = await import('playwright-core');
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--enable-unsafe-swiftshader'] });
  mkdirSync(folder, { recursive: true });
  for (const screen of screens) {
    for (const [language, locale] of Object.entries(languages)) {
      const context = await browser.newContext({ viewport: { width: screen.width, height: screen.height }, locale });
      const page = await context.newPage();
      await page.goto(`http://127.0.0.1:${port}/`);
      await page.evaluate(
        ([theme, shown]) =>
          localStorage.setItem('seamfield.preferences.1', JSON.stringify({ theme, language: shown, motion: 'moving' })),
        [screen.theme, language],
      );
      for (const id of station ? [station] : stations) {
        await page.goto('about:blank');
        await page.goto(`http://127.0.0.1:${port}/#/season/${id}?v=1&farm=${farm}&seed=1`);
        await page.locator(`main[data-station=${id}] .scene`).waitFor();
        await page.evaluate(() => document.fonts.ready);
        await page.waitForTimeout(livesMs);
        const name = `${String(stations.indexOf(id) + 1).padStart(2, '0')}-${id}-${screen.name}-${language}.png`;
        await page.screenshot({ path: join(folder, name) });
      }
      console.log(`build/pictures: ${screen.name}, ${language}`);
      await context.close();
    }
  }
  await browser.close();
  server.close();
  server.closeAllConnections();
});
