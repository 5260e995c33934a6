import { networkInterfaces } from 'node:os';
import { buildSite, siteFolder } from './build-site.mjs';
import { ensurePackages } from './set-up.mjs';
import { runMain, SetUpError } from './set-up-error.mjs';
import { createStaticServer, listen } from './static-server.mjs';

const defaultPort = 4173;

/** Reads the options and the PORT variable, before anything is installed or built. */
function readOptions(args, env) {
  const unknown = args.find((arg) => arg !== '--share');
  if (unknown !== undefined) throw new SetUpError(`unknown option ${JSON.stringify(unknown)}; allowed: --share`);
  const text = env.PORT ?? String(defaultPort);
  const port = Number(text);
  if (!/^\d{1,5}$/.test(text) || port < 1 || port > 65535) {
    throw new SetUpError(`PORT: ${JSON.stringify(text)} is not allowed; allowed: 1 to 65535`);
  }
  return { share: args.includes('--share'), port };
}

/** This machine's own addresses on its networks. */
const networkAddresses = () =>
  Object.values(networkInterfaces())
    .flat()
    .filter((address) => address && address.family === 'IPv4' && !address.internal)
    .map(({ address }) => address);

/** Where the page is reached, in one line. */
function addressLine(share, port) {
  const here = `http://127.0.0.1:${port}/`;
  if (!share) return `Seamfield is at ${here}`;
  const others = networkAddresses().map((address) => `http://${address}:${port}/`);
  if (others.length === 0) return `Seamfield is at ${here}; this machine has no network address to share`;
  return `Seamfield is at ${others.join(' or ')} for everyone on this network`;
}

function listenProblem(error, port) {
  if (error.code === 'EADDRINUSE') {
    return new SetUpError(
      `port ${port} is taken by another program; choose another with PORT, for example PORT=${port + 1} npm start`,
    );
  }
  if (error.code === 'EACCES')
    return new SetUpError(`port ${port} may not be used by you; choose another with PORT, 1024 or higher`);
  return error;
}

await runMain(async () => {
  const { share, port } = readOptions(process.argv.slice(2), process.env);
  await ensurePackages();
  const { code, output } = await buildSite((line) => console.log(line));
  if (code !== 0) throw new SetUpError(`the app could not be built:\n${output.trim()}`);

  const server = createStaticServer(siteFolder);
  await listen(server, port, share ? '0.0.0.0' : '127.0.0.1').catch((error) => {
    throw listenProblem(error, port);
  });
  console.log(`${addressLine(share, port)} (Ctrl+C stops it)`);
  if (share)
    console.log('Everyone on this network can open it until you stop it; share only on a network that you trust.');
  const stop = () => {
    server.close();
    server.closeAllConnections();
  };
  process.once('SIGINT', stop);
  process.once('SIGTERM', stop);
});
