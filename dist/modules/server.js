export { withWorksheets } from './sheet/server.js';
