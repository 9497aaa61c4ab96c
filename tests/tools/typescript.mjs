import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const root = fileURLToPath(new URL('../..', import.meta.url));
const { options } = ts.parseJsonConfigFileContent(
  ts.readConfigFile(`${root}tsconfig.json`, ts.sys.readFile).config,
  ts.sys,
  root,
);

/**
 * TypeScript to the JavaScript that browsers run, one file at a time and without checking types.
 * @param {string} code
 * @param {string} fileName
 * @param {{ inlineMap?: boolean, before?: ts.TransformerFactory<ts.SourceFile>[] }} wishes
 */
export const toJavaScript = (code, fileName, { inlineMap = false, before = [] } = {}) =>
  ts.transpileModule(code, {
    fileName,
    compilerOptions: { ...options, noEmit: false, inlineSourceMap: inlineMap, inlineSources: inlineMap },
    transformers: { before },
  }).outputText;

/** The TypeScript file meant by an import written with `.js`, or undefined if there is none. */
export const sourceOf = (path) => {
  const source = path.replace(/\.js$/, '.ts');
  return source !== path && existsSync(source) ? source : undefined;
};
