import { describe, expect, test } from 'vitest';
import { exact } from '../../src/measure/exact.js';
import { fromUnit, INCHES, toUnit, writesComma, type Unit } from '../../src/measure/units.js';

// International yard and pound agreement, 1959: 1 yd = 0.9144 m exactly; NIST SP 811, appendix B (from memory): 1 in =
// 2.54 cm, 1 ft = 30.48 cm.
test.each<[string, Unit, string, Unit]>([
  ['1', 'yd', '0.9144', 'm'],
  ['1', 'in', '2.54', 'cm'],
  ['1', 'ft', '30.48', 'cm'],
  ['1', 'yd', '3', 'ft'],
  ['1', 'ft', '12', 'in'],
  ['1', 'm', '100', 'cm'],
  ['1', 'cm', '10', 'mm'],
])('%s %s is %s %s exactly', (amount, unit, same, other) => {
  expect(toUnit(fromUnit(exact(amount), unit), other).equals(exact(same))).toBe(true);
  expect(toUnit(fromUnit(exact(same), other), unit).equals(exact(amount))).toBe(true);
});

test('every unit is in inches', () => expect(INCHES.in.equals(1)).toBe(true));

describe('writesComma', () => {
  test.each(['de', 'fr', 'fr-CA', 'es', 'pt-BR', 'nl', 'sv', 'pl'])('%s does', (lang) =>
    expect(writesComma(lang)).toBe(true),
  );
  test.each(['en', 'en-GB', 'en-ZZ', 'de-CH', 'ja', 'he', 'not a language', 'x', '', undefined])(
    '%s does not',
    (lang) => expect(writesComma(lang)).toBe(false),
  );
  test.each(['en', 'en-US', 'en-GB', 'en-AU', 'en-CA', 'en-IE', 'en-NZ', 'en-ZA', 'en-DE'])(
    '%s is as the browser writes it',
    (lang) => expect(writesComma(lang)).toBe(new Intl.NumberFormat(lang).format(1.5).includes(',')),
  );
});
