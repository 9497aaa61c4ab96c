import type { PropertyDeclarations } from 'lit';
import type { Answer } from '../ledger/answer.js';
import type { Setting } from '../words/face-sayings.js';
import type { WorkingRow } from '../words/told.js';
import { Typed } from './typed.js';
/** A typed field of which a reader sees at first only what she has to: the rest is folded away until she asks for it. */
export declare abstract class Folding<A extends Answer = Answer> extends Typed<A> {
    #private;
    static properties: PropertyDeclarations;
    /** Whether the working shows at first: `open`, or `folded` until a reader presses “Show the working”. Default `folded`. */
    working: 'open' | 'folded' | undefined;
    /** Whether its lists are folded away at first. */
    protected readonly foldsLists: boolean;
    /** Whether this is open: the working, the settings, a list by its caption. */
    protected isOpen(what: string): boolean;
    /** Opens or closes it. */
    protected setOpen(what: string, open: boolean): void;
    /** Whether a row is a setting that nobody gave. */
    protected isSetting({ id, role }: WorkingRow): boolean;
    /** Whether a row is folded away. A reader always sees what she wrote and what is wrong. */
    protected isFolded(row: WorkingRow): boolean;
    /** The settings that nobody gave, in short. The price is only of use to a shop, so an empty one is left out. */
    protected standing(rows: WorkingRow[]): {
        settings: Setting[];
        others: string[];
    };
}
