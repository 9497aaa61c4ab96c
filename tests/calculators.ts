export type Attributes = Record<string, string | true>;

/** Something typed into a row. */
type Typed = [row: string, text: string];

/** Every calculator, by its folder in src/elements/: attributes for a good answer, and other numbers that a reader may type. */
export const CALCULATORS: Record<string, { given: Attributes; typed: Typed[] }> = {
  backing: {
    given: { width: '58', length: '70' },
    typed: [
      ['width', '61 3/4'],
      ['overage', '5'],
    ],
  },
  binding: {
    given: { width: '58', length: '70' },
    typed: [
      ['finished', '3/8'],
      ['fabricWidth', '42'],
    ],
  },
  borders: { given: { width: '58', length: '70', borders: '2, 4 1/2' }, typed: [['borders', '1 1/2']] },
  batting: { given: { width: '58', length: '70' }, typed: [['length', '91']] },
  block: {
    given: { chart: 'A B A; B A B; A B A', block: '12', count: '2' },
    typed: [
      ['block', '9'],
      ['count', '3'],
    ],
  },
  sleeve: { given: { width: '58' }, typed: [['width', '61 3/4']] },
  top: { given: { block: '12', across: '4', down: '5', sashing: '2' }, typed: [['sashing', '2 1/4']] },
  cutting: { given: { list: 'A | square | 3 1/2 in | 12' }, typed: [['list', 'B']] },
};

/** All that reckon, the worksheet last. */
export const NAMES = [...Object.keys(CALCULATORS), 'worksheet'];

/** A calculator as it is written in a page. */
export const tagOf = (name: string, attributes: Attributes = CALCULATORS[name]?.given ?? {}): string => {
  const written = Object.entries(attributes).map(([attribute, value]) => ` ${attribute}="${String(value)}"`);
  return `<quilt-${name}${written.join('')}></quilt-${name}>`;
};
