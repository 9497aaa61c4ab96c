// Written by the build, from custom-elements.json.
import type { HTMLAttributes, PublicProps } from 'vue';
import type { QuiltBacking } from './elements/backing/backing.js';
import type { QuiltBatting } from './elements/batting/batting.js';
import type { QuiltBinding } from './elements/binding/binding.js';
import type { QuiltBlock } from './elements/block/block.js';
import type { QuiltBorders } from './elements/borders/borders.js';
import type { QuiltCutting } from './elements/cutting/cutting.js';
import type { QuiltFabric } from './elements/fabric/fabric.js';
import type { QuiltSleeve } from './elements/sleeve/sleeve.js';
import type { QuiltTop } from './elements/top/top.js';
import type { QuiltWorksheet } from './elements/worksheet/worksheet.js';
import type {
  QuiltBackingProperties,
  QuiltBattingProperties,
  QuiltBindingProperties,
  QuiltBlockProperties,
  QuiltBordersProperties,
  QuiltCuttingProperties,
  QuiltFabricProperties,
  QuiltSleeveProperties,
  QuiltTopProperties,
  QuiltWorksheetProperties,
} from './properties.js';

/** An event, as a listener on the element gets it. */
type Heard<E> = Event & { readonly currentTarget: E };

interface Listeners<E> {
  /** Something was typed; `result` already follows it. */
  onInput?: ((event: Heard<E>) => void) | undefined;
  /** A cell was left with another value. */
  onChange?: ((event: Heard<E>) => void) | undefined;
}

type Defined<E extends HTMLElement, P> = new () => E & {
  $props: Omit<HTMLAttributes, keyof P | keyof Listeners<E>> & P & Listeners<E> & PublicProps;
};

declare module 'vue' {
  interface GlobalComponents {
    'quilt-backing': Defined<QuiltBacking, QuiltBackingProperties>;
    'quilt-batting': Defined<QuiltBatting, QuiltBattingProperties>;
    'quilt-binding': Defined<QuiltBinding, QuiltBindingProperties>;
    'quilt-block': Defined<QuiltBlock, QuiltBlockProperties>;
    'quilt-borders': Defined<QuiltBorders, QuiltBordersProperties>;
    'quilt-cutting': Defined<QuiltCutting, QuiltCuttingProperties>;
    'quilt-fabric': Defined<QuiltFabric, QuiltFabricProperties>;
    'quilt-sleeve': Defined<QuiltSleeve, QuiltSleeveProperties>;
    'quilt-top': Defined<QuiltTop, QuiltTopProperties>;
    'quilt-worksheet': Defined<QuiltWorksheet, QuiltWorksheetProperties>;
  }
}
