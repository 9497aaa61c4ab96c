import type { Answer } from '../ledger/answer.js';
import { isBlank } from '../ledger/field.js';
import type { ListSurroundings } from '../calculators/cutting/plan-shape.js';
import { ReadingFace } from './planning-face.js';
import { tableOnServer } from './server.js';
import { CELL_ATTRIBUTES, tableIn, type Table } from './table.js';

/** A face whose pieces are in the table that its author wrote inside it, or in the cells of the page. */
export abstract class ListFace<A extends Answer = Answer> extends ReadingFace<A> {
  /** The author's own table. */
  protected table: Table | undefined = tableOnServer();

  protected override readonly watched = {
    childList: true,
    characterData: true,
    subtree: true,
    attributeFilter: [...CELL_ATTRIBUTES],
  };

  protected override readInside(): void {
    this.table = tableIn(this);
    this.reckonAgain();
  }

  /** Whether the pieces are still those that the page wrote. */
  abstract get isAsWritten(): boolean;

  /** What a worksheet around it says of its fabrics, and of its pieces while they are as the page wrote them. */
  protected surroundings(): ListSurroundings {
    const { widths, usualWidth, caution } = this.flow?.values ?? {};
    return {
      caution: this.isAsWritten ? caution : undefined,
      ...(isBlank(this.fabricWidth) && { widths: widths as ListSurroundings['widths'], usualWidth }),
    };
  }
}
