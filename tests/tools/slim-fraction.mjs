import { parseAst } from 'rollup/parseAst';
import { edited, isNamedIn, nameOf, sources, withoutComments } from './naming.mjs';

/**
 * fraction.js keeps its methods in one object, from which no bundler can drop what is not called. This drops them: a
 * method stays only if our sources, or something that stays, name it. What only they needed then goes as dead code.
 */

/** The methods' object: the largest one with function members. */
const methodsOf = (tree) =>
  tree.body
    .map((statement) => statement.type === 'ExpressionStatement' && statement.expression.right)
    .filter((value) => value?.type === 'ObjectExpression')
    .map(({ properties }) => properties.filter(({ value }) => value.type.endsWith('FunctionExpression')))
    .reduce((most, methods) => (methods.length > most.length ? methods : most), []);

/** `if (typeof BigInt === 'undefined') …`: a stand-in for browsers older than any the elements run in. */
const isStandIn = ({ type, test }) => type === 'IfStatement' && test.left?.operator === 'typeof';

/**
 * The module without the methods that neither `users` nor what stays of it names.
 * @param {string} code
 * @param {string} users
 */
export const slimmed = (code, users) => {
  const tree = parseAst(code);
  const methods = methodsOf(tree);
  if (methods.length < 10)
    throw new Error('fraction.js no longer keeps its methods in one object; look at slim-fraction.mjs.');
  const kept = new Set();
  let reading = withoutComments(`${users}\n${edited(code, methods)}`);
  for (let found = [undefined]; found.length > 0;) {
    found = methods.filter((method) => !kept.has(method) && isNamedIn(reading, nameOf(method)));
    for (const method of found) kept.add(method);
    reading = found.map(({ start, end }) => code.slice(start, end)).join('\n');
  }
  const dropped = methods
    .filter((method) => !kept.has(method))
    .map(({ start, end }) => ({ start, end: end + /^\s*,?/.exec(code.slice(end))[0].length }));
  return edited(code, [...dropped, ...tree.body.filter(isStandIn)]);
};

export const slimFraction = () => ({
  name: 'slim-fraction',
  transform: (code, id) =>
    /fraction\.js[/\\]dist[/\\]fraction\.m?js$/.test(id)
      ? { code: slimmed(code, sources()), map: null }
      : null,
});
