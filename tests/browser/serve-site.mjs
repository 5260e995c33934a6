import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { siteFolder } from '../../src/cli/build-site.mjs';
import { findChromium } from '../../src/cli/find-chromium.mjs';
import { createStaticServer, listen } from '../../src/cli/static-server.mjs';

/** Serves the built site for the whole run, on a free port, and tells the tests where it and Chromium are. */
export default async function setup({ provide }) {
  if (!existsSync(join(siteFolder, 'index.html'))) throw new Error('build/site is missing: run npm run build first');
  const chromium = findChromium();
  if (!chromium) throw new Error('no Chromium found: install one, or set SEAMFIELD_CHROMIUM to its path');
  const server = createStaticServer(siteFolder);
  const port = await listen(server, 0, '127.0.0.1');
  provide('siteAddress', `http://127.0.0.1:${port}/`);
  provide('chromiumPath', chromium);
  return () => {
    server.close();
    server.closeAllConnections();
  };
}
