import type { Answer } from '../../ledger/answer.js';
import type { Input } from '../../ledger/ledger.js';
import type { Money, Purchase } from '../../ledger/purchase.js';
import type { Quantity } from '../../ledger/quantity.js';
import { type Size } from '../../ledger/quilt.js';
import { type ShopRow } from '../../ledger/shop.js';
import type { Exact } from '../../measure/exact.js';
import { type Message } from '../../measure/message.js';
import type { RollPlan } from '../../planner/rolls.js';
import { type Package, type PackageSayings } from './packages.js';
import type { RankedPackage } from './rank.js';
export declare const battingFields: {
    shrinkage: import("../../ledger/field.js").Field<import("fraction.js").default>;
    increment: import("../../ledger/field.js").Field<import("../../measure/shop.js").Step>;
    price: import("../../ledger/field.js").Field<import("fraction.js").default | undefined>;
    currency: import("../../ledger/field.js").Field<string | undefined>;
    bed: import("../../ledger/field.js").Field<"full" | "crib" | "twin" | "twin-long" | "queen" | "king" | "california-king" | "60x120" | "70x140" | "90x190" | "90x200" | "120x200" | "135x190" | "140x200" | "150x200" | "160x200" | "180x200" | "200x200" | "none"> & {
        options: readonly ("full" | "crib" | "twin" | "twin-long" | "queen" | "king" | "california-king" | "60x120" | "70x140" | "90x190" | "90x200" | "120x200" | "135x190" | "140x200" | "150x200" | "160x200" | "180x200" | "200x200" | "none")[];
    };
    width: import("../../ledger/field.js").Field<import("fraction.js").default | undefined>;
    length: import("../../ledger/field.js").Field<import("fraction.js").default | undefined>;
    drop: import("../../ledger/field.js").Field<import("fraction.js").default>;
    tuck: import("../../ledger/field.js").Field<import("fraction.js").default>;
    overage: import("../../ledger/field.js").Field<import("fraction.js").default>;
    roll: import("../../ledger/field.js").Field<import("fraction.js").default[] | undefined>;
    packages: import("../../ledger/field.js").Field<Package[] | undefined>;
};
/** Input of {@link reckonBatting}: `width` and `length`, or `bed`, `drop` and `tuck`; `overage`, `packages`, `roll`, … */
export type BattingInput = Input<typeof battingFields>;
/** The rows that it reckons. */
export type BattingRow = 'mattress' | 'bedWidth' | 'bedLength' | 'needWidth' | 'needLength' | 'washed' | 'lengths' | 'each' | ShopRow;
/** What it says. */
export interface BattingSayings extends PackageSayings {
    size: Size;
    measureYours: undefined;
    sizeForBed: undefined;
    eachSideWashed: {
        width: Quantity;
        length: Quantity;
        shrinkage: Quantity;
    };
    notForCrib: undefined;
    batting: undefined;
    /** One package: its name, why we chose it, and what it leaves over. */
    onePackage: Pick<Package, 'name'>;
    packageToBuy: Package & {
        count: number;
    };
    packageFits: {
        pack: Package;
        across: Quantity;
        along: Quantity;
    };
    bothWays: {
        beside: Exact;
        beyond: Exact;
    };
    leftBothWays: {
        pack: Package;
        across: Quantity;
        along: Quantity;
    };
    readLabel: undefined;
    spareOneWay: {
        spare: Exact;
    };
    packageSummary: {
        need: Size;
        turned: boolean;
    };
    /** From a roll. */
    tooManyLengths: {
        roll: Exact;
        lengths: number;
    };
    lengthsOfRoll: {
        roll: Exact;
    };
    lengthsReach: {
        reach: Quantity;
        need: Quantity;
        lengths: number;
    };
    eachLength: {
        side: 'width' | 'length';
        from: Quantity;
    };
    noPackage: undefined;
    moreThanTwo: {
        lengths: number;
    };
    ofRoll: {
        bought: Purchase;
        roll: Exact;
    };
    lengthOfBatting: undefined;
    rollSummary: {
        lengths: number;
        roll: Exact;
        need: Size;
    };
    /** The price of a package: as a plain number, and as the page shows it. */
    plainPrice: {
        price: Money;
    };
    shownPrice: {
        price: Money;
    };
    /** In the lists. */
    packageList: undefined;
    packageHead: undefined;
    sizeHead: undefined;
    fitsHead: undefined;
    fits: Pick<BattingPackage, 'fits' | 'priceText'>;
    rollList: undefined;
    rollHead: undefined;
    lengthsHead: undefined;
    lengthsToCut: Pick<BattingRoll, 'lengths' | 'length'>;
    /** In the drawing. */
    picture: {
        summary: Message;
    };
    quiltInPicture: undefined;
}
export declare const say: <Code extends "size" | "batting" | "picture" | "usualPackage" | "packageWidth" | "packageLength" | "packagePrice" | "notPackage" | "inPackage" | "packageCount" | "fits" | "measureYours" | "sizeForBed" | "eachSideWashed" | "notForCrib" | "onePackage" | "packageToBuy" | "packageFits" | "bothWays" | "leftBothWays" | "readLabel" | "spareOneWay" | "packageSummary" | "tooManyLengths" | "lengthsOfRoll" | "lengthsReach" | "eachLength" | "noPackage" | "moreThanTwo" | "ofRoll" | "lengthOfBatting" | "rollSummary" | "plainPrice" | "shownPrice" | "packageList" | "packageHead" | "sizeHead" | "fitsHead" | "rollList" | "rollHead" | "lengthsHead" | "lengthsToCut" | "quiltInPicture">(code: Code, ...[values]: BattingSayings[Code] extends undefined ? [] : [values: BattingSayings[Code]]) => Message<Code>;
/** A package that is sold, and whether it is large enough. Lengths are exact inches. */
export interface BattingPackage extends Size {
    name: string | Message;
    /** Whether it is large enough, turned or not. */
    fits: boolean;
    /** The price of one, if the list gives it: a decimal number, and as the page shows it. */
    price?: Message | undefined;
    priceText?: Message | undefined;
}
/** One way to cut the batting from a roll. Lengths are exact inches. */
export interface BattingRoll {
    /** How wide the roll is. */
    width: Exact;
    /** Lengths side by side: one, or two joined edge to edge. More only if no roll is wide enough for two. */
    lengths: number;
    /** How long each is cut. */
    length: Exact;
    /** `lengthwise`: the roll's length runs along the quilt's length; `crosswise`: across it. */
    direction: RollPlan['direction'];
    seams: number;
    fabric: Exact;
    buy: Purchase;
}
/** What {@link reckonBatting} gives back. */
export interface BattingAnswer extends Answer {
    /** The batting's size before quilting. */
    need: Size;
    /** The finished size: the given one, or the one for the bed. */
    quilt: Size;
    /** The approximate size of the quilt after a wash. */
    washed: Size;
    /** Every package, best first: those that fit, by price, then those without a price by area. */
    packages: BattingPackage[];
    /** Ways to cut it from a roll, best first: the fewest lengths, then the least batting. */
    rolls: BattingRoll[];
    /** The package to buy. If there is none, buy the first way from a roll. */
    used: Answer['used'] & {
        pack: RankedPackage | undefined;
    };
}
