import type { Face } from '../../src/face/face.js';
import { find } from './page.js';

/** The parts of a quilt, in the order in which they are made. */
export const PARTS = [
  'top',
  'block',
  'borders',
  'binding',
  'backing',
  'batting',
  'cutting',
  'sleeve',
] as const;
export type PartName = (typeof PARTS)[number];

/** Those that a quilt has if nobody says otherwise. */
const USUAL: PartName[] = ['binding', 'backing', 'batting'];

export interface Part {
  name: PartName;
  /** What a link calls it. */
  key: string;
  element: Face;
  section: HTMLDetailsElement;
  /** Where the element is while the quilt has this part. */
  place: Element;
  /** The box to tick for it. The top has none. */
  wish: HTMLInputElement | null;
}

/** In a link, `block` is the size of a block. */
const keyOf = (name: PartName): string => (name === 'block' ? 'chart' : name);

const partNamed = (name: PartName): Part => {
  const section = find<HTMLDetailsElement>(`#${name}`);
  const key = keyOf(name);
  return {
    name,
    key,
    element: find<Face>(`quilt-${name}`, section),
    section,
    place: find('.place', section),
    wish: section.querySelector<HTMLInputElement>(`input[name=${key}]`),
  };
};

export const worksheet = find<HTMLElementTagNameMap['quilt-worksheet']>('quilt-worksheet');
/** The same as a sheet like any other. */
export const list = find<Face>('quilt-worksheet');
export const parts = PARTS.map(partNamed);
export const top = find<HTMLElementTagNameMap['quilt-top']>('quilt-top');
export const borders = find<HTMLElementTagNameMap['quilt-borders']>('quilt-borders');
export const batting = find<HTMLElementTagNameMap['quilt-batting']>('quilt-batting');

/** Whether a quilt has this part if its maker says nothing. A top without borders gets them. */
export const isUsual = (name: PartName, way: string): boolean =>
  name === 'borders' ? way === 'top' : USUAL.includes(name);

/** Whether the quilt has this part. */
export const has = ({ wish }: Part, way: string): boolean => (wish ? wish.checked : way === 'blocks');

/** Puts the parts that the quilt has into the worksheet, and takes the others out. */
export const place = (way: string): void => {
  for (const part of parts) {
    const isIn = has(part, way);
    if (isIn !== part.place.contains(part.element))
      part.place.replaceChildren(...(isIn ? [part.element] : []));
  }
};

/** The parts that the quilt has. */
export const present = (): Part[] => parts.filter(({ element, place }) => place.contains(element));
