import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readModule } from './module-graph.ts';
import { projectFolder, readSources, type SourceFile } from './source-files.ts';
import { bannedWords, tooLong, untested, vaguePath } from './text-rules.ts';

const code = readSources(['src', 'tests'], /\.(ts|tsx|mjs|css|mdx)$/);
const texts: SourceFile[] = [
  ...code,
  ...readSources(['content'], /\.(mdx|json)$/),
  ...['README.md', 'DEVELOPERS.md', 'index.html', 'package.json', 'biome.json', 'vite.config.ts', '.ci/run']
    .filter((path) => existsSync(join(projectFolder, path)))
    .map((path) => ({ path, text: readFileSync(join(projectFolder, path), 'utf8') })),
];

/** Files of the model without a test of their own yet. May only shrink: a name that is no longer needed here fails. */
const withoutTest: readonly string[] = [];

describe('the text of the project', () => {
  test('was read', () => {
    expect(texts.length).toBeGreaterThan(60);
  });
  test('has no left-over marks, no words of how it was made, no check that cannot fail, no clock in the model', () => {
    expect(texts.flatMap(bannedWords)).toEqual([]);
  });
  test('has no file over 400 lines', () => {
    expect(code.flatMap(tooLong)).toEqual([]);
  });
  test('has no file or folder whose name says nothing', () => {
    expect(code.map(({ path }) => path).filter(vaguePath)).toEqual([]);
  });
  test('tests every file of the model that computes something, at the same path', () => {
    const computing = code
      .filter(({ path }) => /^src\/model\/.*\.ts$/.test(path))
      .filter((file) => !readModule(file).typesOnly)
      .map(({ path }) => path);
    const tests = new Set(code.map(({ path }) => path).filter((path) => path.startsWith('tests/model/')));
    expect(untested(computing, tests)).toEqual(withoutTest);
  });
});

describe('each rule fires on a planted violation', () => {
  const planted = (path: string, text: string) => ({ path, text });
  test.each([
    ['src/a.ts', '// TO' + 'DO later'],
    ['src/a.ts', '// FIX' + 'ME'],
    ['content/en/a.mdx', 'see issue ' + '#12'],
    ['src/a.ts', '// from ../shared' + '/reference'],
    ['README.md', 'as in the seed docu' + 'ment'],
    ['src/a.ts', '// gin.m' + 'd section 3'],
    ['tests/a.test.ts', 'expect(tru' + 'e).toBe(true);'],
    ['tests/a.test.ts', 'test.ski' + "p('x', () => {});"],
    ['src/model/a.ts', 'const x = Math.random();'],
    ['src/model/a.ts', 'const now = Date.now();'],
  ])('%s: %s', (path, text) => {
    expect(bannedWords(planted(path, `const a = 1;\n${text}\n`))).toHaveLength(1);
  });
  test('words that only look alike pass', () => {
    expect(bannedWords(planted('src/a.ts', '// Nothing here was shared / todo el algodón; issued 12 bales'))).toEqual(
      [],
    );
  });
  test('a file of 401 lines', () => {
    expect(tooLong(planted('src/a.ts', '\n'.repeat(401)))).toHaveLength(1);
    expect(tooLong(planted('src/a.ts', '\n'.repeat(400)))).toEqual([]);
  });
  test('vague names', () => {
    expect(['src/utils/a.ts', 'src/ui/helpers.ts', 'src/ui/index.ts'].filter(vaguePath)).toHaveLength(3);
    expect(vaguePath('src/ui/commonest.ts')).toBe(false);
  });
  test('a file of the model without a test', () => {
    const tests = new Set(['tests/model/gin/a.test.ts']);
    expect(untested(['src/model/gin/a.ts', 'src/model/gin/b.ts', 'src/model/gin/facts.ts'], tests)).toEqual([
      'src/model/gin/b.ts',
    ]);
  });
});
