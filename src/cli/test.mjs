import { existsSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { buildSite, siteFolder } from './build-site.mjs';
import { root } from './project-root.mjs';
import { runCommand } from './run-command.mjs';
import { buildFolder, ensurePackages } from './set-up.mjs';
import { runMain, SetUpError } from './set-up-error.mjs';
import { checkSize } from './size-budget.mjs';
import { ensureTestTools } from './test-tools.mjs';
import { runVitest } from './vitest-step.mjs';

const chunkList = join(buildFolder, 'chunks.json');
/** What the command line counted, for the browser tests to hold the page against. */
const checkedFile = join(buildFolder, 'test', 'checks.json');
const modulePath = (...parts) => join(root, 'node_modules', ...parts);

/** One check from a command: passed when it exits with 0. */
async function commandCheck(script, ...args) {
  const { code, output } = await runCommand(process.execPath, [script, ...args]);
  return check(code === 0, output);
}

const check = (ok, detail, note = '') => ({ passed: ok ? 1 : 0, failed: ok ? 0 : 1, detail: ok ? '' : detail, note });

async function build() {
  const { code, output } = await buildSite(() => {});
  return check(code === 0, output);
}

function sizeBudget() {
  if (!existsSync(chunkList)) return check(false, 'there is no build to measure');
  const { summary, problems } = checkSize(siteFolder, chunkList);
  return check(problems.length === 0, problems.join('\n'), summary);
}

/** Every check against the outside, with the tools asked, told by kind in one line. */
async function outsideChecks() {
  const { code, output, result } = await runCommand(process.execPath, [
    join(root, 'src', 'cli', 'seamfield.mjs'),
    ...['checks', '--json'],
  ]);
  if (code > 1 || result === '') return check(false, output);
  mkdirSync(dirname(checkedFile), { recursive: true });
  writeFileSync(checkedFile, result);
  const { counted, definition, plainSum, knownMiss, failed, notRun } = JSON.parse(result);
  const kinds = `${counted} counted, ${definition} definitions, ${plainSum} plain sums, ${knownMiss} known misses, ${failed} failed, ${notRun} not run`;
  return check(code === 0, output, kinds);
}

/**
 * Everything that is checked: groups in order, the lanes of a group side by side, the steps of a lane in order. The tools for the
 * browser may still be on their way while the first run.
 */
function groupsOf({ env, tools }) {
  const tsc = modulePath('typescript', 'bin', 'tsc');
  const lint = modulePath('@biomejs', 'biome', 'bin', 'biome');
  const toolsAreHere = async () => {
    const problem = await tools;
    return check(problem === undefined, problem);
  };
  const browserConfig = join('tests', 'browser', 'vitest.config.ts');
  const browserEnv = { ...env, SEAMFIELD_CHECKED: checkedFile };
  // Each of these keeps one core busy for a while, the types of the app longest; the tests then take all there are.
  const oneCore = [
    [
      ['types of the app', () => commandCheck(tsc, '-p', join(root, 'tsconfig.json'))],
      ['test tools', toolsAreHere],
      ['checks against the outside', outsideChecks],
    ],
    [
      ['lint', () => commandCheck(lint, 'ci', '--error-on-warnings', '--colors=off')],
      ['types of the model alone', () => commandCheck(tsc, '-p', join(root, 'src', 'model', 'tsconfig.json'))],
      ['unused code', () => commandCheck(modulePath('knip', 'bin', 'knip.js'), '--no-progress')],
      ['build', build],
      ['size budget', sizeBudget],
    ],
  ];
  const everyCore = [
    ['unit, laws, reference, content, architecture', () => runVitest('unit', [], env)],
    ['browser', () => runVitest('browser', ['--config', browserConfig], browserEnv)],
  ];
  return [oneCore, [everyCore]];
}

/** Runs one step and tells about it in one line, with the reason below it when it failed. */
async function runStep([name, work]) {
  const begin = performance.now();
  const result = await Promise.resolve()
    .then(work)
    .catch((error) => check(false, error.stack));
  const seconds = ((performance.now() - begin) / 1000).toFixed(1);
  const count = result.passed + result.failed > 1 ? `: ${result.passed} of ${result.passed + result.failed} tests` : '';
  console.log(
    `${result.failed > 0 ? 'FAIL' : 'ok  '} ${name}${count}${result.note ? `: ${result.note}` : ''} (${seconds} s)`,
  );
  if (result.failed > 0) console.log(result.detail.trim().replace(/^/gm, '     '));
  return result;
}

await runMain(async () => {
  const args = process.argv.slice(2);
  const unknown = args.find((arg) => arg !== '--long');
  if (unknown !== undefined) throw new SetUpError(`unknown option ${JSON.stringify(unknown)}; allowed: --long`);
  await ensurePackages();
  const tools = ensureTestTools().catch((error) => error.message);
  const env = args.includes('--long') ? { SEAMFIELD_LONG: '1' } : {};
  rmSync(join(buildFolder, 'test'), { recursive: true, force: true });

  let passed = 0;
  let failed = 0;
  for (const group of groupsOf({ env, tools })) {
    const lanes = group.map(async (lane) => {
      for (const step of lane) {
        const result = await runStep(step);
        passed += result.passed;
        failed += result.failed;
      }
    });
    await Promise.all(lanes);
  }
  console.log(`${passed} passed, ${failed} failed`);
  process.exitCode = failed > 0 ? 1 : 0;
});
