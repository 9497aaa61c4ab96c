import { Message } from '../measure/message.js';
import { Quantity, Stated } from './quantity.js';

/** Collects the rows that a message comes from: those of every quantity in its values, at any depth. */
const rowsOf = (value, rows) => {
    if (value instanceof Quantity)
        value.rowsInto(rows);
    else if (value instanceof Stated)
        rows.add(value.row);
    else if (value instanceof Message)
        for (const part of Object.values(value.values))
            rowsOf(part, rows);
    else if (Array.isArray(value))
        for (const part of value)
            rowsOf(part, rows);
};
/** A reckoned row: its value, how it was got, and where it came from. */
class ReckonedRow {
    constructor(id, value, 
    /** A formula or a reason. */
    how, 
    /** Its name, if its id is not enough: `Border 2, sides`. */
    label, 
    /** Rows that it comes from, besides those in its formula or its reason. */
    also, 
    /** A formula for a value that is not a quantity: the length of what is bought, the sum of money, the number in words. */
    formula) {
        this.id = id;
        this.value = value;
        this.how = how;
        this.label = label;
        this.also = also;
        this.formula = formula;
        this.role = 'reckoned';
    }
    /** The ids of the rows it was reckoned from. */
    get from() {
        const rows = new Set(this.also);
        rowsOf(this.how, rows);
        return [...rows];
    }
}

export { ReckonedRow };
