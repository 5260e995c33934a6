import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

/** The first view must come fast on a classroom's network: the entry script and all it imports, gzip level 9, bytes. */
const entryBudget = 45_000;
/** Everything a kiosk or a laptop keeps for use offline, bytes. */
const totalBudget = 2_500_000;

const gzipBytes = (path) => gzipSync(readFileSync(path), { level: 9 }).length;

/**
 * Every chunk that loads with the entry, over static imports.
 * @param {readonly {file: string, entry: boolean, imports: string[], modules: string[]}[]} chunks
 */
function entryChunks(chunks) {
  const byFile = new Map(chunks.map((chunk) => [chunk.file, chunk]));
  const seen = new Set(chunks.filter((chunk) => chunk.entry));
  for (const chunk of seen) {
    for (const file of chunk.imports) {
      const next = byFile.get(file);
      if (next) seen.add(next);
    }
  }
  return [...seen];
}

/**
 * Measures a built site against its budgets.
 * @param {string} siteFolder
 * @param {string} chunkFile the list that the build writes
 * @returns {{summary: string, problems: string[]}}
 */
export function checkSize(siteFolder, chunkFile) {
  const first = entryChunks(JSON.parse(readFileSync(chunkFile, 'utf8')));
  const entryBytes = first.reduce((sum, { file }) => sum + gzipBytes(join(siteFolder, file)), 0);
  const files = readdirSync(siteFolder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  const totalBytes = files.reduce((sum, entry) => sum + gzipBytes(join(entry.parentPath ?? entry.path, entry.name)), 0);
  const problems = [];
  if (first.length === 0) problems.push('the build lists no entry script');
  if (entryBytes > entryBudget)
    problems.push(`the entry and its static imports take ${entryBytes} bytes gzipped; allowed: ${entryBudget}`);
  if (totalBytes > totalBudget) problems.push(`the site takes ${totalBytes} bytes gzipped; allowed: ${totalBudget}`);
  const pixi = first.filter(({ modules }) => modules.some((id) => id.includes('node_modules/pixi.js/')));
  if (pixi.length > 0)
    problems.push(
      `pixi.js loads with the entry, in ${pixi.map(({ file }) => file).join(', ')}; reach it by import() only`,
    );
  return { summary: `entry ${entryBytes} of ${entryBudget} bytes, site ${totalBytes} of ${totalBudget}`, problems };
}
