import { readFileSync } from 'node:fs';
import { extname } from 'node:path';
import { consumers } from './consumer.mjs';
import { compiledModules, renderedOnServer, scriptOf } from './modules.mjs';
import { once } from './once.mjs';
import { ROOT } from './run.mjs';

const HYDRATING = '@lit-labs/ssr-client/lit-element-hydrate-support.js';
/** What goes wrong on a page of ours is written down for the test, from its first moment. */
const LISTENING = '<script src="/tests/hosts/listening.js"></script>';
const listenedTo = (html) => String(html).replace('<head>', `<head>${LISTENING}`);

/**
 * Serves to the tests in browsers the pages of other hosts, as they are asked for: `/hosts/page?html=…&policy=…` is this
 * HTML under this content security policy; `/hosts/served?markup=…` is what a server makes of this HTML, and
 * `/hosts/whole?markup=…` with its worksheets; `/hosts/hydrating.js` and `/hosts/modules.js` are the scripts that such a
 * page may have; `/hosts/late/FILE?N` is a script of dist/ over a network so slow that it comes when `/hosts/come?N` is asked for.
 */
export const hosts = () => {
  const folder = once(() => compiledModules().folder);
  const served = {
    '/hosts/served': once((markup) => renderedOnServer(folder(), markup)),
    '/hosts/whole': once((markup) => renderedOnServer(folder(), markup, true)),
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
      if (served[path]) return { body: served[path](String(query.markup)), type: 'html' };
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
 * Serves `/hosts/consumers/NAME/…`, the pages that the project NAME of tests/consumers/ builds. As they are: what the
 * test runner does to a script would find modules that the project has to find by itself.
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
