import { readFileSync } from 'node:fs';
import { ROOT } from '../tools/run.mjs';

/** An attribute as the manifest describes it. */
export interface Attribute {
  name: string;
  type: { text: string };
  description: string;
  default?: string;
}
interface Declaration {
  tagName?: string;
  attributes?: Attribute[];
}

const { modules } = JSON.parse(readFileSync(`${ROOT}dist/custom-elements.json`, 'utf8')) as {
  modules: { declarations: Declaration[] }[];
};

/** Every element with its attributes, as `dist/custom-elements.json` has them. */
export const ELEMENTS = modules
  .flatMap(({ declarations }) => declarations)
  .flatMap(({ tagName, attributes = [] }) => (tagName ? [{ tagName, attributes }] : []));
