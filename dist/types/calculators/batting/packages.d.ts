import { type Field } from '../../ledger/field.js';
import type { Size } from '../../ledger/quilt.js';
import type { Exact } from '../../measure/exact.js';
import { type Style } from '../../measure/format.js';
import { type Message } from '../../measure/message.js';
import { type UsualPackage } from '../../trade/batting.js';
export interface PackageSayings {
    /** The name of a usual size. */
    usualPackage: {
        size: UsualPackage;
    };
    packageWidth: undefined;
    packageLength: undefined;
    packagePrice: undefined;
    notPackage: {
        text: string;
    };
    /** Something is wrong with one package of a list. */
    inPackage: {
        text: string;
        problem: Message;
    };
    packageCount: {
        most: number;
    };
}
/** A package of batting, as its label or a shop's list names it. */
export interface Package extends Size {
    /** The shop's own name for it, or the name of a usual size. */
    name: string | Message;
    /** Its name is that of the size for a crib. */
    isForCrib: boolean;
    price?: Exact | undefined;
    /** The price as somebody wrote it, with its currency. */
    priced?: string | undefined;
}
/** The sizes that most shops have, where people measure in these units. */
export declare const usualPackages: (style: Style) => Package[];
/** A shop's own list. */
export declare const packagesField: Field<Package[]>;
