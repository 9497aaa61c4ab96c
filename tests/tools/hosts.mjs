import { readFileSync } from 'node:fs';
import { extname } from 'node:path';
import { consumers } from './consumer.mjs';
import { compiledModules, scriptOf, startServer } from './modules.mjs';
import { once } from './once.mjs';
import { ROOT } from './run.mjs';

const HYDRATING = '@lit-labs/ssr-client/lit-element-hydrate-support.js';
/** Records every error of a page for the test, from the first moment. */
const LISTENING = '<script src="/tests/hosts/listening.js"></script>';
const listenedTo = (html) => String(html).replace('<head>', `<head>${LISTENING}`);

/**
 * Serves pages of other hosts to the browser tests:
 * - `/hosts/page?html=…&policy=…`: this HTML with this content security policy
 * - `/hosts/served?markup=…`: what a server makes of this HTML; `/hosts/whole?markup=…`: the same with its worksheets
 * - `/hosts/hydrating.js` and `/hosts/modules.js`: the scripts for such a page
 * - `/hosts/late/FILE?N`: a script of dist/ that comes only when the test asks for `/hosts/come?N`
 */
export const hosts = () => {
  const folder = once(() => compiledModules().folder);
  const server = once(() => startServer(folder()));
  const served = {
    '/hosts/served': once((markup) => server()(markup)),
    '/hosts/whole': once((markup) => server()(markup, true)),
  };
  const scripts = {
    '/hosts/hydrating.js': once(() => scriptOf(folder(), HYDRATING, './index.js')),
    '/hosts/modules.js': once(() => scriptOf(folder(), './index.js')),
  };
  const late = once(() => {
    let come;
    const asked = new Promise((done) => (come = done));
    return { asked, come };
  });
  return {
    name: 'hosts',
    async serve({ path, query, querystring }) {
      if (path === '/hosts/page')
        return {
          body: String(query.html),
          type: 'html',
          headers: { 'content-security-policy': String(query.policy) },
        };
      if (served[path]) return { body: await served[path](String(query.markup)), type: 'html' };
      if (path === '/hosts/come') {
        late(querystring).come();
        return { body: '', type: 'txt' };
      }
      const [, file] = /^\/hosts\/late\/([\w.-]+)$/.exec(path) ?? [];
      if (file) {
        await late(querystring).asked;
        return { body: readFileSync(`${ROOT}dist/${file}`, 'utf8'), type: 'js' };
      }
      return scripts[path] && { body: await scripts[path](), type: 'js' };
    },
    transform: ({ path, body }) =>
      /^\/(?:demo|dist)\/.*\.html$/.test(path) ? { body: listenedTo(body) } : undefined,
  };
};

/**
 * Serves `/hosts/consumers/NAME/…`, the pages that the project NAME of tests/consumers/ builds. The test runner must not change
 * their scripts: it would find modules that the project has to find itself.
 */
export const consumersServed = () => {
  const projects = once(consumers);
  return async (context, next) => {
    const [, name, path] = /^\/hosts\/consumers\/(\w+)\/(.+)$/.exec(context.path) ?? [];
    if (!name) return next();
    const file = readFileSync(`${await projects()(name)}/${path}`);
    context.type = extname(path);
    context.body = path.endsWith('.html') ? listenedTo(file) : file;
  };
};
