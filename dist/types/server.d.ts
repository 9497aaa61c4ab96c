/** For servers: worksheets written whole. */
export { withWorksheets } from './sheet/server.js';
