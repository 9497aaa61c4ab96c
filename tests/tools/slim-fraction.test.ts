import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { runInNewContext } from 'node:vm';
import { describe, expect, it } from 'vitest';
import { slimmed } from './slim-fraction.mjs';

const code = readFileSync(fileURLToPath(import.meta.resolve('fraction.js')), 'utf8');

interface Fraction {
  add(other: unknown): Fraction;
  mul(other: unknown): Fraction;
  toFraction(mixed?: boolean): string;
}
type Maker = new (value: unknown, over?: unknown) => Fraction;

/** The class of a slimmed module, run by itself. */
const run = (users: string): Maker => {
  const script = slimmed(code, users).replace(/export\s*\{[^]*\}\s*;?\s*$/, 'Fraction');
  return runInNewContext(script) as Maker;
};
const methodsOf = (maker: Maker): string[] =>
  Object.entries(maker.prototype as object)
    .filter(([, value]) => typeof value === 'function')
    .map(([name]) => name)
    .sort();

describe('fraction.js without what nobody calls', () => {
  it('keeps the methods that are named, and those they name', () => {
    // In fraction.js 5 none of the three names another; floor stays because the module itself says Math.floor.
    const kept = methodsOf(run('a.add(b).mul(c).toFraction(true)'));
    expect(kept).toEqual(['add', 'floor', 'mul', 'toFraction']);
    // What simplify calls comes with it.
    const more = methodsOf(run('a.simplify()'));
    expect(more).toContain('simplify');
    expect(more.length).toBeGreaterThan(2);
    expect(more).not.toContain('toLatex');
  });

  it('takes a name in quotes for a call, and a longer name or a comment for none', () => {
    expect(methodsOf(run(`a['abs']() + a.addAll() /* a.mul(b) */`))).toEqual(['abs', 'floor']);
  });

  it('still reckons', () => {
    const Exact = run('a.add(b).mul(c).toFraction(true)');
    // 12 1/2 × 3 + 1/8 = 37 1/2 + 1/8 = 37 5/8
    expect(new Exact(25, 2n).mul(3).add(new Exact(1n, 8)).toFraction(true)).toBe('37 5/8');
    expect(new Exact(-7).toFraction(true)).toBe('-7');
    expect(() => new Exact(1, 0)).toThrow('Zero');
  });

  it('throws at what it no longer reads: texts, decimals, what is no number', () => {
    const Exact = run('a.add(b)');
    for (const unread of ['12 1/2', '3', 0.5, NaN, Infinity])
      expect(() => new Exact(unread), String(unread)).toThrow();
    expect(() => new Exact(1, 0.5)).toThrow();
    expect(() => new Exact(1).add('1/8')).toThrow();
  });

  it('drops the stand-in for BigInt', () => {
    expect(slimmed(code, '')).not.toMatch(/typeof BigInt\b/);
  });

  it('says so when the library is built another way', () => {
    expect(() => slimmed('export class Fraction { add() {} }', '')).toThrow('look at slim-fraction.mjs');
  });
});
