import { readFileSync } from 'node:fs';
import { parseAst } from 'rollup/parseAst';
import { edited, isNamedIn, literal, nameOf, sources, walk } from './naming.mjs';
import { once } from './once.mjs';
import { ROOT } from './run.mjs';

/**
 * Lit's production modules still hold what no page here can use: stand-ins for browsers older than any that has
 * form-associated elements, which these are; lists of versions that only Lit's development build reads; members that
 * nobody names.
 */

const LIT =
  /node_modules[/\\](@lit[/\\]reactive-element|lit-html|lit-element)[/\\](directives[/\\])?[\w-]+\.js$/;

/** Exported constants, and what they come to in every browser that has form-associated elements. */
const KNOWN = { supportsAdoptingStyleSheets: 'true' };
/** Set by scripts that stand in for what old browsers lack, or by nobody. */
const NEVER_SET = /^(ShadyCSS|litNonce|creationScope|litElementHydrateSupport|\w+PolyfillSupport)$/;
/** Options of a property's declaration that only matter where one is declared with them. */
const OPTIONS = /^(converter|hasChanged|noAccessor|state|useDefault)$/;
/** Attribute types that need a conversion of their own: `type: Number`. */
const TYPES = /^(Array|Number|Object)$/;

/** `(globalThis.litHtmlVersions ??= []).push('3.3.3')` */
const isVersionNote = ({ type, callee }) =>
  type === 'CallExpression' && /Versions$/.test(callee.object?.left?.property?.name);
/** `Symbol.metadata`, and the map of what decorators noted there; no source of ours has a decorator. */
const isMetadata = (node) =>
  node.type === 'MemberExpression' && /^(litPropertyMetadata|metadata)$/.test(node.property.name);
const isMetadataMade = ({ type, left }) => type === 'AssignmentExpression' && isMetadata(left);
const isMetadataRead = ({ type, property }) => type === 'MemberExpression' && isMetadata(property);
/** `Error("Value passed to 'css' function must be …")`: Lit's development build says it to whoever writes templates. */
const isMessage = ({ type, callee }) => type === 'CallExpression' && callee.name === 'Error';

/** Whether a function's body names a member. */
const names = (node, name) => {
  let found = false;
  walk(node, ({ type, property }) => (found ||= type === 'MemberExpression' && property.name === name));
  return found;
};
/** What finds and runs a directive in a template's value: `function M(t,i,s=t,e){…i._$litDirective$…}` */
const isResolver = (node) => node.type === 'FunctionDeclaration' && names(node, '_$litDirective$');

/** What only directives read of a template's parts: where each stands, what kind it is, whether it is in the page. */
const FOR_DIRECTIVES = /^(parentNode|tagName|setConnected|_\$AU)$/;
const SET_FOR_DIRECTIVES = /^(type|isConnected|_\$AN|_\$Cv)$/;
const isSetForDirectives = ({ type, left }) =>
  type === 'AssignmentExpression' && SET_FOR_DIRECTIVES.test(left.property?.name);
/** `constructor(){super(...arguments),this.type=3}` */
const isConstructorForThem = ({ kind, value }) =>
  kind === 'constructor' &&
  value.body.body.length === 1 &&
  value.body.body[0].expression?.expressions?.length === 2 &&
  value.body.body[0].expression.expressions[0].callee?.type === 'Super' &&
  isSetForDirectives(value.body.body[0].expression.expressions[1]);
/** `this._$Do?.setConnected(true)`, and `6===part.type`, where an element itself is handed to one: `<p ${ref(it)}>`. */
const isCallForThem = ({ type, expression }) =>
  type === 'ChainExpression' && expression.callee?.property?.name === 'setConnected';
const isElementPart = ({ type, left, right }) =>
  type === 'BinaryExpression' && left.value === 6 && right.property?.name === 'type';
/** `3===type`, of a template of MathML. */
const isMath = ({ type, left, right }) =>
  type === 'BinaryExpression' && left.value === 3 && right.type === 'Identifier';

/** What stands in place of what only directives need; undefined for all else. */
const withoutDirectives = (node) => {
  if (node.type === 'MethodDefinition')
    return FOR_DIRECTIVES.test(nameOf(node)) || isConstructorForThem(node) ? '' : undefined;
  if (isElementPart(node)) return 'false';
  return isSetForDirectives(node) || isCallForThem(node) ? '(void 0)' : undefined;
};

/** Members that the browser calls, or a page that uses an element: nobody else has to name them. */
const isCalledFromOutside = (name) =>
  /Callback$|^(constructor|observedAttributes|toString|updateComplete)$/.test(name);

/** Whether the code sets a private member of Lit's, which are named like `_$EO`: by assignment, as a key or as a method. */
const isSetIn = (code, name) =>
  new RegExp(`${literal(name)}\\s*(?:(?:\\?\\?)?=(?!=)|:|\\([^()]*\\)\\s*\\{)`).test(code);

/** Lit's modules and those of its directives that our sources use: members of one are named by another. */
const library = (users) =>
  [
    '@lit/reactive-element/css-tag',
    '@lit/reactive-element/reactive-element',
    'lit-element/lit-element',
    'lit-html/lit-html',
  ]
    .concat(
      Array.from(
        users.matchAll(/'lit\/((?:async-)?directives?[\w/-]*)\.js'/g),
        ([, path]) => `lit-html/${path}`,
      ),
    )
    .concat(/'lit\/.*directive/.test(users) ? ['lit-html/directive', 'lit-html/async-directive'] : [])
    .map((path) => readFileSync(`${ROOT}node_modules/${path}.js`, 'utf8'))
    .join('\n');

/** The members of classes that neither the browser nor a page nor any of that code calls. */
const unnamed = (tree, code) => {
  const found = [];
  walk(tree, (node) => {
    if (node.type !== 'MethodDefinition' || isCalledFromOutside(nameOf(node))) return;
    if (!isNamedIn(code, nameOf(node))) found.push({ start: node.start, end: node.end });
  });
  return found;
};

/** The values of exported constants that are known. */
const known = ({ body }) => {
  const exported = body
    .flatMap(({ specifiers = [] }) => specifiers)
    .filter(({ exported }) => KNOWN[exported?.name]);
  const constants = body.flatMap(({ declarations = [] }) => declarations);
  return exported.flatMap(({ local, exported }) =>
    constants
      .filter(({ id }) => id.name === local.name)
      .map(({ init: { start, end } }) => ({ start, end, by: KNOWN[exported.name] })),
  );
};

/**
 * One of Lit's modules without what our sources cannot use.
 * @param {string} code
 * @param {string} ours All our sources.
 * @param {string} lit All of Lit that they use, which names members of this module too.
 */
export const slimmed = (code, ours, lit) => {
  const tree = parseAst(code);
  const dropped = unnamed(tree, ours + lit);
  // What only a dropped member would set is never set either: `_$EO`, the controllers.
  const rest = dropped.reduce((text, { start, end }) => text.replace(code.slice(start, end), ''), ours + lit);
  const isUndefined = (name) =>
    NEVER_SET.test(name) ||
    (name?.startsWith('_$') && !isSetIn(rest, name)) ||
    (OPTIONS.test(name) && !new RegExp(`\\b${name}:`).test(ours));
  // All or none, since one case runs on into the next.
  const areTypesUsed = Array.from(ours.matchAll(/\btype: (\w+)/g)).some(([, type]) => TYPES.test(type));

  /** What stands in a node's place, if anything else does. */
  const instead = (node) => {
    if (node.type === 'MemberExpression' && isUndefined(node.property.name)) return '(void 0)';
    if (isVersionNote(node) || isMetadataMade(node)) return '(void 0)';
    if (isResolver(node) && isUndefined('_$litDirective$'))
      return `function ${node.id.name}(part, value) { return value; }`;
    if (isMetadataRead(node)) return 'null';
    if (isMath(node) && !/\bmathml`/.test(ours)) return 'false';
    if (isMessage(node)) return 'Error()';
    if (node.type === 'SwitchCase' && !areTypesUsed && TYPES.test(node.test?.name)) return '';
    return isUndefined('_$litDirective$') ? withoutDirectives(node) : undefined;
  };
  const edits = [...dropped, ...known(tree)];
  walk(tree, (node) => {
    const by = instead(node);
    if (by !== undefined) edits.push({ start: node.start, end: node.end, by });
  });
  return edited(code, edits);
};

/** All our sources and all of Lit that they use, read once: the sources do not change while a build runs. */
const read = once(() => {
  const ours = sources();
  return [ours, library(ours)];
});
/** One of Lit's modules comes to the same in every bundle. */
const slimmedOnce = once((code) => slimmed(code, ...read()));

export const slimLit = () => ({
  name: 'slim-lit',
  transform: (code, id) => (LIT.test(id) ? { code: slimmedOnce(code), map: null } : null),
});
