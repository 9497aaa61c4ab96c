import integrity from 'quilt-reckoner/integrity.json' with { type: 'json' };
import { reckonBacking } from 'quilt-reckoner/reckon';

const SCRIPT = 'quilt-reckoner.classic.js';

export default (config) => {
  config.addPassthroughCopy({ [`node_modules/quilt-reckoner/dist/${SCRIPT}`]: SCRIPT });
  config.addPassthroughCopy('page.js');
  config.addGlobalData('script', { name: SCRIPT, integrity: integrity[SCRIPT] });
  // What stands in the page until the script runs, reckoned when the site is built.
  config.addFilter('backing', (input) => reckonBacking(input).buy?.text ?? '');
};
