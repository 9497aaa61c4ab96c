import { plural } from '../../reckon/shared.js';
import { drawTop } from '../../drawing/top.js';
import { lengthOf, sizeOf } from '../../drawing/picture.js';
import { rowIn } from '../../reckon/answer.js';
import { topFields, reckonTop } from '../../reckon/top.js';
import { PlanningSheet } from '../../sheet/background-sheet.js';
import { propertiesOf } from '../../sheet/calculator.js';
import { isAsServed } from '../../sheet/server.js';
import { stripList } from '../cutting/strips.js';

/** What the blocks of a top are. */
const BLOCKS = ['block', 'across', 'down', 'set'];
const inWords = (result) => result.errors ? '' : `${plural(result.blocks, 'block')} of ${rowIn(result, 'block').value}`;
/**
 * A quilt top's size from its blocks, with sashing, cornerstones and setting triangles.
 *
 * @tagname quilt-top
 */
class QuiltTop extends PlanningSheet {
    static { this.properties = propertiesOf(topFields); }
    constructor() {
        super();
        this.calculator = {
            title: 'Quilt top',
            fields: topFields,
            reckon: (input) => isAsServed(this) ? reckonTop(input) : this.plans.reckon((plan) => reckonTop(input, plan)),
            finishes: 'quilt top',
            headline: ({ finished }, style) => ['Finished', sizeOf(finished, style)],
            draw: (result, style) => [drawTop(result, style)],
            takes: ({ parts }, letters) => parts.map(({ part, fabric, cloth, cuts }, at) => ({
                ...cloth,
                title: part.replace(/^./, (first) => first.toUpperCase()),
                fabric: letters[at] ?? letters.at(-1) ?? '',
                need: fabric,
                cuts,
            })),
            listings: ({ parts, strips }, style) => {
                const own = parts.map(({ part, strips }) => ({ fabric: part, strips }));
                const cloth = {
                    caption: 'Cloth, each from its own',
                    head: ['Part', 'Cloth', 'Buy'],
                    rows: parts.map(({ part, fabric, buy }) => [part, lengthOf(fabric, style), buy.text]),
                };
                const apart = [cloth, { ...stripList(own, style, 'Part'), caption: 'Strips, each from its own cloth' }];
                const all = [{ fabric: 'all', strips }];
                const together = [{ ...stripList(all, style, 'Part'), caption: 'Strips, all from one cloth' }];
                // Who names one fabric, or several, has decided.
                const named = this.flow?.values['letters'];
                const letters = (named ?? this.fabric?.match(/[^\s,]+/g))?.length ?? 0;
                return parts.length < 2
                    ? parts.map((part) => stripList([{ ...part, fabric: part.part }], style, 'Part'))
                    : [letters < 2 ? together : [], letters === 1 ? [] : apart].flat();
            },
        };
        this.cornerstones = false;
        this.frame = false;
    }
    /** Its blocks as its attributes have them, and as they are now: `20 blocks of 12 in`. Empty where something is wrong. */
    get blocks() {
        const input = this.reckonInput();
        const written = Object.fromEntries(BLOCKS.map((key) => [key, this.written(key) ?? input[key]]));
        const now = inWords(this.result);
        if (BLOCKS.every((key) => written[key] === input[key]))
            return { written: now, now };
        // What they take of cloth is not asked.
        return { written: inWords(reckonTop({ ...input, ...written }, () => 0)), now };
    }
}

export { QuiltTop };
