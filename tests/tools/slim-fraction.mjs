import { parseAst } from 'rollup/parseAst';
import { edited, isNamedIn, nameOf, sources, walk, withoutComments } from './naming.mjs';
import { once } from './once.mjs';

/**
 * fraction.js keeps its methods in one object, from which no bundler can drop what is not called. This drops them: a
 * method stays only if our sources, or something that stays, name it. What only they needed then goes as dead code. So
 * does how it reads texts and decimal numbers: src/measure/exact.ts, through which every number comes, hands it whole
 * numbers and fractions only. What is handed to it all the same still throws.
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

/** `typeof p1 === "string"` */
const isText = ({ type, left, right }) =>
  type === 'BinaryExpression' && left.operator === 'typeof' && right.value === 'string';

/** `if (p1 % 1 === 0) … else …`, where the rest is for decimals. */
const isWhole = ({ type, test, alternate }) =>
  type === 'IfStatement' && alternate && test.operator === '===' && test.left.operator === '%';

/** `if (isNaN(p1)) throw … else …`, `if (p1 % 1 !== 0) throw … else …`: BigInt throws for both. */
const isGuard = ({ type, test }) =>
  type === 'IfStatement' &&
  (test.callee?.name === 'isNaN' || (test.operator === '!==' && test.left.operator === '%'));

/** How it reads what is no whole number, with what stands in its place. */
const readings = (tree, code) => {
  const found = [];
  const textOf = ({ start, end }) => code.slice(start, end);
  const rest = (node) => (node && isGuard(node) ? rest(node.alternate) : node);
  walk(tree, (node) => {
    const { start, end } = node;
    if (isText(node)) found.push({ start, end, by: 'false' });
    else if (isWhole(node)) found.push({ start, end, by: textOf(node.consequent) });
    else if (isGuard(node)) found.push({ start, end, by: rest(node) ? textOf(rest(node)) : ';' });
  });
  return found;
};

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
  return edited(code, [...dropped, ...tree.body.filter(isStandIn), ...readings(tree, code)]);
};

/** The same in every bundle. */
const slimmedOnce = once((code) => slimmed(code, sources()));

export const slimFraction = () => ({
  name: 'slim-fraction',
  transform: (code, id) =>
    /fraction\.js[/\\]dist[/\\]fraction\.m?js$/.test(id) ? { code: slimmedOnce(code), map: null } : null,
});
