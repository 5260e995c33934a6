import { existsSync, mkdirSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { root } from './project-root.mjs';
import { buildFolder, ensurePackages } from './set-up.mjs';
import { runMain } from './set-up-error.mjs';
import { sourceHash } from './source-hash.mjs';

const sources = ['src/model', 'src/checks', 'src/cli', 'src/language', 'content/scenarios', 'package-lock.json'];
const cliFolder = join(buildFolder, 'cli');

/** Bundles main.ts into a folder, silently: standard output belongs to the result. */
async function bundle(outDir) {
  const { build } = await import('vite');
  await build({
    root,
    configFile: false,
    publicDir: false,
    logLevel: 'silent',
    build: {
      ssr: join(root, 'src', 'cli', 'main.ts'),
      outDir,
      target: 'node20',
      rolldownOptions: { output: { entryFileNames: 'main.js', codeSplitting: false } },
    },
  });
}

/**
 * The built command line, built first when the sources changed. Each build has a folder named by its sources and comes into place by a
 * rename, so commands that run at once never see half of one.
 */
async function builtMain() {
  const folder = join(cliFolder, sourceHash(sources));
  const file = join(folder, 'main.js');
  if (existsSync(file)) return file;
  process.stderr.write('Building the command line…\n');
  const draft = join(cliFolder, `draft-${process.pid}`);
  mkdirSync(cliFolder, { recursive: true });
  await bundle(draft);
  try {
    renameSync(draft, folder);
  } catch (error) {
    // Another command built the same sources meanwhile.
    rmSync(draft, { recursive: true, force: true });
    if (!existsSync(file)) throw error;
  }
  const old = readdirSync(cliFolder).filter((name) => !name.startsWith('draft-') && join(cliFolder, name) !== folder);
  for (const name of old) rmSync(join(cliFolder, name), { recursive: true, force: true });
  return file;
}

// A reader that stops early, such as head, is not an error.
process.stdout.on('error', (error) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit(0);
});

await runMain(async () => {
  await ensurePackages();
  const { run } = await import(pathToFileURL(await builtMain()).href);
  process.exitCode = await run(process.argv.slice(2));
});
