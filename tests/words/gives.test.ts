import { expect, test } from 'vitest';
import { stripList } from '../../src/ledger/strip-list.js';
import { stripsOf } from '../../src/ledger/strips.js';
import { exact } from '../../src/measure/exact.js';
import { Message } from '../../src/measure/message.js';
import { planCloth, type CuttingPlan } from '../../src/planner/plan.js';
import { inEnglish, inGerman } from './german.js';

const named = (text: string): Message => new Message('ownWords', { text });

/** What the first strip of these pieces gives, in words, on cloth 40 in wide. */
const firstOf = (pieces: [name: string, width: number, height: number, count: number][]): string[] => {
  const plan = planCloth(
    pieces.map(([, width, height, count]) => ({
      width: exact(width),
      height: exact(height),
      count,
      turn: false,
    })),
    { width: exact(40) },
  ) as CuttingPlan;
  const strips = stripsOf(
    plan,
    pieces.map(([name]) => named(name)),
  );
  const { rows } = stripList([{ of: 'A', strips }], named('head'), named('caption'), 'givesSizes');
  return [inEnglish('cutting', { units: 'in' }), inGerman('cutting', { units: 'in' })].map((t) =>
    t.say(rows[0]![3] as Message),
  );
};

test('a strip whose pieces lie side by side says what it gives', () => {
  // Geometry: eight pieces 5 in wide fill 40 in.
  expect(firstOf([['square', 5, 5, 8]])[0]).toBe('8 × square, 5 × 5 in');
});

test('a strip in which pieces lie below each other says to look at the drawing', () => {
  // Geometry: beside 30 × 10 in, two of 10 × 5 in lie below each other.
  const [english, german] = firstOf([
    ['panel', 30, 10, 1],
    ['label', 10, 5, 2],
  ]);
  expect(english).toBe('as drawn: 1 × panel, 10 × 30 in; 2 × label, 5 × 10 in');
  expect(german).toBe('wie gezeichnet: 1 × panel, 10 × 30 in; 2 × label, 5 × 10 in');
});

test('pieces of one name and one size are counted together', () => {
  // Two lists each want four: they are eight in the strip.
  const [english] = firstOf([
    ['square', 5, 5, 4],
    ['square', 5, 5, 4],
  ]);
  expect(english).toBe('8 × square, 5 × 5 in');
});
