import { stripList } from '../../ledger/strip-list.js';
import { say } from './plan-shape.js';

/** The strips to cut of each fabric. */
const lists = ({ fabrics }) => [
    stripList(fabrics.map(({ fabric, strips }) => ({ of: fabric || say('noFabric'), strips })), say('fabricHead')),
];

export { lists };
