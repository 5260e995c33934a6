import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { withLock } from './file-lock.mjs';
import { root } from './project-root.mjs';
import { runCommand } from './run-command.mjs';
import { buildFolder } from './set-up.mjs';
import { sourceHash } from './source-hash.mjs';

/** The folder a static host serves; it holds nothing else. */
export const siteFolder = join(buildFolder, 'site');

const sources = ['src', 'content', 'public', 'index.html', 'vite.config.ts', 'tsconfig.json', 'package-lock.json'];
const stampFile = join(buildFolder, 'site.hash');

const isFresh = (hash) =>
  existsSync(join(siteFolder, 'index.html')) && existsSync(stampFile) && readFileSync(stampFile, 'utf8') === hash;

/**
 * Builds the app into build/site when the sources changed since the last build. In a process of its own: a server that runs for
 * weeks should not carry the bundler.
 * @param {(line: string) => void} say told before a build starts
 * @returns {Promise<{code: number, output: string}>} code 0 when the site is there and fresh
 */
export async function buildSite(say) {
  return withLock(join(buildFolder, 'site.lock'), async () => {
    const hash = sourceHash(sources);
    if (isFresh(hash)) return { code: 0, output: '' };
    say('Building the app…');
    rmSync(stampFile, { force: true });
    const vite = join(root, 'node_modules', 'vite', 'bin', 'vite.js');
    const result = await runCommand(process.execPath, [vite, 'build', '--logLevel', 'warn']);
    if (result.code === 0) writeFileSync(stampFile, hash);
    return result;
  });
}
