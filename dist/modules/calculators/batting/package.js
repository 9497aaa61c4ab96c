import { Purchase, Cut } from '../../ledger/purchase.js';
import { Quantity, count } from '../../ledger/quantity.js';
import { facing, sidesOf } from '../../ledger/quilt.js';
import { costOf, SMALL_SPARE } from '../../ledger/shop.js';
import { exact, least } from '../../measure/exact.js';
import { say } from './shape.js';

/** One package: what it leaves over in both directions, and its price if the list gives one. */
const buyPackage = (ledger, pack, need) => {
    const { name, width, length, turned, price } = pack;
    const [across, along] = facing(need, turned);
    const [beside, beyond] = [width.sub(across.value), length.sub(along.value)];
    const buy = new Purchase(length, exact(1), 'package', say('packageToBuy', { ...pack, count: 1 }));
    ledger.row('buy', buy, { how: say('packageFits', { pack, across, along }), from: ['packages'] });
    ledger.row('spare', say('bothWays', { beside, beyond }), {
        how: say('leftBothWays', { pack, across, along }),
        from: ['buy'],
    });
    if (price)
        costOf(ledger, count(1), say('onePackage', { name }), new Quantity(price, 'money'), ['buy', 'packages']);
    ledger.note(say('readLabel'));
    const spare = least(beside, beyond);
    if (spare.lt(SMALL_SPARE))
        ledger.note(say('spareOneWay', { spare }));
    const size = sidesOf(need);
    return {
        buy,
        fabric: along.value,
        spare: beyond,
        summary: say('packageSummary', { need: size, turned }),
        cuts: [new Cut(1, say('batting'), size.width, size.length)],
    };
};

export { buyPackage };
