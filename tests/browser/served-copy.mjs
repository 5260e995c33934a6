import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { siteFolder as built } from '../../src/cli/build-site.mjs';
import { createStaticServer, listen } from '../../src/cli/static-server.mjs';

export const siteFolder = built;

/** See served-copy.d.mts. */
export async function serveCopy(below = '') {
  const box = mkdtempSync(join(tmpdir(), 'seamfield-site-'));
  const folder = join(box, below);
  cpSync(built, folder, { recursive: true });
  // The server reads the content policy from the page at its top.
  if (below) cpSync(join(built, 'index.html'), join(box, 'index.html'));
  const server = createStaticServer(box);
  const port = await listen(server, 0, '127.0.0.1');
  const close = () =>
    new Promise((done) => {
      if (!server.listening) return done();
      server.close(() => done());
      server.closeAllConnections();
    });
  return {
    site: `http://127.0.0.1:${port}/${below}`,
    nextVersion(title) {
      const page = join(folder, 'index.html');
      writeFileSync(page, readFileSync(page, 'utf8').replace(/<title>[^<]*/, `<title>${title}`));
      const worker = join(folder, 'sw.js');
      const before = readFileSync(worker, 'utf8');
      const after = before.replace(/(url:"index\.html",revision:")[^"]*/, `$1${title}`);
      if (after === before) throw new Error('sw.js names no index.html');
      writeFileSync(worker, after);
    },
    takeAway: close,
    async remove() {
      await close();
      rmSync(box, { recursive: true });
    },
  };
}
