import { loadedWith, type Module } from './module-graph.ts';

/** Files of the model's own folder that stand above the links: what folds a season, and what reads one. All others are core. */
const chainFiles: readonly string[] = ['chain.ts', 'season.ts', 'season-outcomes.ts', 'timeline.ts'];

/** The list of all facts: it reads every link's and the trace's, and nothing else. */
const listFiles: readonly string[] = ['fact-list.ts'];

const links = ['field', 'harvest', 'module', 'gin', 'classing', 'mill', 'cloth'];

/** What a layer may reach: other layers, and packages. */
interface Layer {
  readonly layers: readonly string[];
  readonly packages: readonly string[];
}

const modelLayers = ['core', 'chain', 'trace', 'bench', 'list', ...links.map((link) => `link:${link}`)];
// The virtual ones are no packages: the build makes them.
const pagePackages = [
  'preact',
  'xstate',
  'valibot',
  'd3-dsv',
  'd3-scale',
  'd3-shape',
  'uqr',
  'virtual:fact-uses',
  'virtual:formula-mathml',
  // Renders the pages without scripts while the site is built; no page loads it.
  'preact-render-to-string',
];
/** Only these put the page together. */
const assembling: Layer = {
  layers: [
    ...modelLayers,
    'checks',
    'doubt',
    'predict',
    'compare',
    'lessons',
    'workings',
    'statechart',
    'scene',
    'language',
    'ui',
    'style',
    'pages',
    'teach',
    'kiosk',
    'content',
    'scenarios',
  ],
  packages: pagePackages,
};
const modelPackages = ['valibot', 'pure-rand', 'd3-dsv'];

/** The layers of the project, from the ground up. A layer not named here may reach nothing. */
const layers: Readonly<Record<string, Layer>> = {
  core: { layers: ['core', 'scenarios'], packages: modelPackages },
  ...Object.fromEntries(
    links.map((link) => [`link:${link}`, { layers: ['core', `link:${link}`], packages: modelPackages }]),
  ),
  chain: { layers: ['core', 'chain', 'scenarios', ...links.map((link) => `link:${link}`)], packages: modelPackages },
  trace: { layers: ['core', 'trace', 'bench', ...links.map((link) => `link:${link}`)], packages: modelPackages },
  bench: { layers: ['core', 'bench', ...links.map((link) => `link:${link}`)], packages: modelPackages },
  list: { layers: ['core', 'trace', ...links.map((link) => `link:${link}`)], packages: [] },
  checks: { layers: [...modelLayers, 'checks'], packages: [] },
  workings: { layers: [...modelLayers, 'checks', 'workings'], packages: [] },
  doubt: { layers: [...modelLayers, 'doubt'], packages: [] },
  predict: { layers: [...modelLayers, 'predict'], packages: [] },
  compare: { layers: [...modelLayers, 'workings', 'compare'], packages: [] },
  lessons: { layers: [...modelLayers, 'lessons'], packages: ['valibot'] },
  teach: {
    layers: [...modelLayers, 'predict', 'compare', 'lessons', 'statechart', 'language', 'teach'],
    packages: ['valibot'],
  },
  statechart: { layers: [...modelLayers, 'statechart'], packages: ['xstate'] },
  style: { layers: ['style'], packages: [] },
  scene: { layers: [...modelLayers, 'scene', 'style'], packages: ['pixi.js', 'd3-shape', 'd3-scale'] },
  language: { layers: [...modelLayers, 'language'], packages: ['preact'] },
  ui: { layers: [...modelLayers, 'language', 'ui', 'style'], packages: ['preact', 'd3-scale', 'd3-shape'] },
  pages: assembling,
  kiosk: assembling,
  main: assembling,
  cli: {
    layers: [...modelLayers, 'checks', 'doubt', 'language', 'cli'],
    packages: [
      'node:',
      'vite',
      'vite-plugin-pwa',
      'd3-dsv',
      'playwright-core',
      'psychrolib',
      'simple-statistics',
      'mathjs',
      'temml',
    ],
  },
};

/** The layer of a path of the project; undefined for a path that belongs to none. */
function layerOf(path: string): string | undefined {
  if (path.startsWith('content/scenarios/')) return 'scenarios';
  if (path.startsWith('content/')) return 'content';
  if (/^src\/main\.tsx?$/.test(path)) return 'main';
  const [top, first, second] = path.split('/');
  if (top !== 'src' || first === undefined || second === undefined) return undefined;
  if (first !== 'model') return first in layers ? first : undefined;
  const folder = path.split('/').length > 3 ? second : undefined;
  if (folder === undefined) return listFiles.includes(second) ? 'list' : chainFiles.includes(second) ? 'chain' : 'core';
  if (folder === 'length') return 'core';
  if (folder === 'trace' || folder === 'bench' || folder === 'chain') return folder;
  return links.includes(folder) ? `link:${folder}` : undefined;
}

/** Imports that cross the layers the wrong way, one line each. Types count too: they tie two layers together as well. */
export function layerBreaches(modules: Iterable<Module>): string[] {
  const breaches: string[] = [];
  for (const { path, reaches } of modules) {
    const from = layerOf(path);
    const rule = from === undefined ? undefined : layers[from];
    if (!rule) {
      breaches.push(`${path} belongs to no layer`);
      continue;
    }
    for (const { local, target } of reaches) {
      const to = local ? layerOf(target) : target;
      const allowed = local ? to !== undefined && rule.layers.includes(to) : rule.packages.includes(target);
      if (!allowed) breaches.push(`${path} (${from}) reaches ${target} (${local ? (to ?? 'no layer') : 'package'})`);
    }
  }
  return breaches;
}

/** Modules outside the scene that load pixi.js at once instead of by import(), one line each. */
export function eagerPixi(modules: ReadonlyMap<string, Module>): string[] {
  const usesPixi = ({ reaches }: Module) =>
    reaches.some(({ kind, local, target }) => kind === 'static' && !local && target === 'pixi.js');
  return [...modules.values()]
    .filter(({ path }) => layerOf(path) !== 'scene')
    .flatMap((module) =>
      [...loadedWith(module, modules)]
        .filter(usesPixi)
        .map(({ path }) => `${module.path} loads pixi.js through ${path}`),
    );
}
