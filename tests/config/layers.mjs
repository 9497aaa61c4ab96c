import { posix } from 'node:path';

/** The folders of src/, lowest first: a folder may import from itself and from those before it. */
export const LAYERS = [
  'measure',
  'trade',
  'planner',
  'ledger',
  'calculators',
  'workbook',
  'words',
  'face',
  'elements',
];
/** The lowest folder that may know of the page; those below it also run without one. */
const FIRST_WITH_PAGE = 'face';

const layerOf = (path) => /(?:^|\/)src\/([^/]+)\//.exec(path)?.[1];
const isEntry = (path) => /(?:^|\/)src\/[^/]+$/.test(path);

/** What is wrong with the file importing that, or undefined. Both are written with forward slashes. */
export const importFault = (file, specifier) => {
  const from = LAYERS.indexOf(layerOf(file));
  if (from < 0) return undefined;
  if (!specifier.startsWith('.')) {
    const needsPage = /^(?:lit|@lit)(?:\/|$)/.test(specifier) && from < LAYERS.indexOf(FIRST_WITH_PAGE);
    return needsPage ? `src/${LAYERS[from]} runs without a page and may not import ${specifier}.` : undefined;
  }
  const target = posix.join(posix.dirname(file), specifier);
  if (isEntry(target)) return `src/${LAYERS[from]} may not import an entry point (${specifier}).`;
  const to = LAYERS.indexOf(layerOf(target));
  if (to > from) return `src/${LAYERS[from]} may not import from src/${LAYERS[to]}, which stands above it.`;
  if (to < 0) return `src/${LAYERS[from]} may not import from outside the layers of src/ (${specifier}).`;
  return undefined;
};

/** @type {import('eslint').Rule.RuleModule} */
export const importsRunDownwards = {
  meta: {
    type: 'problem',
    schema: [],
    docs: { description: `Imports run downwards: ${LAYERS.toReversed().join(' → ')}.` },
  },
  create(context) {
    const file = context.filename.replaceAll('\\', '/');
    const check = (source) => {
      const fault = typeof source?.value === 'string' && importFault(file, source.value);
      if (fault) context.report({ node: source, message: fault });
    };
    return {
      ImportDeclaration: (node) => check(node.source),
      ExportNamedDeclaration: (node) => check(node.source),
      ExportAllDeclaration: (node) => check(node.source),
      ImportExpression: (node) => check(node.source),
      TSImportType: (node) => check(node.source ?? node.argument?.literal),
    };
  },
};
