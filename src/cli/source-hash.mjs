import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join, relative } from 'node:path';
import { root } from './project-root.mjs';

function filesUnder(path) {
  if (!existsSync(path)) return [];
  if (statSync(path).isFile()) return [path];
  return readdirSync(path, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath ?? entry.path, entry.name))
    .sort();
}

/**
 * One hash over the names and the contents of source files, to tell whether a build is stale. Contents and not times: a fresh
 * clone gives every file the same time.
 * @param {readonly string[]} paths files and folders, relative to the project's folder; missing ones count as missing
 */
export function sourceHash(paths) {
  const hash = createHash('sha256');
  for (const file of paths.flatMap((path) => filesUnder(join(root, path)))) {
    hash
      .update(`${relative(root, file)}\0`)
      .update(readFileSync(file))
      .update('\0');
  }
  return hash.digest('hex').slice(0, 16);
}
