import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build, type Plugin } from 'vite';

/** What the rendering module gives: each page's path below the site and its text. */
interface StillPages {
  stillPages(styles: readonly string[]): Promise<readonly { readonly path: string; readonly html: string }[]>;
}

const entryModule = 'src/pages/lessons/still-pages.tsx';

/**
 * Writes each lesson as a page without scripts into the built site, after the app itself: `lessons/<language>/<name>.html`. It is rendered
 * by the same parts that the app uses.
 * @param root folder of the project
 */
export function stillLessons(root: string): Plugin {
  const folder = join(root, 'build', 'still-lessons');
  let styles: readonly string[] = [];
  let site = '';
  return {
    name: 'still-lessons',
    apply: (config, { command }) => command === 'build' && !config.build?.ssr,
    writeBundle({ dir }, bundle) {
      site = dir ?? '';
      const chunks = Object.values(bundle).filter((output) => output.type === 'chunk');
      const wanted = chunks.filter(
        ({ isEntry, facadeModuleId }) => isEntry || facadeModuleId?.endsWith('lessons/lessons-page.tsx'),
      );
      styles = [...new Set(wanted.flatMap(({ viteMetadata }) => [...(viteMetadata?.importedCss ?? [])]))];
    },
    async closeBundle() {
      if (site === '') return;
      await build({
        root,
        publicDir: false,
        logLevel: 'error',
        build: {
          ssr: join(root, entryModule),
          outDir: folder,
          emptyOutDir: true,
          target: 'node20',
          rolldownOptions: { output: { entryFileNames: 'still-pages.mjs' } },
        },
      });
      const address = pathToFileURL(join(folder, 'still-pages.mjs'));
      // A second build in one process must not get the first one's module.
      address.searchParams.set('built', String(process.hrtime.bigint()));
      const { stillPages } = (await import(/* @vite-ignore */ address.href)) as StillPages;
      for (const { path, html } of await stillPages(styles)) {
        mkdirSync(dirname(join(site, path)), { recursive: true });
        writeFileSync(join(site, path), html);
      }
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
