import { clothOf, type Cloth } from '../../ledger/cloth.js';
import { Ledger, type Reckoning } from '../../ledger/ledger.js';
import { total } from '../../ledger/quantity.js';
import { sidesOf } from '../../ledger/quilt.js';
import { buyCloth, SMALL_SPARE, type Bought } from '../../ledger/shop.js';
import { ownCloths } from '../../ledger/widths.js';
import { sewBorder, type SewnBorder } from './cut.js';
import {
  bordersFields,
  rowOf,
  say,
  type Border,
  type BorderBought,
  type BordersAnswer,
  type BordersInput,
  type BordersLedger,
  type Corners,
} from './shape.js';
import { along, countOf, type WorkedPlan } from './strips.js';
import { GrowingTop, type Widths } from './top.js';
import { lastBorder } from './wanted.js';

/**
 * Borders round a top: what to cut for each, from how many strips, the cloth for all of them, and the finished size. A
 * length typed over a reckoned one changes all that follows. Impossible inputs give `errors`, never an exception.
 */
export const reckon = (input: BordersInput | null = {}): Reckoning<BordersAnswer> => {
  const ledger: BordersLedger = new Ledger(bordersFields, input);
  return ledger.finish(() => {
    const { borders: listed = [], target, grain } = ledger.values;
    const many = listed.length + (target ? 1 : 0);
    if (!many) ledger.refuse('borders', say('noBorder'));
    // One row shows the corners of all borders.
    ledger.values.corners = cornersFor(ledger, many);
    ledger.given('width', 'length', 'borders', 'target', 'corners');
    const cloth = clothOf(ledger);
    const top = new GrowingTop(ledger);
    const sewn = sewAll(ledger, top, cloth);
    const made = sewn.map(({ made }) => made);
    const borders = made.map(({ border }) => border);
    ledger.given();
    const haveOneWidth = borders.every((border) => border.cloth.width.equals(cloth.width.value));
    const isOneCloth = haveOneWidth && !ledger.input.apart;
    const bought = buyAll(ledger, sewn, isOneCloth ? cloth : undefined);
    const { shared } = ledger.input;
    if (borders.length > 1 && !isOneCloth)
      ledger.note(say('forEachBorder', { buys: borders.map(shared ? alone : withSpare) }));
    else if (borders.length > 1 && !shared)
      ledger.note(say('fromDifferentCloths', { buys: borders.map(withSpare) }));
    ledger.note(say('measureTop'));
    const finished = sidesOf(top);
    const [strips, joins] = [countOf(borders, 'strips'), countOf(borders, 'joins')];
    return {
      ...bought,
      finished,
      summary: say('summary', { strips, joins, grain, borders: borders.length, finished }),
      borders,
      cuts: made.flatMap(({ cuts }) => cuts),
      used: { cloth, borders: made },
    };
  });
};

/** What to buy for a border by itself. Where other parts share its cloth, nothing is known of what is left over. */
const alone = ({ buy }: Border): BorderBought => ({ buy, spare: undefined });

/** What to buy for a border by itself, and what is left over of it if that is little. */
const withSpare = ({ buy, fabric }: Border): BorderBought => {
  const spare = buy.inches.sub(fabric);
  return { buy, spare: spare.lt(SMALL_SPARE) ? spare : undefined };
};

/** The corners: one style for all borders, or one for each. If the numbers differ, warns: a reader may have added a border. */
const cornersFor = (ledger: BordersLedger, borders: number): Corners[] => {
  const { corners } = ledger.values;
  const styles = corners.length;
  if (styles === 1 || styles === borders) return corners;
  ledger.note(say(styles < borders ? 'cornersCopied' : 'cornersUnused', { styles, borders }));
  return Array.from({ length: borders }, (_, at) => cornersAt(corners, at));
};

/** The corners of a border, or those of the border before it if it has none. */
const cornersAt = (corners: Corners[], at: number): Corners => corners[at] ?? corners.at(-1) ?? 'sides-first';

/** Adds every border, from the inside out. If there is a wanted size, the last one is as wide as that needs. */
const sewAll = (ledger: BordersLedger, top: GrowingTop, cloth: Cloth): SewnBorder[] => {
  const clothAt = ownCloths(ledger, cloth);
  ledger.given('grain', 'join', 'seam');
  const { borders: listed = [], corners, target } = ledger.values;
  const sewn: SewnBorder[] = [];
  const sew = (widths: Widths): void => {
    const at = sewn.length;
    const wanted = { number: at + 1, corners: cornersAt(corners, at), widths };
    const border = sewBorder(ledger, top, wanted, cloth, clothAt(at));
    if (border) sewn.push(border);
  };
  listed.forEach((value, at) => {
    const width = ledger.entry('borders', at, value);
    sew({ side: width, end: width });
  });
  if (target) sew(lastBorder(ledger, top, target));
  return sewn;
};

/** Buys the cloth for all borders. `shared` is the cloth if all are cut from one. Of several, each is rounded up by itself. */
const buyAll = (ledger: BordersLedger, sewn: SewnBorder[], shared: Cloth | undefined): Bought => {
  const howOf = ({ fabric, longest }: WorkedPlan) => longest ?? fabric;
  const [only, ...more] = sewn;
  if (only && !more.length)
    return buyCloth(ledger, only.plan.fabric, { how: howOf(only.plan), from: only.from });
  const needs = sewn.map(({ made: { number }, plan, from }) =>
    ledger.row(rowOf(number, 'Fabric'), plan.fabric, {
      how: howOf(plan),
      label: say('borderRow', { number, is: 'cloth' }),
      from,
    }),
  );
  const apart = total(needs);
  if (!shared) return buyCloth(ledger, apart, { each: sewn.map(({ made }) => made.border.buy) });
  // If they are cut along the cloth, pieces of several borders can lie side by side.
  const [together] =
    ledger.values.grain === 'along'
      ? along(
          ledger,
          sewn.flatMap(({ lots }) => lots),
          shared,
        )
      : [];
  if (!together?.fabric.value.lt(apart.value)) return buyCloth(ledger, apart);
  const { how, fabric, longest } = together;
  return buyCloth(ledger, fabric, {
    how: say('allAlong', { how, fabric, longest }),
    from: needs.map(({ row }) => row),
  });
};
