/** Values that nobody means to write, and values that no attribute can hold. */
export const HOSTILE: unknown[] = [
  ...[
    '',
    ' ',
    'abc',
    '0',
    '-5',
    '1/0',
    '1e999',
    '9'.repeat(10_000),
    'NaN',
    '<img onerror=alert(1)>',
    '💥',
    '1000',
  ],
  ...[0, -0, -1, NaN, Infinity, 1e308, 1e-9, 2 ** 53, true, false, null, undefined],
  ...[
    {},
    [],
    [[]],
    ['1', {}],
    Object.create(null) as unknown,
    { toString: null },
    () => 1,
    Symbol('x'),
    10n,
    new Date(0),
  ],
];

/** Every input of a calculator with these fields. */
export const inputsOf = (fields: object): string[] => [
  ...Object.keys(fields),
  ...['units', 'shown', 'shared', 'apart', 'fabricWidths', 'lang', 'measured'],
];
