import { join } from 'node:path';
import { withLock } from './file-lock.mjs';
import { packagesMatchLock } from './installed-packages.mjs';
import { root } from './project-root.mjs';
import { runCommand } from './run-command.mjs';
import { SetUpError } from './set-up-error.mjs';

/** Where locks and everything else that is made lie; never committed. */
export const buildFolder = join(root, 'build');

const say = (line) => process.stderr.write(`${line}\n`);

/** Node versions the pinned packages accept; package.json says the same to npm. */
function checkNode() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if ((major === 20 && minor >= 19) || (major === 22 && minor >= 12) || major > 22) return;
  throw new SetUpError(`needs Node.js 20.19 or later in 20, or 22.12 or later; this is ${process.versions.node}`);
}

/**
 * Installs the locked packages when node_modules does not match the lock. Safe when several commands start at once.
 * @throws SetUpError with one line when they cannot be installed
 */
export async function ensurePackages() {
  checkNode();
  if (packagesMatchLock(root)) return;
  await withLock(join(buildFolder, 'install.lock'), installPackages, () => say('Waiting for another install to end…'));
}

async function installPackages() {
  if (packagesMatchLock(root)) return;
  say('Installing the packages of package-lock.json (once, about a minute)…');
  // Under npm, npm_execpath is the very npm that started us, also where none is on the PATH.
  const npm = process.env.npm_execpath;
  const [command, ...first] = npm?.endsWith('.js') ? [process.execPath, npm] : ['npm'];
  // Development packages build and serve the app, so they are wanted even where NODE_ENV says production.
  const args = [...first, 'ci', '--include=dev', '--prefer-offline', '--no-audit', '--no-fund', '--loglevel=error'];
  const { code, output } = await runCommand(command, args);
  if (code === 0 && packagesMatchLock(root)) return;
  throw new SetUpError(
    `the packages are not installed and npm ci failed (${reason(output)}); connect this machine to the internet once and run the command again`,
  );
}

/** The line of npm's output that says most. */
function reason(output) {
  const lines = output.split('\n').map((line) => line.replace(/^npm (error|ERR!)\s*/, '').trim());
  return (
    lines.find((line) => /ENOTFOUND|EAI_AGAIN|ECONN|ETIMEDOUT|request to/.test(line)) ??
    lines.find(Boolean) ??
    'no output'
  );
}
