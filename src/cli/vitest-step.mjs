import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './project-root.mjs';
import { runCommand } from './run-command.mjs';
import { buildFolder } from './set-up.mjs';

/**
 * Runs vitest once and counts its tests.
 * @param {string} name what this run is called
 * @param {readonly string[]} args further arguments
 * @param {Record<string, string>} env added to the environment
 * @returns {Promise<{passed: number, failed: number, detail: string}>} detail: vitest's report when something failed
 */
export async function runVitest(name, args, env) {
  const countsFile = join(buildFolder, 'test', `${name}.json`);
  mkdirSync(join(buildFolder, 'test'), { recursive: true });
  rmSync(countsFile, { force: true });
  const { code, output } = await runCommand(
    process.execPath,
    [
      join(root, 'node_modules', 'vitest', 'vitest.mjs'),
      'run',
      '--reporter=dot',
      `--reporter=${join(root, 'src', 'cli', 'count-reporter.mjs')}`,
      ...args,
    ],
    { ...env, SEAMFIELD_COUNTS: countsFile },
  );
  // Without a count, vitest itself broke.
  if (!existsSync(countsFile)) return { passed: 0, failed: 1, detail: output };
  const { passed, failed, skipped } = JSON.parse(readFileSync(countsFile, 'utf8'));
  const unseen = (code !== 0 && failed === 0) || passed + failed === 0 ? 1 : 0;
  const skips = skipped.map((test) => `skipped, which counts as failed: ${test}`).join('\n');
  return { passed, failed: failed + unseen, detail: failed + unseen > 0 ? `${skips}\n${output}` : '' };
}
