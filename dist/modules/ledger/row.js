import { Message } from '../measure/message.js';
import { Quantity, Stated } from './quantity.js';

/** Every quantity in a message's values, however deep, adds the rows it was reckoned from. */
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
    /** What it is called, where its id does not say it all: `Border 2, sides`. */
    label, 
    /** Rows that count beside those in its formula or its reason. */
    also, 
    /** Its value as a formula, where that is no quantity: of what is bought the length, of money its sum, of words the number in them. */
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
