import type {
  BindingRow,
  BindingSayings,
  bindingFields,
  Fold,
  Narrower,
} from '../../calculators/binding/shape.js';
import { BINDING_STRIP, COTTON_WIDTH, SEAM } from '../../trade/conventions.js';
import type { CommonLabel } from '../common.js';
import type { Teller } from '../teller.js';
import type { CalculatorWords } from '../vocabulary.js';

const FOLDS: Record<Fold, string> = { double: 'double-fold', single: 'single-fold' };

/** What would do in place of too wide a strip. */
const narrowerLike = (narrower: Narrower, t: Teller): string => {
  if (narrower === 'cloth') return `Write wider cloth, like ${t.usual(COTTON_WIDTH)}.`;
  const width = narrower === 'strip' ? BINDING_STRIP : { in: '3/8 in', cm: '1 cm' };
  return `Write a narrower one, like ${t.usual(width)}, or wider cloth.`;
};

/** What would do in place of a join that takes too much. */
const otherJoin = (write: BindingSayings['joinLeavesNothing']['write'], t: Teller): string => {
  if (write === 'straight') return 'straight';
  return write === 'smallerSeam'
    ? `a smaller seam, like ${t.usual(SEAM)}`
    : `wider cloth, like ${t.usual(COTTON_WIDTH)}`;
};

/** The binding's words in English. */
export const binding: CalculatorWords<typeof bindingFields, BindingRow, BindingSayings, CommonLabel> = {
  title: 'Binding',
  labels: {
    perimeter: 'Distance round, measured',
    around: 'Distance round the quilt',
    allowance: 'Corners and closing',
    need: 'Binding needed',
    stripWidth: 'Strip width',
    finished: 'Finished width',
    fold: 'Fold',
    thickness: 'Thickness of the quilt',
    strip: 'Cut the strips',
    cut: 'Cut',
    seam: 'Seam allowance',
    loss: 'Each join uses',
    strips: 'Strips across the cloth',
    square: 'Square',
    rounds: 'Rounds in the tube',
    yields: 'The strips give',
    byArea: 'By area alone, a square of',
    fatStrips: 'Strips from fat quarters',
    fatQuarters: 'Or buy fat quarters',
  },
  hints: {
    perimeter: 'for curved edges, in place of width and length',
    allowance: 'mitres and the closing tails',
    stripWidth: {
      in: 'as you cut it; if blank, 2 1/2 in or from the finished width',
      cm: 'as you cut it; if blank, 6.5 cm or from the finished width',
    },
    finished: 'as it shows on the front; you can leave it blank',
    thickness: 'counts if you give a finished width',
    seam: 'for a straight join, and for the bias tube',
  },
  options: { fold: FOLDS, cut: { straight: 'across the cloth', bias: 'on the bias' } },
  entries: {},
  sentences: {
    asMeasured: 'as measured',
    curvedEdge: 'A curved edge needs bias binding: strips cut straight do not bend round it.',
    betweenMarks: ({ text, strip }, t) =>
      `${t.quote(text)} is between two marks of the ruler, so cut the strips ${t.l(strip)} wide.`,
    upToMark: ({ stripWidth, mark }, t) => `${t.n(stripWidth)}, up to a mark of ${t.stated(mark)}`,
    usualWidth: 'the usual width',
    cutOnMark: ({ whole, cut }, t) =>
      `${t.reckonedLength(whole)}${whole.value.equals(cut) ? '' : `, cut ${t.l(cut)}`}`,
    stripWidthUsed: 'The strip width is used, not the finished width.',
    stripTooWide: ({ strip, cloth, narrower }, t) =>
      `A strip ${t.l(strip)} wide is wider than the cloth, ${t.l(cloth)}. ${narrowerLike(narrower, t)}`,
    noSquare: ({ strip, cloth, narrower }, t) =>
      `No square of cloth ${t.l(cloth)} wide holds a bias strip ${t.l(strip)} wide. ${narrowerLike(narrower, t)}`,
    joinLeavesNothing: ({ loss, cloth, write }, t) =>
      `A join that uses ${t.l(loss)} leaves nothing of strips ${t.l(cloth)} long. Write ${otherJoin(write, t)}.`,
    joinAtAngle: 'at 45°: the strip’s width',
    stripsReach: ({ reach, need }, t) => `${t.reckoned(reach)} ≥ ${t.l(need)}`,
    bindingStrip: 'binding strip',
    summary: ({ strips, strip, isDiagonal, need, fold }, t) => {
      const cut = `${strips > 1 ? `${strips} strips` : 'One strip'} ${t.l(strip)} wide`;
      const joined = strips > 1 ? `, joined ${isDiagonal ? 'at 45°' : 'straight'},` : '';
      return `${cut}${joined} for ${t.l(need)} of ${FOLDS[fold]} binding.`;
    },

    // Bias.
    eachSquare: ({ count }) => `Each of ${count} squares`,
    leastSquare: ({ need, tooNarrow }, t) =>
      `the smallest with enough whole rounds for ${t.l(need)}${tooNarrow ? `; one square does not fit on cloth ${t.l(tooNarrow)} wide` : ''}`,
    roundsFit: ({ across, rounds, strip }, t) =>
      `${t.reckonedLength(across)} across: ${rounds} × ${t.n(strip)} fit`,
    roundsGive: ({ all, need }, t) => `${t.formula(all)}, at least ${t.l(need)}`,
    byAreaAlone: ({ side }, t) => `${t.formula(side)}, rounded up; its last round may be too narrow to use`,
    biasSquare: 'square for continuous bias',
    biasSummary: ({ count, side, need, fold, strip }, t) =>
      `${count > 1 ? `${count} squares` : 'One square'} of ${t.l(side)} for ${t.l(need)} of ${FOLDS[fold]} bias binding, cut ${t.l(strip)} wide.`,

    // Fat quarters.
    squareFromEach: ({ side }, t) => `a square of ${t.l(side)} from each`,
    stripsFromEach: ({ high, strip, each }, t) => `${t.n(high)} ÷ ${t.n(strip)}: ${each} from each`,
    notPossible: 'not possible',
    tooWideForFatQuarter: ({ strip, size }, t) =>
      `a strip ${t.l(strip)} wide is too wide for ${t.size(size)}`,

    // In the drawing.
    picture: ({ summary }, t) =>
      `${t.say(summary)} Each strip lies across the cloth; the broken lines at the right are the joins.`,
    biasPicture: ({ side }, t) =>
      `A square of ${t.l(side)} for continuous bias. The heavy broken line is the first cut; the fine ones show the bias strips.`,
    stripNumber: ({ number }) => `strip ${number}`,
    stripCount: ({ count }) => `${count} strips`,
  },
};
