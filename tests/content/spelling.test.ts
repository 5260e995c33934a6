import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { projectFolder } from '../architecture/source-files.ts';

/** Unknown words, one a line. @param input what stdin among the files stands for */
function misspelled(args: readonly string[], input: string): Promise<string[]> {
  const bin = join(projectFolder, 'node_modules', 'cspell', 'bin.mjs');
  const config = join(projectFolder, 'tests', 'content', 'cspell.json');
  // The two dictionaries alone: the checker's own set, with those of programming languages, takes twice the time.
  const options = [
    '--no-default-configuration',
    '--no-progress',
    '--no-summary',
    '--words-only',
    '--unique',
    '-c',
    config,
  ];
  const run = spawn(process.execPath, [bin, 'lint', ...options, ...args], { cwd: projectFolder });
  let output = '';
  let trouble = '';
  run.stdout.on('data', (part) => {
    output += String(part);
  });
  run.stderr.on('data', (part) => {
    trouble += String(part);
  });
  run.stdin.end(input);
  return new Promise((resolve, reject) => {
    run.on('error', reject);
    run.on('close', (code) =>
      // 0: no unknown word; 1: some. Anything else is no answer.
      code === 0 || code === 1 ? resolve(output.split('\n').filter(Boolean)) : reject(new Error(trouble || output)),
    );
  });
}

/** Reading the dictionaries takes seconds, and longer beside other tests. */
const startMs = 120_000;

/** Words that nobody writes by mistake, one in each language, read with everything else: the dictionaries are then opened once. */
const planted = { text: 'La fibra es un xalgodhón. The fibers are of one xlenght.', words: ['xalgodhón', 'xlenght'] };

const words = 'src/language/messages/*';
const pages = ['lessons*', 'kiosk*', 'teach*', 'sheet*', 'show', 'guild', 'handouts', 'recap'];
const files = ['content/*/lessons/*.mdx', 'content/*/glossary/*.json', ...pages.map((page) => `${words}/${page}.ts`)];
let found: Promise<string[]> | undefined;
const allMisspelled = () => {
  found ??= misspelled([...files, 'stdin://content/es/planted.mdx'], planted.text);
  return found;
};

test(
  'lessons, glossary, the class pages and the kiosk are spelled right in both languages',
  async () => {
    expect((await allMisspelled()).filter((word) => !planted.words.includes(word))).toEqual([]);
  },
  startMs,
);

test(
  'a misspelling is seen, in either language',
  async () => {
    expect((await allMisspelled()).filter((word) => planted.words.includes(word)).sort()).toEqual(planted.words);
  },
  startMs,
);
