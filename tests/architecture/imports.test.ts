import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { eagerPixi, layerBreaches } from './layer-rules.ts';
import { importCircles, type Module, readModule } from './module-graph.ts';
import { projectFolder, readSources } from './source-files.ts';

const byPath = (modules: readonly Module[]) => new Map(modules.map((module) => [module.path, module]));
const sources = readSources(['src'], /\.(ts|tsx|mjs)$/);
const graph = byPath(sources.map(readModule));

/** A graph of planted modules. */
const planted = (files: Record<string, string>) =>
  byPath(Object.entries(files).map(([path, text]) => readModule({ path, text })));

/** Local imports that name no file, or leave the ending out. Style sheets and data keep their own endings. */
const badPaths = (modules: Iterable<Module>, exists: (path: string) => boolean): string[] =>
  [...modules].flatMap(({ path, reaches }) =>
    reaches
      .filter(({ kind, local, target }) => local && kind !== 'glob' && !exists(target))
      .map(({ written }) => `${path}: no file at ${written}`),
  );

describe('the import graph of src', () => {
  test('was read: more than thirty modules', () => {
    expect(graph.size).toBeGreaterThan(30);
  });
  test('crosses its layers downwards only', () => {
    expect(layerBreaches(graph.values())).toEqual([]);
  });
  test('has no circles', () => {
    expect(importCircles(graph)).toEqual([]);
  });
  test('has no barrels: no module hands on the exports of another', () => {
    expect([...graph.values()].filter(({ reExports }) => reExports).map(({ path }) => path)).toEqual([]);
  });
  test('reaches pixi.js from outside the scene by import() alone', () => {
    expect(eagerPixi(graph)).toEqual([]);
  });
  test('names files that exist, with their endings', () => {
    expect(badPaths(graph.values(), (path) => existsSync(join(projectFolder, path)))).toEqual([]);
  });
});

test('only what runs what it has just built imports by an expression', () => {
  const unknown = [...graph.values()].filter(({ importsUnknown }) => importsUnknown).map(({ path }) => path);
  expect(unknown).toEqual(['src/cli/seamfield.mjs', 'src/cli/still-lessons.ts']);
});

describe('each rule fires on a planted violation', () => {
  test.each([
    ['a link imports another link', 'src/model/gin/a.ts', "import { x } from '../field/b.ts';"],
    ['a link imports the chain', 'src/model/gin/a.ts', "import { x } from '../chain.ts';"],
    ['a link imports another link for a type', 'src/model/mill/a.ts', "import type { X } from '../cloth/b.ts';"],
    ['the core imports a link', 'src/model/lot.ts', "import { x } from './gin/b.ts';"],
    ['lengths import a link', 'src/model/length/a.ts', "import { x } from '../gin/b.ts';"],
    ['the trace imports the chain', 'src/model/trace/a.ts', "import { x } from '../chain.ts';"],
    ['the model imports the page', 'src/model/chain.ts', "import { x } from '../ui/b.tsx';"],
    ['the model imports lessons', 'src/model/chain.ts', "import x from '../../content/en/lesson.mdx';"],
    ['the model loads lessons by pattern', 'src/model/chain.ts', "import.meta.glob('../../content/en/*.mdx');"],
    ['the model imports preact', 'src/model/lot.ts', "import { h } from 'preact';"],
    ['the model imports xstate lazily', 'src/model/lot.ts', "export const x = () => import('xstate');"],
    ['the model imports from Node', 'src/model/lot.ts', "import { readFileSync } from 'node:fs';"],
    ['a prediction imports a word', 'src/predict/a.ts', "import { x } from '../language/b.ts';"],
    ['a plan of a class imports a page', 'src/teach/plan/a.ts', "import { x } from '../../pages/b.tsx';"],
    ['the model imports a prediction', 'src/model/chain.ts', "import { x } from '../predict/b.ts';"],
    ['the statechart imports a scene', 'src/statechart/a.ts', "import { x } from '../scene/b.ts';"],
    ['the statechart imports preact', 'src/statechart/a.ts', "import { h } from 'preact/hooks';"],
    ['a scene imports the page', 'src/scene/a.ts', "import { x } from '../ui/b.tsx';"],
    ['a scene imports the language', 'src/scene/a.ts', "import { x } from '../language/b.ts';"],
    ['a part imports a scene', 'src/ui/a.tsx', "import { x } from '../scene/b.ts';"],
    ['a part imports the statechart', 'src/ui/a.tsx', "import { x } from '../statechart/b.ts';"],
    ['a part imports pixi.js', 'src/ui/a.tsx', "export const x = () => import('pixi.js');"],
    ['a page imports pixi.js', 'src/pages/a.tsx', "export const x = () => import('pixi.js');"],
    ['a page imports the command line', 'src/pages/a.tsx', "import { x } from '../cli/b.ts';"],
    ['the command line imports a page', 'src/cli/a.ts', "import { x } from '../pages/b.tsx';"],
    ['the language hands on a part', 'src/language/a.ts', "export { x } from '../ui/b.tsx';"],
    ['a test is imported', 'src/ui/a.tsx', "import { x } from '../../tests/laws/runs.ts';"],
    ['a folder belongs to no layer', 'src/misc/a.ts', 'export const x = 1;'],
    ['a folder of the model belongs to no link', 'src/model/misc/a.ts', 'export const x = 1;'],
  ])('%s', (_name, path, text) => {
    expect(layerBreaches(planted({ [path]: text }).values())).toHaveLength(1);
  });

  test('what is allowed passes', () => {
    const allowed = planted({
      'src/model/chain.ts': "import { x } from './gin/b.ts'; import { y } from './lot.ts';",
      'src/model/farms.ts': "import x from '../../content/scenarios/coastal-plain.json';",
      'src/model/gin/b.ts':
        "import { x } from '../length/beard.ts'; import type { L } from '../lot.ts'; import './c.ts';",
      'src/model/random.ts': "import { x } from 'pure-rand/generator/xoroshiro128plus';",
      'src/model/trace/a.ts': "import { x } from '../field/b.ts';",
      'src/statechart/a.ts': "import { setup } from 'xstate'; import type { L } from '../model/lot.ts';",
      'src/scene/a.ts': "import { Application } from 'pixi.js'; import { L } from '../model/lot.ts';",
      'src/pages/a.tsx': "export const x = () => import('../scene/a.ts'); import.meta.glob('../../content/en/*.mdx');",
    });
    expect(layerBreaches(allowed.values())).toEqual([]);
    expect(eagerPixi(allowed)).toEqual([]);
  });

  test('a circle of three, not one of types', () => {
    const circle = { 'src/ui/a.ts': "import './b.ts';", 'src/ui/b.ts': "import './c.ts';" };
    expect(importCircles(planted({ ...circle, 'src/ui/c.ts': "export { x } from './a.ts';" }))).toHaveLength(1);
    expect(importCircles(planted({ ...circle, 'src/ui/c.ts': "import type { X } from './a.ts';" }))).toEqual([]);
    expect(importCircles(planted({ ...circle, 'src/ui/c.ts': "import { type X } from './a.ts';" }))).toEqual([]);
  });

  test('a barrel, also one of types', () => {
    for (const text of ["export * from './b.ts';", "export { x } from './b.ts';", "export type { X } from './b.ts';"]) {
      expect(readModule({ path: 'src/ui/a.ts', text }).reExports).toBe(true);
    }
    expect(readModule({ path: 'src/ui/a.ts', text: "import { x } from './b.ts'; export const y = x;" }).reExports).toBe(
      false,
    );
  });

  test('pixi.js loaded at once, through a second module of the scene', () => {
    const files = {
      'src/scene/app.ts': "import { Application } from 'pixi.js';",
      'src/scene/stage.ts': "import { x } from './app.ts';",
    };
    expect(eagerPixi(planted({ ...files, 'src/pages/a.tsx': "import { x } from '../scene/stage.ts';" }))).toHaveLength(
      1,
    );
    expect(eagerPixi(planted({ ...files, 'src/pages/a.tsx': "const x = import('../scene/stage.ts');" }))).toEqual([]);
  });

  test('an import without its ending, of a file that is not there, or by an expression', () => {
    const exists = (path: string) => path === 'src/ui/b.ts';
    expect(badPaths(planted({ 'src/ui/a.ts': "import './b.ts';" }).values(), exists)).toEqual([]);
    expect(badPaths(planted({ 'src/ui/a.ts': "import './b';" }).values(), exists)).toHaveLength(1);
    for (const text of ['import(name);', 'import(`./a.ts`);', "import('./a' + name);"]) {
      expect(readModule({ path: 'src/ui/a.ts', text }).importsUnknown).toBe(true);
    }
    expect(() => readModule({ path: 'src/ui/a.ts', text: 'const = 1;' })).toThrow(SyntaxError);
  });
});
