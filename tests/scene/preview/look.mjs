// Draws the preview sheets to PNG, so that they can be looked at. See README.md beside this file.
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';
import { rolldown } from 'rolldown';

const here = path.dirname(fileURLToPath(import.meta.url));
const root = path.join(here, '..', '..', '..');
const folder = process.env.LOOKS ?? '/tmp/looks';
mkdirSync(folder, { recursive: true });

const built = path.join(folder, `sheets-${process.pid}.mjs`);
const bundle = await rolldown({ input: path.join(here, 'sheets.ts'), platform: 'node' });
await bundle.write({ file: built, format: 'esm' });
const { sheets } = await import(pathToFileURL(built).href);
rmSync(built);

const font = (file) => readFileSync(path.join(root, 'public/fonts', file)).toString('base64');
const face = (family, weight, style, file) =>
  `@font-face{font-family:'${family}';font-weight:${weight};font-style:${style};${family === 'Seam Text' ? 'size-adjust:109%;' : ''}src:url(data:font/woff2;base64,${font(file)})}`;
const fonts = [
  face('Seam Text', 500, 'normal', 'alegreya-sans-500.woff2'),
  face('Seam Text', 800, 'normal', 'alegreya-sans-800.woff2'),
  face('Seam Text', 500, 'italic', 'alegreya-sans-500-italic.woff2'),
  face('Seam Display', 800, 'normal', 'bricolage-grotesque-800.woff2'),
].join('');

const wanted = process.argv.slice(2);
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--enable-unsafe-swiftshader'],
});
for (const [name, draw] of Object.entries(sheets)) {
  if (wanted.length > 0 && !wanted.some((prefix) => name.startsWith(prefix))) continue;
  const { width, height, svg, background, density = 1 } = draw();
  const page = await browser.newPage({ viewport: { width, height }, deviceScaleFactor: density });
  const css = `${fonts}body{margin:0;background:${background}}.scene-text{font-variant-numeric:lining-nums tabular-nums}`;
  await page.setContent(`<style>${css}</style>${svg}`);
  await page.evaluate(() => document.fonts.ready);
  await page.screenshot({ path: path.join(folder, `${name}.png`) });
  await page.close();
  console.log(path.join(folder, `${name}.png`), `${Math.round(svg.length / 1024)} kB of SVG`);
}
await browser.close();
