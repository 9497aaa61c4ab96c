// Written by the build, from custom-elements.json.
import type { DetailedHTMLProps, HTMLAttributes } from 'react';
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

type Props<E, P> = Omit<DetailedHTMLProps<HTMLAttributes<E>, E>, keyof P> & P;

/** Props of `<quilt-backing>` in JSX. */
export interface QuiltBackingProps extends Props<QuiltBacking, QuiltBackingProperties> {
  /** The print has a right way up, so panels may not be turned. Default false. */
  'one-way'?: QuiltBacking['oneWay'] | undefined;
  /** A pieced strip may take the place of the last panel: less cloth, more seams. Default false. */
  'pieced-strip'?: QuiltBacking['piecedStrip'] | undefined;
  /** Usable width of the cloth, selvages off. Default `40 in`, or `105 cm` in metric. */
  'fabric-width'?: QuiltBacking['fabricWidth'] | undefined;
}

/** Props of `<quilt-batting>` in JSX. */
export interface QuiltBattingProps extends Props<QuiltBatting, QuiltBattingProperties> {
}

/** Props of `<quilt-binding>` in JSX. */
export interface QuiltBindingProps extends Props<QuiltBinding, QuiltBindingProperties> {
  /** What the strips are cut to. A length. Default `2 1/2 in` (`6.5 cm` in metric), or reckoned from `finished`. */
  'strip-width'?: QuiltBinding['stripWidth'] | undefined;
  /** Usable width of the cloth, selvages off. Default `40 in`, or `105 cm` in metric. */
  'fabric-width'?: QuiltBinding['fabricWidth'] | undefined;
}

/** Props of `<quilt-block>` in JSX. */
export interface QuiltBlockProps extends Props<QuiltBlock, QuiltBlockProperties> {
  /** The prints have a right way up, so pieces may not be turned. Default false. */
  'one-way'?: QuiltBlock['oneWay'] | undefined;
  /** Usable width of the cloth, selvages off. Default `40 in`, or `105 cm` in metric. */
  'fabric-width'?: QuiltBlock['fabricWidth'] | undefined;
}

/** Props of `<quilt-borders>` in JSX. */
export interface QuiltBordersProps extends Props<QuiltBorders, QuiltBordersProperties> {
  /** Usable width of the cloth, selvages off. Default `40 in`, or `105 cm` in metric. */
  'fabric-width'?: QuiltBorders['fabricWidth'] | undefined;
}

/** Props of `<quilt-cutting>` in JSX. */
export interface QuiltCuttingProps extends Props<QuiltCutting, QuiltCuttingProperties> {
  /** The print has a right way up, so pieces may not be turned. Default false. */
  'one-way'?: QuiltCutting['oneWay'] | undefined;
  /** Usable width of the cloth, selvages off. Default `40 in`, or `105 cm` in metric. */
  'fabric-width'?: QuiltCutting['fabricWidth'] | undefined;
}

/** Props of `<quilt-fabric>` in JSX. */
export interface QuiltFabricProps extends Props<QuiltFabric, QuiltFabricProperties> {
  /** Its usable width, selvages off. A length. Default: the worksheet's. */
  'fabric-width'?: QuiltFabric['fabricWidth'] | undefined;
  /** What the reader has of it already: `9 fat quarters`, `1 1/2 yd`, `9 x 40 in`, or several of these with commas between. If the
attribute is there, even empty, the shopping list has a cell for it. What the reader writes in the cell is in this property, and
the fabric fires `input` and `change`, so that a page can keep it. Nothing is stored. Default none. */
  'at-hand'?: QuiltFabric['atHand'] | undefined;
}

/** Props of `<quilt-sleeve>` in JSX. */
export interface QuiltSleeveProps extends Props<QuiltSleeve, QuiltSleeveProperties> {
  /** What the strip is cut to. A length. Default `8 1/2 in`, or `22 cm` in metric. */
  'strip-width'?: QuiltSleeve['stripWidth'] | undefined;
  /** Usable width of the cloth, selvages off. Default `40 in`, or `105 cm` in metric. */
  'fabric-width'?: QuiltSleeve['fabricWidth'] | undefined;
}

/** Props of `<quilt-top>` in JSX. */
export interface QuiltTopProps extends Props<QuiltTop, QuiltTopProperties> {
  /** Usable width of the cloth, selvages off. Default `40 in`, or `105 cm` in metric. */
  'fabric-width'?: QuiltTop['fabricWidth'] | undefined;
}

/** Props of `<quilt-worksheet>` in JSX. */
export interface QuiltWorksheetProps extends Props<QuiltWorksheet, QuiltWorksheetProperties> {
  /** The shopping list has a cell for every fabric, where the reader writes what she has of it. Default false. */
  'at-hand'?: QuiltWorksheet['atHand'] | undefined;
  /** Usable width of the cloth, selvages off. Default `40 in`, or `105 cm` in metric. */
  'fabric-width'?: QuiltWorksheet['fabricWidth'] | undefined;
}

declare module 'react' {
  namespace JSX {
    interface IntrinsicElements {
      'quilt-backing': QuiltBackingProps;
      'quilt-batting': QuiltBattingProps;
      'quilt-binding': QuiltBindingProps;
      'quilt-block': QuiltBlockProps;
      'quilt-borders': QuiltBordersProps;
      'quilt-cutting': QuiltCuttingProps;
      'quilt-fabric': QuiltFabricProps;
      'quilt-sleeve': QuiltSleeveProps;
      'quilt-top': QuiltTopProps;
      'quilt-worksheet': QuiltWorksheetProps;
    }
  }
}
