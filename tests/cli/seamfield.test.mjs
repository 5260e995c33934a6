import { spawn, spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { root } from '../../src/cli/project-root.mjs';

const script = join(root, 'src', 'cli', 'seamfield.mjs');
const run = (...args) => spawnSync(process.execPath, [script, ...args], { encoding: 'utf8', maxBuffer: 2 ** 26 });

test('the command line builds itself, keeps standard output for the result, and gives the same bytes for the same seed', () => {
  const first = run('season', '--seed', '7', '--json');
  expect(first.stderr.replace('Building the command line…\n', '')).toBe('');
  expect(first.status).toBe(0);
  expect(JSON.parse(first.stdout)).toMatchObject({ seed: 7 });
  const second = run('season', '--seed', '7', '--json');
  expect(second.stdout).toBe(first.stdout);
  expect(second.stderr).toBe('');
});

test('an unknown command is one line on standard error and code 2', () => {
  const { status, stdout, stderr } = run('sow');
  expect(stderr).toMatch(/^seamfield: [^\n]*sow[^\n]*\n$/);
  expect([status, stdout]).toEqual([2, '']);
});

test('a reader that stops early is no error', async () => {
  const child = spawn(process.execPath, [script, 'season', '--json'], { stdio: ['ignore', 'pipe', 'pipe'] });
  let complaint = '';
  child.stderr.setEncoding('utf8').on('data', (chunk) => {
    complaint += chunk;
  });
  child.stdout.once('data', () => child.stdout.destroy());
  const code = await new Promise((resolve) => child.once('close', resolve));
  expect([code, complaint]).toEqual([0, '']);
});
