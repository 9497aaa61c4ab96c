import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { ROOT } from '../../tools/run.mjs';

const FOLDERS = ['src/measure', 'src/planner', 'src/ledger', 'src/calculators', 'src/workbook'];
/** These once survived. */
export const NAMED = [
  {
    file: 'src/trade/conventions.ts',
    line: "export const QUILT_THICKNESS = '1/8 in';",
    from: '1/8',
    to: '1/4',
  },
  { file: 'src/face/drawing.ts', line: 'const TALLEST = 330;', from: '330', to: '900' },
  // The plan's search, switched off: its effort is spent before it begins.
  {
    file: 'src/planner/search.ts',
    line: 'for (const end = effort() + total * share; goal >= bound && effort() < end;) {',
    from: 'total * share',
    to: '0',
  },
].map((mutant) => ({ ...mutant, occurrence: 0, at: mutant.line.indexOf(mutant.from) }));

export const read = (file) => readFileSync(join(ROOT, file), 'utf8');
export const filesIn = (folder, ending) =>
  readdirSync(join(ROOT, folder), { recursive: true })
    .filter((name) => name.endsWith(ending))
    .map((name) => `${folder}/${name}`)
    .sort();

const dice = (seed) => (sides) => {
  seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
  return Math.floor((seed / 2 ** 32) * sides);
};
const shuffled = (list, roll) => {
  const all = [...list];
  for (let at = all.length - 1; at > 0; at -= 1) {
    const other = roll(at + 1);
    [all[at], all[other]] = [all[other], all[at]];
  }
  return all;
};

const SWAPPED = [
  ...[
    '< <=',
    '> >=',
    '+ -',
    '* /',
    '&& ||',
    '=== !==',
    '+= -=',
    'true false',
    'lt lte',
    'gt gte',
    'add sub',
    'mul div',
  ],
  ...[
    'ceil floor',
    'upTo downTo',
    'least most',
    'min max',
    'some every',
    'wholeUp wholeDown',
    'rootUp rootDown',
  ],
].map((pair) => pair.split(' '));
const OTHER = new Map([...SWAPPED, ...SWAPPED.map(([a, b]) => [b, a])]);
const RETURNED = ['false', 'true', '0', "''", '[]', 'undefined'];

const larger = (number) => String(Number.isInteger(number) && number < 10 ? number + 1 : number * 2);

/** The ways in which one node of the syntax can be wrong: the kind, the node to replace and its new text. */
const faultsOf = (node) => {
  const faults = [];
  const add = (kind, at, to) => faults.push({ kind, node: at, to });
  const not = (condition) => add('condition', condition, `!(${condition.getText()})`);
  if (ts.isBinaryExpression(node)) {
    const sign = node.operatorToken;
    if (OTHER.has(sign.getText())) add('operator', sign, OTHER.get(sign.getText()));
  } else if (ts.isNumericLiteral(node)) add('number', node, larger(Number(node.text)));
  else if (node.kind === ts.SyntaxKind.TrueKeyword || node.kind === ts.SyntaxKind.FalseKeyword)
    add('flag', node, OTHER.get(node.getText()));
  else if (ts.isConditionalExpression(node)) {
    const [test, yes, no] = [node.condition, node.whenTrue, node.whenFalse].map((part) => part.getText());
    add('ternary', node, `${test} ? ${no} : ${yes}`);
  } else if (ts.isIfStatement(node) || ts.isWhileStatement(node)) not(node.expression);
  else if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.ExclamationToken)
    add('condition', node, node.operand.getText());
  else if (ts.isReturnStatement(node) && node.expression)
    for (const value of RETURNED) add('return', node.expression, value);
  else if (ts.isCallExpression(node)) {
    const name = ts.isPropertyAccessExpression(node.expression) ? node.expression.name : node.expression;
    if (OTHER.has(name.getText())) add('method', name, OTHER.get(name.getText()));
    if (ts.isExpressionStatement(node.parent)) add('statement', node, 'undefined');
  }
  return faults;
};

/** Where a line of this text stands for the nth time; undefined when it is gone. */
const startOf = (source, { line, occurrence }) => {
  let start = 0;
  let seen = 0;
  for (const text of source.split('\n')) {
    if (text.trim() === line && seen++ === occurrence) return start + text.indexOf(line);
    start += text.length + 1;
  }
  return undefined;
};

/** The source with its fault, or undefined where its line is gone. */
export const mutated = (mutant) => {
  const source = read(mutant.file);
  const start = startOf(source, mutant);
  if (start === undefined) return undefined;
  const at = start + mutant.at;
  return source.slice(0, at) + mutant.to + source.slice(at + mutant.from.length);
};

/** Every fault of a file that lies within one line. */
const candidates = (file) => {
  const source = ts.createSourceFile(file, read(file), ts.ScriptTarget.Latest, true);
  const found = [];
  const visit = (node) => {
    if (ts.isTypeNode(node) || ts.isImportDeclaration(node)) return;
    for (const { kind, node: at, to } of faultsOf(node)) {
      const from = at.getText();
      if (from.includes('\n') || to === from) continue;
      const number = source.getLineAndCharacterOfPosition(at.getStart()).line;
      const lines = source.text.split('\n');
      const line = lines[number].trim();
      const occurrence = lines.slice(0, number).filter((text) => text.trim() === line).length;
      const mutant = { file, line, occurrence, kind, from, to };
      found.push({ ...mutant, at: at.getStart() - startOf(source.text, mutant) });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
};

/** Whether a changed file still has the right types; that something is no longer used is no wrong type. */
const compiler = () => {
  const { config } = ts.readConfigFile(join(ROOT, 'tsconfig.json'), (path) => readFileSync(path, 'utf8'));
  const { options } = ts.parseJsonConfigFileContent({ ...config, include: ['src'] }, ts.sys, ROOT);
  const changed = new Map();
  const versions = new Map();
  const host = {
    ...{ fileExists: ts.sys.fileExists, directoryExists: ts.sys.directoryExists, readFile: ts.sys.readFile },
    getCompilationSettings: () => ({ ...options, noEmit: true }),
    getScriptFileNames: () =>
      FOLDERS.flatMap((folder) => filesIn(folder, '.ts')).map((file) => join(ROOT, file)),
    getScriptVersion: (path) => String(versions.get(path) ?? 0),
    getScriptSnapshot: (path) => {
      const text = changed.get(path) ?? ts.sys.readFile(path);
      return text === undefined ? undefined : ts.ScriptSnapshot.fromString(text);
    },
    getCurrentDirectory: () => ROOT,
    getDefaultLibFileName: ts.getDefaultLibFilePath,
  };
  const service = ts.createLanguageService(host);
  return (mutant) => {
    const path = join(ROOT, mutant.file);
    const set = (text) => {
      if (text === undefined) changed.delete(path);
      else changed.set(path, text);
      versions.set(path, (versions.get(path) ?? 0) + 1);
    };
    set(mutated(mutant));
    const wrong = [...service.getSyntacticDiagnostics(path), ...service.getSemanticDiagnostics(path)];
    set(undefined);
    return wrong.every(({ reportsUnnecessary }) => reportsUnnecessary);
  };
};

/** So many in each folder, spread over its files, and in each file over the kinds of fault. */
export const picked = (seed, each) => {
  const roll = dice(seed);
  const compiles = compiler();
  return FOLDERS.flatMap((folder) => {
    const files = shuffled(filesIn(folder, '.ts'), roll).map((file) => {
      const all = shuffled(candidates(file), roll);
      const kinds = shuffled([...new Set(all.map(({ kind }) => kind))], roll);
      return kinds.map((kind) => all.filter((mutant) => mutant.kind === kind));
    });
    const taken = [];
    for (let turn = 0; taken.length < each && turn < 50 * each; turn += 1) {
      const kinds = files[turn % files.length];
      const of = kinds[Math.floor(turn / files.length) % kinds.length];
      for (let mutant; (mutant = of?.pop());)
        if (compiles(mutant)) {
          taken.push(mutant);
          break;
        }
    }
    return taken;
  });
};
