import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from './run.mjs';

/** Helpers for slimming the libraries: which names our sources use, and how to take code out of a module. */

/** All our sources as one text, with the scripts of pages that are bundled too. */
export const sources = () =>
  ['src', 'demo']
    .flatMap((folder) =>
      readdirSync(ROOT + folder, { recursive: true }).map((path) => join(ROOT, folder, path)),
    )
    .filter((path) => path.endsWith('.ts'))
    .map((path) => readFileSync(path, 'utf8'))
    .join('\n');

export const withoutComments = (code) => code.replace(/\/\*[^]*?\*\//g, '');

/** A name inside a regular expression. */
export const literal = (name) => name.replaceAll('$', '\\$');

/** Whether the code names a member, after a point or in quotes. */
export const isNamedIn = (code, name) => new RegExp(`(?:\\.|["'])${literal(name)}(?![\\w$])`).test(code);

/** The name of a class's or an object's member, in a syntax tree. */
export const nameOf = ({ key }) => key.name ?? key.value;

/** Replaces these ranges of the code. A range inside another one is ignored. */
export const edited = (code, edits) => {
  let text = '';
  let from = 0;
  for (const { start, end, by = '' } of edits.toSorted((a, b) => a.start - b.start || b.end - a.end)) {
    if (start < from) continue;
    text += code.slice(from, start) + by;
    from = end;
  }
  return text + code.slice(from);
};

/** Visits every node of a syntax tree. */
export const walk = (node, visit) => {
  if (Array.isArray(node)) for (const each of node) walk(each, visit);
  else if (typeof node?.type === 'string') {
    visit(node);
    for (const value of Object.values(node)) if (value && typeof value === 'object') walk(value, visit);
  }
};
