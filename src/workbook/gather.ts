import type { Calculator } from '../calculators/calculator.js';
import type { Answer } from '../ledger/answer.js';
import { textOf } from '../ledger/field.js';
import type { Reckoning } from '../ledger/ledger.js';
import { isPlanning } from '../ledger/planning.js';
import type { Cut } from '../ledger/purchase.js';
import type { Message } from '../measure/message.js';
import type { Fabrics } from './fabrics.js';
import type { WorkbookInput, WorkbookMaker } from './input.js';
import { letterOf } from './parts.js';
import { say } from './sayings.js';
import { takesOf, type PartTake } from './takes.js';

/** A calculator on a worksheet, and what it has reckoned. */
export interface PartOnPage {
  calculator: Calculator;
  reckoning: Reckoning<Answer>;
  /** The letters of its fabrics, as they are written on it. */
  fabric?: unknown;
}

/** One line of the cut list of all parts. */
export interface PieceOfPart {
  /** The letter of its fabric, or empty if the part names none. */
  letter: string;
  /** The name of the fabric. If it has no letter: what it is for. */
  name: string | Message;
  title: Message;
  cut: Cut;
}

const titleOf = ({ calculator }: PartOnPage): Message => say('titleOf', { calculator: calculator.name });

const whyNot = (part: PartOnPage): Message[] => {
  const [issue] = part.reckoning.issues;
  return issue ? [say('notYet', { title: titleOf(part), isPlanning: isPlanning(issue) })] : [];
};

/** Warns if a name with a space was read as several letters and one of them is no fabric: the author may mean one name. */
const splitName = (part: PartOnPage, letters: string[], takes: PartTake[], fabrics: Fabrics): Message[] => {
  const written = letterOf(part.fabric);
  const isKnown = (letter: string): boolean =>
    fabrics.nameOf(letter) !== undefined || takes.some(({ fabric }) => fabric === letter);
  return part.reckoning.issues.length ||
    !written.includes(' ') ||
    written.includes(',') ||
    letters.every(isKnown)
    ? []
    : [say('readAsSeveral', { title: titleOf(part), written, letters })];
};

/** What a part makes several of, once it is reckoned. */
const makerOf = (part: PartOnPage): WorkbookMaker[] => {
  const { own } = part.reckoning;
  const making = own && part.calculator.makes?.(own);
  return making ? [{ ...making, title: making.title ?? titleOf(part) }] : [];
};

/** What all parts take from which fabric, what they buy by the piece, and every piece to cut. */
export const gather = (
  parts: PartOnPage[],
  fabrics: Fabrics,
  isColour: (swatch: string) => boolean,
): { gathered: WorkbookInput; pieces: PieceOfPart[] } => {
  const taken = parts.map((part) => {
    const letters = fabrics.lettersIn(part.fabric);
    const takes = takesOf(part.calculator, part.reckoning, letters);
    return { letters, takes, troubles: splitName(part, letters, takes, fabrics) };
  });
  const takes = taken.flatMap((part) => part.takes);
  return {
    pieces: takes.flatMap(({ fabric: letter, title, cuts }) =>
      cuts.map((cut) => ({ letter, name: letter ? (fabrics.nameOf(letter) ?? '') : title, title, cut })),
    ),
    gathered: {
      troubles: [...fabrics.troubles(isColour), ...taken.flatMap(({ troubles }) => troubles)],
      unfinished: parts.flatMap(whyNot),
      named: taken.flatMap(({ letters }) => letters),
      fabrics: fabrics.declared.map(({ letter, name, price, sheet, fabricWidth, atHand }) => ({
        letter: textOf(letter),
        name,
        price,
        sheet,
        fabricWidth,
        atHand,
      })),
      parts: takes.flatMap(({ part }) => part ?? []),
      makers: parts.flatMap(makerOf),
      items: takes.flatMap(({ item }) => item ?? []),
    },
  };
};
