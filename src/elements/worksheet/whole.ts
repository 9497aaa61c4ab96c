import type { Answer } from '../../ledger/answer.js';
import { textOf } from '../../ledger/field.js';
import type { CalculatorName } from '../../calculators/calculator.js';
import type { BindingAnswer } from '../../calculators/binding/shape.js';
import type { BordersAnswer } from '../../calculators/borders/shape.js';
import type { TopAnswer } from '../../calculators/top/shape.js';
import type { Face } from '../../face/face.js';
import type { BlockKind, QuiltParts } from '../../workbook/whole-quilt.js';
import type { QuiltBlock } from '../block/block.js';

/** A block in the places of the top, and how many there are. Undefined if nobody can read that. */
export interface CountedBlock {
  part: QuiltBlock;
  count: number | undefined;
}

const kindOf = ({ part, count = 0 }: CountedBlock): BlockKind => ({
  name: textOf(part.name).trim(),
  count,
  chart: part.answer?.used.chart,
});

/** What there is of the quilt on a worksheet: the first part of each kind that has an answer. */
export const quiltOf = (parts: Face[], blocks: CountedBlock[]): QuiltParts => {
  const first = <A extends Answer>(name: CalculatorName): { answer: A; letters: string[] } | undefined => {
    for (const { calculator, answer, letters } of parts)
      if (calculator.name === name && answer) return { answer: answer as A, letters };
    return undefined;
  };
  return {
    top: first<TopAnswer>('top'),
    blocks: blocks.map(kindOf),
    borders: first<BordersAnswer>('borders'),
    binding: first<BindingAnswer>('binding'),
  };
};
