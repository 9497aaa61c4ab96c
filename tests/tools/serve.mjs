import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, normalize } from 'node:path';
import { ROOT } from './run.mjs';

const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.csv': 'text/csv; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
};

/** The file in a folder that a path means. */
const inFolder = (folder, path) => join(folder, path.endsWith('/') ? `${path}index.html` : path);

/** The file for a path of the site: `/dist/…` is the build, everything else is in demo/. */
const inSite = (path) => {
  if (path.startsWith('/dist/')) return join(ROOT, path);
  // The source of this page is TypeScript, so the built page is served.
  if (path === '/quick.html') return join(ROOT, 'dist/quick.html');
  return inFolder(`${ROOT}demo`, path);
};

const responding = (fileFor) => (request, response) => {
  if (request.url === '/favicon.ico') {
    // Browsers ask for an icon, and the pages have none.
    response.writeHead(204).end();
    return;
  }
  let file;
  try {
    const { pathname } = new URL(request.url, 'http://localhost');
    file = fileFor(normalize(decodeURIComponent(pathname.replaceAll('\\', '/'))));
  } catch {
    response.writeHead(400).end('Bad address');
    return;
  }
  if (!existsSync(file) || !statSync(file).isFile()) {
    response.writeHead(404, { 'content-type': TYPES['.txt'] }).end('No such page');
    return;
  }
  response.writeHead(200, {
    'content-type': TYPES[extname(file)] ?? 'application/octet-stream',
    'cache-control': 'no-store',
  });
  createReadStream(file).pipe(response);
};

/**
 * Serves the demo pages, or a folder, on this machine, at the port or the next free one; tells the address and how to end.
 * @param {number} [port]
 * @param {string} [folder]
 * @returns {Promise<{ address: string, close: () => void }>}
 */
export const serve = (port = 0, folder) =>
  new Promise((resolve, reject) => {
    const server = createServer(responding(folder ? (path) => inFolder(folder, path) : inSite));
    server.on('error', (error) => {
      if (error.code !== 'EADDRINUSE') reject(error);
      else server.listen(++port, '127.0.0.1');
    });
    server.on('listening', () =>
      resolve({
        address: `http://127.0.0.1:${server.address().port}`,
        close: () => {
          server.closeAllConnections();
          server.close();
        },
      }),
    );
    server.listen(port, '127.0.0.1');
  });
