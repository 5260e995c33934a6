import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import type { Plugin } from 'vite';

const id = 'virtual:fact-uses';
const importLine = /import\s+(?:type\s+)?\{([^}]*)\}\s+from\s+'([^']+)'/g;
const keyLine = /^\s+(\w+): \{/gm;
const word = /[A-Za-z_]\w*/g;

const bare = (path: string) => path.replace(/\.ts$/, '');
const isFacts = (path: string) => /(^|[-/])facts\.ts$/.test(path);

/**
 * Where each constant is used, read off the source text: a file uses a constant when it imports its table and holds its name.
 * @param root folder of the project
 * @returns 'gin/facts.ginFacts.key' to the files of src/model, without their endings, sorted
 */
export function factUses(root: string): Record<string, string[]> {
  const model = join(root, 'src', 'model');
  const files = readdirSync(model, { recursive: true })
    .map((path) => String(path).replaceAll('\\', '/'))
    .filter((path) => path.endsWith('.ts'));
  const texts = new Map(files.map((path) => [path, readFileSync(join(model, path), 'utf8')]));
  const keysOf = new Map(
    files
      .filter(isFacts)
      .map((path) => [path, new Set([...texts.get(path)!.matchAll(keyLine)].map(([, key]) => key!))]),
  );
  const uses: Record<string, string[]> = {};
  for (const [path, text] of texts) {
    for (const [, names = '', from = ''] of text.matchAll(importLine)) {
      const target = relative(model, join(model, path, '..', from)).replaceAll('\\', '/');
      const keys = keysOf.get(target);
      if (!keys) continue;
      const words = new Set(text.match(word));
      const exported = names
        .split(',')
        .map(
          (name) =>
            name
              .replace(/^\s*type\s+/, '')
              .trim()
              .split(/\s+as\s+/)[0]!,
        )
        .filter(Boolean);
      for (const name of exported)
        for (const key of [...keys].filter((each) => words.has(each))) {
          const constant = `${bare(target)}.${name}.${key}`;
          uses[constant] = [...(uses[constant] ?? []), bare(path)];
        }
    }
  }
  for (const list of Object.values(uses)) list.sort();
  return uses;
}

/** A module that holds where each constant is used, for the page of sources. */
export const factUsesPlugin = (root: string): Plugin => ({
  name: 'fact-uses',
  resolveId: (asked) => (asked === id ? `\0${id}` : undefined),
  load: (asked) => (asked === `\0${id}` ? `export const factUses = ${JSON.stringify(factUses(root))};` : undefined),
});
