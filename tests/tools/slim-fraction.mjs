import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from './run.mjs';

/**
 * fraction.js keeps its methods in one object, from which no bundler can drop what is not called. This drops them: a
 * method stays only if our sources, or a method that stays, name it. What only they needed then goes as dead code.
 */

const sources = () =>
  readdirSync(`${ROOT}src`, { recursive: true })
    .filter((path) => path.endsWith('.ts'))
    .map((path) => readFileSync(join(ROOT, 'src', path), 'utf8'))
    .join('\n');

const withoutComments = (code) => code.replace(/\/\*[^]*?\*\//g, '');

const nameOf = ({ key }) => key.name ?? key.value;

const isNamedIn = (code, name) => new RegExp(`(?:\\.|["'])${name}\\b`).test(code);

/** The methods' object: the largest one with function members. */
const methodsOf = (tree) => {
  const objects = [];
  for (const statement of tree.body) {
    const value = statement.type === 'ExpressionStatement' && statement.expression.right;
    if (value?.type === 'ObjectExpression') objects.push(value);
  }
  return objects.sort((a, b) => b.properties.length - a.properties.length)[0]?.properties ?? [];
};

export const slimFraction = () => ({
  name: 'slim-fraction',
  transform(code, id) {
    if (!/fraction\.js[/\\]dist[/\\]fraction\.m?js$/.test(id)) return null;
    const methods = methodsOf(this.parse(code)).filter(({ value }) => value.type.endsWith('FunctionExpression'));
    if (methods.length < 10) this.error('fraction.js no longer keeps its methods in one object; look at slim-fraction.mjs.');
    const textOf = ({ start, end }) => code.slice(start, end);
    const kept = new Set();
    const rest = methods.reduceRight((text, { start, end }) => text.slice(0, start) + text.slice(end), code);
    let reading = withoutComments(`${sources()}\n${rest}`);
    for (let found = [null]; found.length > 0; ) {
      found = methods.filter((method) => !kept.has(method) && isNamedIn(reading, nameOf(method)));
      for (const method of found) kept.add(method);
      reading = found.map(textOf).join('\n');
    }
    const slim = methods
      .filter((method) => !kept.has(method))
      .reduceRight((text, { start, end }) => text.slice(0, start) + text.slice(end).replace(/^\s*,/, ''), code);
    return { code: slim, map: null };
  },
});
