import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** The project's folder. */
export const projectFolder = join(import.meta.dirname, '..', '..');

/** A text file of the project: its path from the project's folder, with forward slashes, and its text. */
export interface SourceFile {
  readonly path: string;
  readonly text: string;
}

/** Files below some folders whose names end in one of the endings, in order of their paths. */
export function readSources(folders: readonly string[], endings: RegExp): SourceFile[] {
  return folders
    .flatMap((folder) =>
      readdirSync(join(projectFolder, folder), { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile() && endings.test(entry.name))
        .map((entry) => join(entry.parentPath, entry.name)),
    )
    .sort()
    .map((file) => ({
      path: file.slice(projectFolder.length + 1).replaceAll('\\', '/'),
      text: readFileSync(file, 'utf8'),
    }));
}
