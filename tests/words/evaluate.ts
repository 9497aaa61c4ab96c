import type { SheetCell } from '../../src/words/sheet-rows.js';

type Value = number | string | boolean;

const TOKEN = /\s*(?:(\d+(?:\.\d+)?)|"((?:[^"]|"")*)"|([A-Z]+\d+)|([A-Z]+)(?=\()|(>=|[-+*/&(),]))/y;

/** A spreadsheet rounds the number that it would show: 4.385 goes up, although floating point is a little less. */
const shown = (value: number): number => Number(value.toPrecision(15));

const FUNCTIONS: Record<string, (...values: number[]) => number> = {
  CEILING: (value, step) => Math.ceil(value / step) * step,
  INT: Math.floor,
  MIN: Math.min,
  ROUND: (value, places) => shown(Math.round(shown(value * 10 ** places)) / 10 ** places),
  SQRT: Math.sqrt,
};

const number = (value: Value | undefined): number => {
  if (typeof value !== 'number' || !Number.isFinite(value)) throw new Error(`${value} is no number`);
  return value;
};

/** Works out one formula from left to right. `cell` gives the value of a cell. Throws if the formula is wrong. */
export const evaluate = (formula: string, cell: (address: string) => Value): Value => {
  let at = 0;
  const next = (): RegExpExecArray | undefined => {
    TOKEN.lastIndex = at;
    return TOKEN.exec(formula) ?? undefined;
  };
  const take = (...signs: string[]): string | undefined => {
    const token = next();
    const sign = token?.[5];
    if (!token || !sign || !signs.includes(sign)) return undefined;
    at += token[0].length;
    return sign;
  };
  const expect = (sign: string): void => {
    if (!take(sign)) throw new Error(`no ${sign} at ${at} of ${formula}`);
  };
  const called = (name: string): Value => {
    expect('(');
    const values: Value[] = [];
    do values.push(comparison());
    while (take(','));
    expect(')');
    if (name === 'IF') return (values[0] ? values[1] : values[2])!;
    if (name === 'AND') return values.every(Boolean);
    const reckon = FUNCTIONS[name];
    if (!reckon) throw new Error(`there is no ${name}`);
    return reckon(...values.map(number));
  };
  const atom = (): Value => {
    if (take('-')) return -number(atom());
    if (take('(')) {
      const value = comparison();
      expect(')');
      return value;
    }
    const token = next();
    if (!token) throw new Error(`nothing at ${at} of ${formula}`);
    const [whole, digits, text, address, name] = token;
    at += whole.length;
    if (digits !== undefined) return Number(digits);
    if (text !== undefined) return text.replaceAll('""', '"');
    if (address !== undefined) return cell(address);
    if (name !== undefined) return called(name);
    throw new Error(`${whole} at ${at} of ${formula}`);
  };
  const product = (): Value => {
    let value = atom();
    for (let sign = take('*', '/'); sign; sign = take('*', '/'))
      value = sign === '*' ? number(value) * number(atom()) : number(value) / number(atom());
    return value;
  };
  const sum = (): Value => {
    let value = product();
    for (let sign = take('+', '-'); sign; sign = take('+', '-'))
      value = sign === '+' ? number(value) + number(product()) : number(value) - number(product());
    return value;
  };
  const text = (): Value => {
    let value = sum();
    while (take('&')) value = `${value}${sum()}`;
    return value;
  };
  function comparison(): Value {
    const value = text();
    return take('>=') ? number(value) >= number(text()) : value;
  }
  const value = comparison();
  if (at < formula.length) throw new Error(`${formula.slice(at)} is left of ${formula}`);
  return value;
};

/** The value of every formula in these cells, as a spreadsheet program would work it out. */
export const evaluated = (cells: SheetCell[][]): Map<string, Value> => {
  const values = new Map<string, Value>();
  const open = new Set<string>();
  const at = (address: string): Value => {
    const known = values.get(address);
    if (known !== undefined) return known;
    const [, column = '', row = ''] = /^([A-Z])(\d+)$/.exec(address) ?? [];
    const cell = cells[Number(row) - 1]?.[column.charCodeAt(0) - 'A'.charCodeAt(0)];
    if (cell === undefined || cell === '') throw new Error(`${address} is empty`);
    if (open.has(address)) throw new Error(`${address} goes by itself`);
    open.add(address);
    const value = typeof cell === 'string' ? cell : cell.formula ? evaluate(cell.formula, at) : cell.value;
    values.set(address, value);
    return value;
  };
  cells.forEach((row, down) =>
    row.forEach((cell, across) => {
      if (cell !== undefined && cell !== '')
        at(`${String.fromCharCode('A'.charCodeAt(0) + across)}${down + 1}`);
    }),
  );
  return values;
};
