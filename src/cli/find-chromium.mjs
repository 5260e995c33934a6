import { accessSync, constants, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';

const names = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome'];
const usualPaths = [
  '/usr/bin/chromium',
  '/usr/lib/chromium/chromium',
  '/snap/bin/chromium',
  '/opt/google/chrome/chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
];

function runnable(path) {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}

/**
 * Finds a command on the PATH.
 * @param {string} name
 * @param {Record<string, string | undefined>} [env]
 * @returns {string | undefined} its full path
 */
export function findOnPath(name, env = process.env) {
  const folders = (env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  return folders.map((folder) => join(folder, name)).find(runnable);
}

/**
 * Finds a Chromium to test in: SEAMFIELD_CHROMIUM, then the usual names on the PATH, then the usual places. A variable that names
 * no program finds nothing, rather than some other browser behind the person's back.
 * @param {Record<string, string | undefined>} [env]
 * @returns {string | undefined} its path
 */
export function findChromium(env = process.env) {
  if (env.SEAMFIELD_CHROMIUM) return runnable(env.SEAMFIELD_CHROMIUM) ? env.SEAMFIELD_CHROMIUM : undefined;
  for (const name of names) {
    const found = findOnPath(name, env);
    if (found) return found;
  }
  return usualPaths.find(runnable);
}
