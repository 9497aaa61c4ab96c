import type { Purchase } from '../ledger/purchase.js';
import type { FlowSayings } from '../workbook/flow-sayings.js';
import { type Message } from '../measure/message.js';
/** A setting: what it is called, and what stands there. */
export interface Setting {
    label: string;
    value: string;
}
/** What the face says around a calculator's own words. */
export interface FaceSayings extends FlowSayings {
    buyLead: undefined;
    byItselfLead: undefined;
    /** These inputs are wrong or missing. There may be an earlier answer. */
    notReckonedYet: {
        inputs: string[];
        hasAnswer: boolean;
    };
    /** The answer as it is announced. */
    announced: {
        lead: string;
        large: string;
        cost: string;
    };
    overStock: {
        stock: string;
        takes: Purchase;
        instead: {
            way: Message;
            buy: Purchase;
        } | undefined;
    };
    wrongStock: {
        problem: Message;
    };
    strayLock: {
        text: string;
        names: string[];
    };
    valueHead: undefined;
    howHead: undefined;
    showWorking: undefined;
    hideWorking: undefined;
    changeSettings: undefined;
    hideSettings: undefined;
    /** What stands in the settings that are folded away, and the names of those that are off or empty. */
    standingSettings: {
        settings: Setting[];
        others: string[];
    };
    oneMore: undefined;
    yourOwn: undefined;
    measured: undefined;
    putBack: {
        value: string;
    };
    takeAway: {
        label: string;
    };
    entryOf: {
        label: string;
        number: number;
    };
    /** In a list to choose from: something that is not in it. */
    ofMyOwn: undefined;
    fractionKeys: undefined;
    /** What a list is cut from, if the fabrics say it; and that another can be chosen. */
    asFabrics: undefined;
    asFabricsHint: {
        hint: string;
    };
    cutCaption: undefined;
    times: {
        count: number;
    };
    cutterCaution: undefined;
    measureFirst: undefined;
    showInCentimetres: undefined;
    showInInches: undefined;
    otherPictures: {
        count: number;
    };
    takeAlong: undefined;
    copyTable: undefined;
    downloadCsv: undefined;
    downloadSpreadsheet: undefined;
    print: undefined;
    copied: undefined;
    cannotCopy: undefined;
    cannotLoad: undefined;
    rowHead: undefined;
    inchesHead: undefined;
    cutCell: {
        piece: Message;
    };
}
export declare const sayInFace: <Code extends "times" | "measured" | "ofMyOwn" | "buyLead" | "byItselfLead" | "notReckonedYet" | "announced" | "overStock" | "wrongStock" | "strayLock" | "valueHead" | "howHead" | "showWorking" | "hideWorking" | "changeSettings" | "hideSettings" | "standingSettings" | "oneMore" | "yourOwn" | "putBack" | "takeAway" | "entryOf" | "fractionKeys" | "asFabrics" | "asFabricsHint" | "cutCaption" | "cutterCaution" | "measureFirst" | "showInCentimetres" | "showInInches" | "otherPictures" | "takeAlong" | "copyTable" | "downloadCsv" | "downloadSpreadsheet" | "print" | "copied" | "cannotCopy" | "cannotLoad" | "rowHead" | "inchesHead" | "cutCell" | "fromWorksheet" | "fromFabric" | "fromPart" | "fromSeveral" | "noClothForBlocks" | "listForOtherBlocks" | "blocksForOtherPlaces">(code: Code, ...[values]: FaceSayings[Code] extends undefined ? [] : [values: FaceSayings[Code]]) => Message<Code>;
