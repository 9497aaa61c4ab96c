import { isBlank, textOf } from '../ledger/field.js';
import { ownLength, readLength } from '../ledger/lengths.js';
import { unlessRefused } from '../ledger/refusal.js';
import { isExact, ZERO, type Exact } from '../measure/exact.js';
import type { Style } from '../measure/format.js';
import type { Message } from '../measure/message.js';
import { COTTON_WIDTH } from '../trade/conventions.js';
import type { WorkbookFabric } from './input.js';
import { letterOf } from './parts.js';
import { sayOfFlow, type FromFabric } from './flow-sayings.js';
import { swatchTrouble } from './swatch.js';

/** A fabric as it is declared, with what it looks like. */
export interface FabricOnPage extends WorkbookFabric {
  /** A colour, or the address of a picture. */
  swatch?: string | undefined;
}

/** A length as it flows to parts that may have other units. One that cannot be read flows as it is, and is wrong there too. */
export const flowing = (raw: unknown, style: Style): { value: unknown; inches?: Exact } =>
  isBlank(raw)
    ? { value: undefined }
    : unlessRefused(
        () => {
          const inches = readLength(raw, style);
          return { value: inches, inches };
        },
        () => ({ value: raw }),
      );

/** How wide a fabric is, and where that was said. */
interface Width {
  /** As it flows; undefined where nobody said it. */
  width: unknown;
  inches: Exact;
  from: Message;
}

/** The width of the cloth that flows to a part: that of its first fabric, and of each where they differ. */
export interface FlowingWidths {
  fabricWidth: unknown;
  fabricWidths?: unknown[];
  from: Message;
}

/** The fabrics declared in a worksheet, by letter; of two with one letter the first. */
export class Fabrics {
  readonly #byLetter = new Map<string, FabricOnPage>();

  constructor(
    readonly declared: FabricOnPage[],
    /** Of those that do not say their own width. */
    readonly width: unknown,
    readonly style: Style,
  ) {
    for (const fabric of declared) {
      const letter = letterOf(fabric.letter);
      if (letter && !this.#byLetter.has(letter)) this.#byLetter.set(letter, fabric);
    }
  }

  /** Empty for one without a name; undefined where no such letter is declared. */
  nameOf(letter: string): string | undefined {
    const fabric = this.#byLetter.get(letter);
    return fabric && textOf(fabric.name);
  }

  /** The letters that a part names, in order; one with a space in it, as it is declared, is taken whole: `A 1`. */
  lettersIn(written: unknown): string[] {
    const letters: string[] = [];
    for (const piece of textOf(written).split(',')) {
      const words = piece.split(/\s+/).filter(Boolean);
      while (words[0]) {
        let taken = words.length;
        while (taken > 1 && !this.#byLetter.has(words.slice(0, taken).join(' '))) taken -= 1;
        letters.push(words.splice(0, taken).join(' '));
      }
    }
    return letters;
  }

  /** A fabric's width, or the worksheet's. One that cannot be read is the narrowest, so that its part says so. */
  widthOf(letter: string): Width {
    const own = this.#byLetter.get(letter)?.fabricWidth;
    const isOwn = !isBlank(own);
    const { value: width, inches } = flowing(isOwn ? own : this.width, this.style);
    return {
      width,
      from: isOwn ? sayOfFlow('fromFabric', { letter }) : sayOfFlow('fromWorksheet'),
      inches: inches ?? (isBlank(width) ? ownLength(COTTON_WIDTH[this.style.units]) : ZERO),
    };
  }

  /** How wide the first of these is, and each of them where they differ; and where that was said. */
  widthsOf([first = '', ...others]: string[]): FlowingWidths {
    const { width: fabricWidth, inches, from } = this.widthOf(first);
    const wider = others.map((letter) => ({ letter, ...this.widthOf(letter) }));
    const differ = wider.filter((other) => !other.inches.equals(inches));
    if (!differ.length) return { fabricWidth, from };
    const shown = ({ letter, width }: { letter: string; width: unknown }): FromFabric => ({
      letter,
      width:
        width === undefined
          ? ownLength(COTTON_WIDTH[this.style.units])
          : isExact(width)
            ? width
            : textOf(width),
    });
    return {
      fabricWidth,
      fabricWidths: [{ width: fabricWidth }, ...wider].map(
        ({ width }) => width ?? COTTON_WIDTH[this.style.units],
      ),
      from: sayOfFlow('fromSeveral', { first: from, others: differ.map(shown) }),
    };
  }

  /** The widths of those that say their own. */
  get widths(): Record<string, unknown> {
    return Object.fromEntries(
      [...this.#byLetter].flatMap(([letter, { fabricWidth }]) =>
        isBlank(fabricWidth) ? [] : [[letter, this.widthOf(letter).width]],
      ),
    );
  }

  get swatches(): Map<string, string> {
    return new Map([...this.#byLetter].map(([letter, { swatch }]) => [letter, swatch ?? '']));
  }

  /** What the author has to mend in them; a page can tell what is a colour. */
  troubles(isColour: (swatch: string) => boolean): Message[] {
    return [...this.swatches].flatMap(([letter, swatch]) => swatchTrouble(letter, swatch, isColour));
  }
}
