import { rollPlans } from '../cutting/rolls.js';
import { ONE, exact } from '../measure/exact.js';
import { PACKAGES, ROLLS } from '../trade/batting.js';
import { MATTRESSES } from '../trade/beds.js';
import { BED_DROP } from '../trade/conventions.js';
import { buyPackage, buyFromRoll } from './batting-buy.js';
import { quiltOrBed } from './bed.js';
import { Book } from './book.js';
import { optional, lengthsField, lengthField, choiceField } from './fields.js';
import { packagesInUnit, readPackages, writePackages, rankPackages } from './packages.js';
import { shopFields, quiltFields, overageField, withOverage } from './shared.js';

const beds = Object.entries(MATTRESSES).map(([key, { name }]) => [key, name]);
/** A shop's own list. */
const packagesField = {
    kind: 'own',
    label: 'Packages',
    hint: 'the usual sizes where nothing is written',
    more: true,
    read: readPackages,
    write: (_packages, _style, raw) => writePackages(raw),
    marked: packagesInUnit,
};
const battingFields = {
    bed: choiceField('Quilt for a bed', { none: 'no bed', ...Object.fromEntries(beds) }),
    width: optional(quiltFields.width),
    length: optional(quiltFields.length),
    drop: lengthField('Drop over the edge', {
        initial: BED_DROP,
        zero: true,
        most: '60 in',
        hint: 'at both sides and the foot',
    }),
    tuck: lengthField('Tuck under the pillows', { initial: '0', zero: true, most: '60 in' }),
    overage: overageField,
    roll: optional(lengthsField('From a roll this wide', { most: '400 in', hint: 'in place of a package' })),
    packages: optional(packagesField),
    ...shopFields,
    shrinkage: { ...shopFields.shrinkage, hint: 'cotton batting 3 to 5 %' },
    price: { ...shopFields.price, label: 'Price of a yard or metre from the roll' },
};
/**
 * Batting for a quilt, from a package or from the roll, and the quilt's size where it is for a bed. Impossible inputs
 * give `errors`, never an exception.
 */
const reckonBatting = (input = {}) => {
    const book = new Book(battingFields, input);
    if (book.values.bed === 'none')
        book.require('width', 'length');
    return book.finish(() => {
        const { roll, shrinkage, bed } = book.values;
        const prices = book.values.packages?.map(({ priced }) => priced) ?? [];
        book.adopt(...prices);
        book.blame('packages', () => prices.forEach((price) => book.sameCurrency(price)));
        const { quilt, rows } = quiltOrBed(book);
        const need = withOverage(book, 'Batting', quilt, rows);
        book.given('roll', 'packages', 'shrinkage', 'increment', 'price', 'currency');
        const kept = ONE.sub(shrinkage);
        const washed = { width: quilt.width.mul(kept), length: quilt.length.mul(kept) };
        if (shrinkage.gt(0))
            book.row('washed', 'Quilt once washed, about', book.size(washed.width, washed.length), `{${rows.width}} and {${rows.length}}, each × (1 − {shrinkage})`);
        const packages = rankPackages(book.values.packages ?? readPackages(PACKAGES, { units: 'in' }), need);
        const wanted = roll?.length ? roll : undefined;
        const plans = rollPlans(wanted ?? ROLLS.map((width) => exact(width)), need);
        const best = packages.find(({ fits }) => fits);
        if (bed === 'crib' || best?.name === 'crib')
            book.notes.push('A quilt does not belong in a baby’s sleep space: that is a bare crib with a fitted sheet. Follow your local guidance.');
        return {
            ...(best && !wanted ? buyPackage(book, best, need) : buyFromRoll(book, plans[0], need)),
            need,
            quilt,
            washed,
            packages: packages.map(({ name, width, length, fits, price }) => {
                const sum = price && book.sum(price, price);
                return { name, width, length, fits, price: sum?.amount, priceText: sum?.text };
            }),
            rolls: plans.map(({ roll, lengths, each, direction, fabric }) => ({
                width: roll,
                lengths,
                length: each,
                direction,
                seams: lengths - 1,
                fabric,
                buy: book.toBuy(fabric),
            })),
        };
    });
};

export { battingFields, reckonBatting };
