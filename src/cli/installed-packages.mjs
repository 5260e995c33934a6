import { readFileSync } from 'node:fs';
import { join } from 'node:path';

const readPackages = (path) => JSON.parse(readFileSync(path, 'utf8')).packages;

/**
 * Whether node_modules holds what package-lock.json asks for. npm writes node_modules/.package-lock.json at the very end of an
 * install, so a broken-off install does not match either.
 * @param {string} folder the project's folder
 */
export function packagesMatchLock(folder) {
  let installed;
  try {
    installed = readPackages(join(folder, 'node_modules', '.package-lock.json'));
  } catch {
    return false;
  }
  const wanted = readPackages(join(folder, 'package-lock.json'));
  for (const [path, entry] of Object.entries(wanted)) {
    if (path === '') continue;
    const found = installed[path];
    // npm leaves optional packages for other kinds of machine out.
    if (found === undefined && entry.optional) continue;
    if (found?.version !== entry.version || found.integrity !== entry.integrity) return false;
  }
  return true;
}
