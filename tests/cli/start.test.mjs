import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { root } from '../../src/cli/project-root.mjs';

/** Runs a script with options that must be refused before anything is installed, built or written. */
const refuse = (script, args, env = {}) =>
  spawnSync(process.execPath, [join(root, 'src', 'cli', script), ...args], {
    encoding: 'utf8',
    env: { ...process.env, ...env },
    timeout: 20_000,
  });

describe('bad options end with one line on standard error and code 2', () => {
  test.each([
    ['start.mjs', ['--shared'], {}, 'unknown option "--shared"; allowed: --share'],
    ['start.mjs', ['--share', '8080'], {}, 'unknown option "8080"; allowed: --share'],
    ['start.mjs', [], { PORT: '0' }, 'PORT: "0" is not allowed; allowed: 1 to 65535'],
    ['start.mjs', [], { PORT: '70000' }, 'PORT: "70000" is not allowed; allowed: 1 to 65535'],
    ['start.mjs', [], { PORT: '80a' }, 'PORT: "80a" is not allowed; allowed: 1 to 65535'],
    ['start.mjs', [], { PORT: '' }, 'PORT: "" is not allowed; allowed: 1 to 65535'],
    ['test.mjs', ['--fast'], {}, 'unknown option "--fast"; allowed: --long'],
  ])('%s %j %j', (script, args, env, line) => {
    const { status, stdout, stderr } = refuse(script, args, env);
    expect(stderr).toBe(`seamfield: ${line}\n`);
    expect(stdout).toBe('');
    expect(status).toBe(2);
  });
});
