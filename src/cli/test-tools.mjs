import { join } from 'node:path';
import { withLock } from './file-lock.mjs';
import { findChromium, findOnPath } from './find-chromium.mjs';
import { runCommand } from './run-command.mjs';
import { buildFolder } from './set-up.mjs';

const mayInstall = () => process.getuid?.() === 0 && findOnPath('apt-get') !== undefined;

/** Installs Debian packages by name; what apt-get said when it could not. */
async function aptInstall(packages) {
  const quiet = { DEBIAN_FRONTEND: 'noninteractive' };
  const wait = ['-o', 'DPkg::Lock::Timeout=300'];
  // An update may fail for one list and the install still work from another.
  await runCommand('apt-get', [...wait, '-qq', 'update'], quiet);
  return runCommand('apt-get', [...wait, '-qq', 'install', '-y', '--no-install-recommends', ...packages], quiet);
}

/**
 * Brings the programs that tests use: Chromium, and GNU units, which checks unit conversions. Installs Debian's packages where
 * it may. Without units its comparison says in its name that it did not run; without Chromium the browser tests fail.
 * @returns {Promise<string | undefined>} what to install, in one line, when no Chromium could be had
 */
export async function ensureTestTools() {
  const missing = () => [
    ...(findChromium() || process.env.SEAMFIELD_CHROMIUM ? [] : ['chromium']),
    ...(findOnPath('units') ? [] : ['units']),
  ];
  let failure = '';
  if (missing().length > 0 && mayInstall()) {
    await withLock(join(buildFolder, 'apt.lock'), async () => {
      const packages = missing();
      if (packages.length === 0) return;
      process.stderr.write(`Installing Debian's ${packages.join(' and ')} for the tests…\n`);
      const { code, output } = await aptInstall(packages);
      if (code !== 0) failure = ` (apt-get failed: ${output.trim().split('\n').at(-1)})`;
    });
  }
  if (findChromium()) return undefined;
  if (process.env.SEAMFIELD_CHROMIUM) return `SEAMFIELD_CHROMIUM: no program at ${process.env.SEAMFIELD_CHROMIUM}`;
  return `no Chromium found${failure}; install one (Debian: apt-get install chromium) or set SEAMFIELD_CHROMIUM to its path`;
}
