/** Equal pieces that a search keeps together, in whole steps of the grid. */
export interface Lot {
  /** The piece's place in the list that was asked for. */
  piece: number;
  width: number;
  height: number;
  count: number;
  /** Whether it is turned by a quarter already, because it fits only that way. */
  over: boolean;
  /** Whether it may be turned by a quarter from here. */
  turn: boolean;
}

/** Equal pieces side by side or stacked. */
export interface Block {
  lot: number;
  turned: boolean;
  x: number;
  y: number;
  across: number;
  down: number;
}

/** Part of a sheet, from edge to edge. `times` equal bands lie below each other; `blocks` are those of the first one. */
interface Band {
  y: number;
  height: number;
  times: number;
  blocks: Block[];
}

export interface Layout {
  /** Cloth bought by length is one sheet. */
  sheets: { bands: Band[]; times: number }[];
  /** Length of cloth used, or how many sheets. */
  used: number;
  /** Area of what found no place; 0 if everything did. */
  unplaced: number;
}

/** How to place the lots. The search changes this. */
export interface Recipe {
  /** The order in which lots are offered to every gap. */
  order: number[];
  /** Lots that are offered turned first. */
  turned: boolean[];
  /** Lots beside which the cloth is cut lengthwise first, if either cut works. */
  lengthwise: boolean[];
}

/** How a gap may be cut: in any way, into the columns of a strip, or into the stack of a column. */
type Stage = 'free' | 'strip' | 'column';

/** How many more lots to try for a better fit after one was found. */
const LOOKS = 200;

/** How a lot fits a gap: one more for each direction in which it leaves no room. */
const NOT = 0;
const LOOSELY = 1;
const EXACTLY = 3;

/**
 * Places lots by a recipe. Each gap takes the first lot that fits it exactly in both directions, or in one, or at all. A cut through
 * the gap then leaves two smaller gaps. So every layout can be cut from edge to edge. This is the innermost loop of every search:
 * it works on plain arrays of numbers, so that it makes few objects.
 */
export class Filler {
  /** Area of all pieces. */
  readonly area: number;
  /** How many lots were tried in how many gaps: the cost of the search. */
  effort = 0;
  readonly #lots: Lot[];
  readonly #width: number;
  readonly #height: number | undefined;
  readonly #widths: Float64Array;
  readonly #heights: Float64Array;
  /** Which lots may be turned by a quarter. */
  readonly #turns: Uint8Array;
  readonly #slimmest: number;
  /** How many pieces of each lot are left. */
  readonly #left: Int32Array;
  /** How many pieces of each lot some bands take, while they are cut again. */
  readonly #uses: Int32Array;
  /** The lots in the order of the recipe, as a linked list: each names the next, and the last place names the first. */
  readonly #next: Int32Array;
  #recipe: Recipe = { order: [], turned: [], lengthwise: [] };
  #stripsOnly = false;
  #pieces = 0;
  #placed = 0;
  #blocks: Block[] = [];
  /** The lot for the next gap, and whether it lies turned. */
  #chosen = 0;
  #turned = false;

  /** @param height of a sheet; cloth without end has none. */
  constructor(lots: Lot[], width: number, height?: number) {
    this.#lots = lots;
    this.#width = width;
    this.#height = height;
    this.#widths = Float64Array.from(lots, (lot) => lot.width);
    this.#heights = Float64Array.from(lots, (lot) => lot.height);
    this.#turns = Uint8Array.from(lots, (lot) => Number(lot.turn));
    this.#slimmest = Math.min(...this.#widths, ...this.#heights);
    this.area = lots.reduce((total, lot) => total + lot.count * lot.width * lot.height, 0);
    this.#left = new Int32Array(lots.length);
    this.#uses = new Int32Array(lots.length);
    this.#next = new Int32Array(lots.length + 1);
  }

  /** Places as much as fits on a length of cloth, or on a number of sheets. */
  layOut(by: Recipe, within: number, inStrips: boolean): Layout {
    this.#start(by, inStrips);
    const sheets: Layout['sheets'] = [];
    let used = 0;
    if (this.#height === undefined) {
      const bands = this.#fillSheet(within);
      sheets.push({ bands, times: 1 });
      for (const band of bands)
        for (const block of band.blocks) used = Math.max(used, this.#endOf(block, band));
    } else
      while (this.#pieces && used < within) {
        const bands = this.#fillSheet(this.#height);
        const times = 1 + this.#repeat(bands, within - used - 1);
        sheets.push({ bands, times });
        used += times;
      }
    const unplaced = this.#pieces ? Math.max(this.area - this.#placed, Number.MIN_VALUE) : 0;
    return { sheets, used, unplaced };
  }

  #start(by: Recipe, inStrips: boolean): void {
    const lots = this.#lots;
    this.#recipe = by;
    this.#stripsOnly = inStrips;
    this.#pieces = 0;
    this.#placed = 0;
    this.effort += lots.length;
    let last = lots.length;
    for (const lot of by.order) {
      last = this.#next[last] = lot;
      this.#pieces += this.#left[lot] = lots[lot]!.count;
    }
    this.#next[last] = lots.length;
  }

  /** Where a block ends along the cloth, in the last of its equal bands. */
  #endOf({ lot, turned, y, down }: Block, { times, height }: Band): number {
    return y + down * (turned ? this.#widths : this.#heights)[lot]! + (times - 1) * height;
  }

  #fillSheet(room: number): Band[] {
    const width = this.#width;
    const bands: Band[] = [];
    for (let y = 0, h = room; this.#choose(width, h);) {
      const [across, down] = this.#turned ? [this.#heights, this.#widths] : [this.#widths, this.#heights];
      const ph = down[this.#chosen]!;
      const isWhole =
        !this.#stripsOnly && across[this.#chosen]! < width && this.#recipe.lengthwise[this.#chosen]!;
      const tall = isWhole ? h : ph;
      const blocks: Block[] = (this.#blocks = []);
      this.#fill(0, y, width, tall, this.#stripsOnly ? 'strip' : 'free', true);
      const band: Band = { y, height: tall, times: 1, blocks };
      band.times += this.#repeat([band], Math.floor(h / tall) - 1);
      bands.push(band);
      y += tall * band.times;
      h -= tall * band.times;
    }
    return bands;
  }

  #fill(x: number, y: number, w: number, h: number, stage: Stage, hasChosen = false): void {
    const left = this.#left;
    while (hasChosen || this.#choose(w, h)) {
      hasChosen = false;
      const lot = this.#chosen;
      const over = this.#turned;
      const pw = over ? this.#heights[lot]! : this.#widths[lot]!;
      const ph = over ? this.#widths[lot]! : this.#heights[lot]!;
      const across = ph === h ? Math.min(left[lot]!, Math.floor(w / pw)) : 1;
      const down = pw === w && ph < h ? Math.min(left[lot]!, Math.floor(h / ph)) : 1;
      const bw = pw * across;
      const bh = ph * down;
      this.#blocks.push({ lot, turned: over, x, y, across, down });
      left[lot]! -= across * down;
      this.#pieces -= across * down;
      this.#placed += bw * bh;
      const lengthwise =
        stage === 'strip' || (stage === 'free' && (bh === h || (bw < w && this.#recipe.lengthwise[lot]!)));
      if (lengthwise) {
        if (bh < h) this.#fill(x, y + bh, bw, h - bh, stage === 'strip' ? 'column' : stage);
        x += bw;
        w -= bw;
      } else {
        if (bw < w && stage === 'free') this.#fill(x + bw, y, w - bw, bh, stage);
        y += bh;
        h -= bh;
      }
    }
  }

  /** Chooses the lot for a gap, and whether to turn it. False if none fits. */
  #choose(w: number, h: number): boolean {
    if (w < this.#slimmest || h < this.#slimmest) return false;
    // Fields are read once: the loop is faster with local names.
    const widths = this.#widths;
    const heights = this.#heights;
    const turns = this.#turns;
    const next = this.#next;
    const left = this.#left;
    const { turned } = this.#recipe;
    const end = left.length;
    let best = NOT;
    let tried = 8;
    for (let before = end, looks = LOOKS; best < EXACTLY && looks;) {
      const lot = next[before]!;
      if (lot === end) break;
      if (!left[lot]) {
        next[before] = next[lot]!;
        continue;
      }
      before = lot;
      tried++;
      if (best) looks--;
      const width = widths[lot]!;
      const height = heights[lot]!;
      const fits = width <= w && height <= h;
      const fitsOver = turns[lot] && height <= w && width <= h;
      if (!fits && !fitsOver) continue;
      const asIs = fits ? Number(width === w) + Number(height === h) + LOOSELY : NOT;
      const over = fitsOver ? Number(height === w) + Number(width === h) + LOOSELY : NOT;
      const isOver = over > asIs || (over === asIs && turned[lot]!);
      const fit = isOver ? over : asIs;
      if (fit > best) {
        best = fit;
        this.#chosen = lot;
        this.#turned = isOver;
      }
    }
    this.effort += tried;
    return best > NOT;
  }

  /** Cuts the same bands again, as often as the lots that are left allow, at most `most` times. Returns how often. */
  #repeat(bands: Band[], most: number): number {
    const left = this.#left;
    if (most < 1 || !left[bands[0]!.blocks[0]!.lot]) return 0;
    const uses = this.#uses;
    for (const band of bands)
      for (const { lot, across, down } of band.blocks) uses[lot]! += across * down * band.times;
    let times = most;
    for (const { blocks } of bands)
      for (const { lot } of blocks) times = Math.min(times, Math.floor(left[lot]! / uses[lot]!));
    for (const { blocks } of bands)
      for (const { lot } of blocks) {
        // A lot may be in several blocks.
        const count = uses[lot]! * times;
        uses[lot] = 0;
        left[lot]! -= count;
        this.#pieces -= count;
        this.#placed += count * this.#widths[lot]! * this.#heights[lot]!;
      }
    return times;
  }
}
