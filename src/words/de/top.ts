import type { PartKind, topFields, TopRow, TopSayings } from '../../calculators/top/shape.js';
import type { BlockChoice } from '../../calculators/top/choices.js';
import type { Exact } from '../../measure/exact.js';
import type { CommonLabel } from '../common.js';
import { equals, type Teller } from '../teller.js';
import type { CalculatorWords } from '../vocabulary.js';
import { bed } from './bed.js';
import { BLOCK, listed } from './examples.js';

const PARTS: Record<PartKind, string> = {
  sashing: 'Zwischenstreifen',
  cornerstones: 'Ecksteine',
  triangles: 'Rand- und Eckdreiecke',
};

/** `3 cm breiter`, or nothing if there is no difference. */
const differs = (over: Exact, [more, less]: [string, string], t: Teller): string =>
  over.equals(0) ? '' : `${t.l(over.abs())} ${over.gt(0) ? more : less}`;

/** The border that would make it exactly as large as wanted, if it is too small. */
const closing = ({ side, end }: BlockChoice['border'], t: Teller): string => {
  if (side.equals(end)) return side.gt(0) ? `; genau mit einem Rand von ${t.l(side)} ringsum` : '';
  const places = [
    side.gt(0) ? `${t.l(side)} an jeder Seite` : '',
    end.gt(0) ? `${t.l(end)} oben und unten` : '',
  ].filter(Boolean);
  return `; genau mit einem Rand von ${places.join(' und ')}`;
};

/** The quilt top's words in German. */
export const top: CalculatorWords<typeof topFields, TopRow, TopSayings, CommonLabel> = {
  title: 'Quilttop',
  labels: {
    ...bed.labels,
    target: 'Gewünschte Größe',
    border: 'Ränder auf einer Seite, zusammen',
    block: 'Block, fertig',
    across: 'Blöcke nebeneinander',
    down: 'Blöcke untereinander',
    set: 'Anordnung',
    sashing: 'Zwischenstreifen, fertig',
    cornerstones: 'Ecksteine',
    frame: 'Zwischenstreifen auch außen',
    seam: 'Nahtzugabe',
    blocks: 'Blöcke insgesamt',
    finishedWidth: 'Breite des Tops, fertig',
    finishedLength: 'Länge des Tops, fertig',
    unfinished: 'Vor dem Annähen der Ränder',
    sideSquare: 'Quadrat für vier Randdreiecke',
    cornerSquare: 'Quadrat für zwei Eckdreiecke',
    sideTriangles: 'Randdreiecke',
    sashingJoined: 'Zwischenstreifen, lange verbunden',
    sashingWhole: 'Zwischenstreifen, längs ohne Ansatznähte',
  },
  hints: {
    ...bed.hints,
    target: 'mit Rändern; dazu passende Blockzahlen stehen unten',
    border: 'die später noch dazukommen',
    sashing: '0 für keine',
  },
  options: { ...bed.options, set: { straight: 'gerade', 'on-point': 'auf die Spitze gestellt' } },
  entries: {},
  sentences: {
    ...bed.sentences,

    // Blocks for a size.
    targetNotUsed: 'Die Blöcke sind für das Bett. Die gewünschte Größe zählt nicht mit.',
    blocksForSize: 'Blöcke für diese Größe',
    noBlocksForSize:
      'Auch 100 Blöcke je Richtung erreichen diese Größe nicht. Einen größeren Block oder eine kleinere Größe eintragen.',
    choiceHead: 'Blöcke',
    finishedHead: 'Fertig, mit Rändern',
    differenceHead: 'Verglichen mit dem Wunsch',
    blocksHead: 'Insgesamt',
    takeBlocks: ({ across, down }) => `${across} × ${down} nehmen`,
    difference: ({ over, border }, t) => {
      const sides = [
        differs(over.width, ['breiter', 'schmaler'], t),
        differs(over.length, ['länger', 'kürzer'], t),
      ].filter(Boolean);
      return (sides.join(', ') || 'genau wie gewünscht') + closing(border, t);
    },

    needsCornerstones:
      'Auf die Spitze gestellt gehören zu Zwischenstreifen Ecksteine. Ecksteine ankreuzen oder bei den Zwischenstreifen 0 eintragen.',
    runsRound: 'Auf die Spitze gestellt laufen Zwischenstreifen um jeden Block, auch außen.',
    unfinishedSize: ({ size }, t) => t.size(size),
    moreEachWay: ({ allowance }, t) => `je Richtung ${t.l(allowance)} mehr`,
    upToMark: ({ size }, t) => `${t.formula(size)}, aufgerundet auf den Linealstrich`,
    stripsAcross: ({ need }, t) => `Streifen quer zum Fadenlauf: ${equals(t.formula(need), t.l(need))}`,
    onlyBlocks: 'außer den Blöcken nichts zuzuschneiden',
    ifAllFromOne: 'Stoff, wenn alles aus einem ist',
    littleTooLong: ({ length, over, saves }, t) =>
      `Ein Zwischenstreifen von ${t.l(length)} ist ${t.l(over)} länger als die Stoffbreite. Um ${t.l(over)} kürzer bräuchte er keine Ansatznaht${saves.gt(0) ? ` und ${t.l(saves)} weniger Stoff` : ''}.`,
    mayTakeLess: 'Der Plan entsteht gerade: Vielleicht reicht weniger Stoff.',

    // What is cut.
    sash: 'Zwischenstreifen',
    sashBetweenBlocks: 'Zwischenstreifen zwischen Blöcken',
    sashBetweenRows: 'Zwischenstreifen zwischen Reihen',
    sashBetweenRowsInOne: 'langer Zwischenstreifen zwischen Reihen',
    cornerstone: 'Eckstein',
    wholeToJoin: ({ piece, length }, t) =>
      `${t.say(piece)}: Teil in Stoffbreite (die Teile auf ${t.l(length)} zusammennähen)`,
    endToJoin: ({ piece, length }, t) =>
      `${t.say(piece)}: Endstück (die Teile auf ${t.l(length)} zusammennähen)`,
    squareForSides: 'Quadrat, in vier Randdreiecke zu schneiden',
    squareForCorners: 'Quadrat, in zwei Eckdreiecke zu schneiden',
    part: ({ kind }) => PARTS[kind],
    partTitle: ({ kind }) => PARTS[kind],
    allParts: 'alles',

    // The answer.
    summary: ({ layout, finished, parts, areOne, buy }, t) => {
      const { count, block, onPoint, across, down, sashing } = layout;
      const set = onPoint ? 'auf die Spitze gestellt' : `${across} mal ${down}`;
      const sashed = sashing.gt(0) ? `, mit Zwischenstreifen von ${t.l(sashing)}` : '';
      const takes = listed(parts.map((part) => t.say(part))) + (areOne ? ' aus einem Stoff' : '');
      const bought = buy ? ` Für ${takes} ${t.bought(buy)} kaufen.` : '';
      return `${t.many(count, BLOCK)} zu ${t.l(block)}, ${set}${sashed}: Das Top misst fertig ${t.size(finished)}.${bought}`;
    },
    finished: 'Fertig',
    finishedSize: ({ size }, t) => t.size(size),

    // The lists and the drawing.
    clothApart: 'Stoff, wenn jeder Teil einen eigenen hat',
    stripsApart: 'Streifen, wenn jeder Teil einen eigenen Stoff hat',
    stripsTogether: 'Streifen, alle aus einem Stoff',
    partHead: 'Teil',
    picture: ({ summary }, t) => `Das Top: ${t.say(summary)}`,
  },
};
