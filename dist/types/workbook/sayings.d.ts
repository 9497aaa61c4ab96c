import type { Money, Purchase } from '../ledger/purchase.js';
import type { Quantity, Stated } from '../ledger/quantity.js';
import type { Exact } from '../measure/exact.js';
import { type Message } from '../measure/message.js';
/** The cloth for a part, or for several parts that are cut from one length. */
interface NeedOf {
    need: Quantity;
    titles: Message[];
}
/** What the lines of the list say. */
interface LineSayings {
    /** What a calculator is called, in its own words: `Binding`. */
    titleOf: {
        calculator: string;
    };
    /** Something that a calculator says, in its own words. */
    saidBy: {
        calculator: string;
        says: Message;
    };
    /** A part without a title, and an item without a word. */
    somePart: undefined;
    something: undefined;
    fabricOf: {
        letter: string;
    };
    /** A cloth of the list, with its width if the line has to say it. */
    clothOf: {
        what: Message;
        width: Exact | undefined;
    };
    /** The same with the fabric's name. */
    clothNamed: {
        cloth: Message;
        name: string;
    };
    /** A length of that cloth for some of its parts. */
    lengthFor: {
        cloth: Message;
        titles: Message[];
    };
    /** What to buy, with its width if the line has to say it. */
    toBuy: {
        buy: Purchase;
        width: Exact | undefined;
    };
    /** Several lengths to buy. */
    allOf: {
        buys: Purchase[];
    };
    buyRow: undefined;
    /** How the need was got from those of its parts; `together` is less, and `isEnough` where what is bought does for each by itself. */
    needOfParts: {
        parts: NeedOf[];
        added: Exact;
        together: {
            need: Exact;
            isEnough: boolean;
        } | undefined;
    };
    upToSteps: {
        lengths: NeedOf[];
        step: Stated;
        spare: Exact;
    };
    boltsRow: {
        kits: number;
    };
    /** How many lengths a bolt gives. There are two kinds if a kit buys two lengths. */
    boltsOfOneKind: {
        kinds: {
            each: number;
            buy: Purchase;
        }[];
        bolt: Stated;
    };
    boltsOfBoth: {
        each: number;
        buy: Purchase;
        bolt: Stated;
    };
    boltsOfLengths: {
        each: number;
        buy: Purchase;
        bolt: Stated;
    };
    undeclared: {
        letter: string;
        titles: Message[];
    };
    namesNone: {
        what: Message;
        like: string;
    };
    severalWidths: {
        what: Message;
        widths: number;
        narrowest: Exact;
    };
    twoLengths: {
        cloth: Message;
        lengths: {
            buy: Purchase;
            titles: Message[];
        }[];
        one: Purchase;
    };
    planningTogether: {
        cloth: Message;
    };
    /** `apart` has a length for each part, if a bolt holds each of them. */
    longerThanBolt: {
        cloth: Message;
        buy: Purchase;
        bolt: Stated;
        apart: {
            title: Message;
            buy: Purchase;
        }[];
    };
}
/** What the sums say. */
interface SumSayings {
    priceOf: {
        what: Message;
    };
    priceOfFabric: {
        letter: string;
    };
    priceOfPart: {
        title: Message;
    };
    aPrice: undefined;
    widthOfFabric: {
        letter: string;
    };
    /** A price that a part reckons with in another currency. */
    pricedInOther: {
        price: Money;
        here: string;
    };
    noLetter: undefined;
    sameLetter: {
        letter: string;
    };
    negativeCloth: undefined;
    itemOf: {
        item: Message;
        letter: string;
    };
    unusedFabric: {
        letter: string;
        isNamed: boolean;
    };
    leavesOut: {
        things: Message[];
    };
    totalRow: {
        isKit: boolean;
        soFar: boolean;
    };
    sumOf: {
        costs: Money[];
    };
    kitsRow: {
        kits: number;
        soFar: boolean;
    };
    wholeBolts: {
        hasItems: boolean;
        each: Money;
    };
    summary: {
        fabrics: number;
        byLength: boolean;
        items: Message[];
        isUnfinished: boolean;
    };
}
/** What the worksheet says of its parts and its fabrics. */
interface GatherSayings {
    notYet: {
        title: Message;
        isPlanning: boolean;
    };
    readAsSeveral: {
        title: Message;
        written: string;
        letters: string[];
    };
    noSwatch: {
        letter: string;
        swatch: string;
    };
}
/** The shopping list and the cut list, as they are shown and as cells. */
interface ListSayings {
    shoppingList: undefined;
    shoppingListOfKit: undefined;
    cutList: undefined;
    cutFrom: {
        fabric: string;
    };
    fabricKey: undefined;
    allAmounts: {
        amounts: Message[];
    };
    fabricHead: undefined;
    nameHead: undefined;
    forHead: undefined;
    neededHead: undefined;
    unitHead: undefined;
    priceHead: undefined;
    costHead: undefined;
    boltsHead: undefined;
    pieceHead: undefined;
    countHead: undefined;
    cutSizeHead: undefined;
    /** Heads of columns of lengths, with their unit. */
    neededInHead: undefined;
    widthInHead: undefined;
    lengthInHead: undefined;
    forKitsHead: {
        kits: number;
    };
    uses: {
        titles: Message[];
    };
    noPrice: undefined;
    totalLine: {
        soFar: boolean;
    };
    bolts: {
        count: number;
    };
    timesEach: {
        times: number;
        what: Message;
    };
    /** What an amount is counted in. */
    unitOf: {
        buy: Purchase;
    };
    cutSize: {
        width: Exact;
        length: Exact;
    };
    stripsTogether: undefined;
    /** The large type, and the words before it. */
    leadForKits: {
        kits: number;
        soFar: boolean;
    };
    leadTotal: {
        isKit: boolean;
        soFar: boolean;
    };
    leadBuy: {
        soFar: boolean;
    };
    money: {
        money: Money;
    };
    things: {
        count: number;
    };
}
/** What the worksheet may say. */
export interface WorksheetSayings extends LineSayings, SumSayings, GatherSayings, ListSayings {
}
export declare const say: <Code extends "money" | "summary" | "widthOfFabric" | "fabricHead" | "stripsTogether" | "bolts" | "things" | "titleOf" | "saidBy" | "somePart" | "something" | "fabricOf" | "clothOf" | "clothNamed" | "lengthFor" | "toBuy" | "allOf" | "buyRow" | "needOfParts" | "upToSteps" | "boltsRow" | "boltsOfOneKind" | "boltsOfBoth" | "boltsOfLengths" | "undeclared" | "namesNone" | "severalWidths" | "twoLengths" | "planningTogether" | "longerThanBolt" | "priceOf" | "priceOfFabric" | "priceOfPart" | "aPrice" | "pricedInOther" | "noLetter" | "sameLetter" | "negativeCloth" | "itemOf" | "unusedFabric" | "leavesOut" | "totalRow" | "sumOf" | "kitsRow" | "wholeBolts" | "notYet" | "readAsSeveral" | "noSwatch" | "shoppingList" | "shoppingListOfKit" | "cutList" | "cutFrom" | "fabricKey" | "allAmounts" | "nameHead" | "forHead" | "neededHead" | "unitHead" | "priceHead" | "costHead" | "boltsHead" | "pieceHead" | "countHead" | "cutSizeHead" | "neededInHead" | "widthInHead" | "lengthInHead" | "forKitsHead" | "uses" | "noPrice" | "totalLine" | "timesEach" | "unitOf" | "cutSize" | "leadForKits" | "leadTotal" | "leadBuy">(code: Code, ...[values]: WorksheetSayings[Code] extends undefined ? [] : [values: WorksheetSayings[Code]]) => Message<Code>;
export {};
