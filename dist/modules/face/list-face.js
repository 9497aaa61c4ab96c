import { isBlank } from '../ledger/field.js';
import { ReadingFace } from './planning-face.js';
import { tableOnServer } from './server.js';
import { CELL_ATTRIBUTES, tableIn } from './table.js';

/** A face whose pieces are in the table that its author wrote inside it, or in the cells of the page. */
class ListFace extends ReadingFace {
    constructor() {
        super(...arguments);
        /** The author's own table. */
        this.table = tableOnServer();
        this.watched = {
            childList: true,
            characterData: true,
            subtree: true,
            attributeFilter: [...CELL_ATTRIBUTES],
        };
    }
    readInside() {
        this.table = tableIn(this);
        this.reckonAgain();
    }
    /** What a worksheet around it says of its fabrics, and of its pieces while they are as the page wrote them. */
    surroundings() {
        const { widths, usualWidth, caution } = this.flow?.values ?? {};
        return {
            caution: this.isAsWritten ? caution : undefined,
            ...(isBlank(this.fabricWidth) && { widths: widths, usualWidth }),
        };
    }
}

export { ListFace };
