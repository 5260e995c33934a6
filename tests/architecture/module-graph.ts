import { posix } from 'node:path';
import { parseSync } from 'vite';
import type { SourceFile } from './source-files.ts';

/** How one module reaches another. */
export type ReachKind = 'static' | 'type' | 'dynamic' | 'glob';

/** One import: a path of the project ('src/model/lot.ts') for a local file, a package's name otherwise. */
export interface Reach {
  readonly kind: ReachKind;
  readonly local: boolean;
  readonly target: string;
  /** As it is written. */
  readonly written: string;
}

/** A module and what it reaches. */
export interface Module {
  readonly path: string;
  readonly reaches: readonly Reach[];
  /** It hands on what another module exports. */
  readonly reExports: boolean;
  /** Nothing of it is left when the types are taken away. */
  readonly typesOnly: boolean;
  /** It imports by an expression, so that nobody can tell what. */
  readonly importsUnknown: boolean;
}

const packageName = (specifier: string): string =>
  specifier.startsWith('node:')
    ? 'node:'
    : specifier
        .split('/')
        .slice(0, specifier.startsWith('@') ? 2 : 1)
        .join('/');

function reach(from: string, written: string, kind: ReachKind): Reach {
  const local = written.startsWith('.') || written.startsWith('/');
  if (!local) return { kind, local, target: packageName(written), written };
  const path = written.startsWith('/')
    ? written.slice(1)
    : posix.normalize(posix.join(posix.dirname(from), written.replace(/\?.*$/, '')));
  return { kind, local, target: path, written };
}

const quoted = /^\s*(['"])([^'"]*)\1\s*$/;

/** The patterns of every import.meta.glob in a text: a string, or a list of strings. */
function globPatterns(text: string): string[] {
  const calls = text.matchAll(/import\.meta\.glob(?:<[^(]*>)?\(\s*(\[[^\]]*\]|'[^']*'|"[^"]*"|`[^`]*`)/g);
  return [...calls].flatMap((call) =>
    [...(call[1] ?? '').matchAll(/['"`]([^'"`]+)['"`]/g)].map((part) => part[1] ?? ''),
  );
}

/**
 * Reads what a module imports, without running it.
 * @throws SyntaxError when the text cannot be parsed
 */
export function readModule({ path, text }: SourceFile): Module {
  const { module, errors } = parseSync(path, text);
  if (errors.length > 0) throw new SyntaxError(`${path}: ${errors[0]?.message}`);
  const reaches: Reach[] = [];
  for (const { moduleRequest, entries } of module.staticImports) {
    const typed = entries.length > 0 && entries.every((entry) => entry.isType);
    reaches.push(reach(path, moduleRequest.value, typed ? 'type' : 'static'));
  }
  const exported = module.staticExports.flatMap(({ entries }) => entries);
  for (const { moduleRequest, isType } of exported) {
    if (moduleRequest) reaches.push(reach(path, moduleRequest.value, isType ? 'type' : 'static'));
  }
  let importsUnknown = false;
  for (const { moduleRequest } of module.dynamicImports) {
    const name = quoted.exec(text.slice(moduleRequest.start, moduleRequest.end))?.[2];
    if (name === undefined) importsUnknown = true;
    else reaches.push(reach(path, name, 'dynamic'));
  }
  for (const pattern of globPatterns(text)) reaches.push(reach(path, pattern, 'glob'));
  return {
    path,
    reaches,
    reExports: exported.some(({ moduleRequest }) => moduleRequest !== null),
    typesOnly: exported.length > 0 && exported.every(({ isType }) => isType),
    importsUnknown,
  };
}

/** Modules that load with a module, itself included: over static imports only. */
export function loadedWith(start: Module, modules: ReadonlyMap<string, Module>): Set<Module> {
  const seen = new Set([start]);
  for (const module of seen) {
    for (const { kind, local, target } of module.reaches) {
      const next = kind === 'static' && local ? modules.get(target) : undefined;
      if (next) seen.add(next);
    }
  }
  return seen;
}

/** Circles of static imports, each as its paths in order. Types may point both ways: they are gone at run time. */
export function importCircles(modules: ReadonlyMap<string, Module>): string[][] {
  const circles: string[][] = [];
  const done = new Set<string>();
  const trail: string[] = [];
  const visit = (path: string): void => {
    const place = trail.indexOf(path);
    if (place >= 0) circles.push([...trail.slice(place), path]);
    if (place >= 0 || done.has(path)) return;
    trail.push(path);
    for (const { kind, local, target } of modules.get(path)?.reaches ?? []) {
      if (kind === 'static' && local && modules.has(target)) visit(target);
    }
    trail.pop();
    done.add(path);
  };
  for (const path of modules.keys()) visit(path);
  return circles;
}
