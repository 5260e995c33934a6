import type { SourceFile } from './source-files.ts';

/** The longest file. A table of facts may be long, never longer. */
const lineLimit = 400;

/** Words that have no place in what we hand over. Each pattern is written so that this file does not match itself. */
const bannedEverywhere: readonly RegExp[] = [
  /\bTO[D]O\b/,
  /\bFIX[M]E\b/,
  /\bX[X]X\b/,
  /\bHAC[K]\b/,
  /\bissue [#]?\d/i,
  /(^|[^\w-])shared[/]/,
  /\bthe brie[f]\b/i,
  /\bseed docu[m]ent/i,
  /\bsub-?agen[t]s?\b/i,
  /\b(gin|field|classing|cloth|people|spanish|stack|fibre-length|design)\.m[d]\b/,
];

/** Checks that cannot fail, or do not run. */
const bannedInTests: readonly RegExp[] = [
  /\bexpect\(tru[e]\)/,
  /\b(test|it|describe)\.(skip|only|todo|skipIf|runIf)[(]/,
];

/** Clocks and chance that the model may not use: a season depends on its scenario and seed alone. */
const bannedInModel: readonly RegExp[] = [/\bMath\.random\b/, /\bnew Date\b/, /\bDate\.now\b/, /\bperformance\.now\b/];

/** Lines with banned words, one line each. */
export function bannedWords({ path, text }: SourceFile): string[] {
  const patterns = [
    ...bannedEverywhere,
    ...(path.startsWith('tests/') ? bannedInTests : []),
    ...(path.startsWith('src/model/') ? bannedInModel : []),
  ];
  return text
    .split('\n')
    .flatMap((line, index) =>
      patterns.some((pattern) => pattern.test(line)) ? [`${path}:${index + 1}: ${line.trim().slice(0, 120)}`] : [],
    );
}

/** A file that is too long, in words. */
export function tooLong({ path, text }: SourceFile): string[] {
  const lines = text.split('\n').length - (text.endsWith('\n') ? 1 : 0);
  return lines > lineLimit ? [`${path}: ${lines} lines; allowed: ${lineLimit}`] : [];
}

/** A path that says nothing of what is in it. */
export const vaguePath = (path: string): boolean =>
  path.split('/').some((part) => /^(utils?|helpers?|index)(\.|$)/i.test(part) && part !== 'index.html');

/**
 * Files of the model that have no test of their own at the same path under tests.
 * @param sourcePaths paths below src/model of files that compute something
 * @param testPaths paths of test files
 */
export const untested = (sourcePaths: readonly string[], testPaths: ReadonlySet<string>): string[] =>
  sourcePaths.filter(
    (path) => !/facts\.ts$/.test(path) && !testPaths.has(path.replace(/^src\//, 'tests/').replace(/\.ts$/, '.test.ts')),
  );
