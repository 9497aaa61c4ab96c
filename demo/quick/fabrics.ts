import { html, nothing, render, type TemplateResult } from 'lit';
import { textOf } from '../../src/ledger/field.js';
import { find, write } from './page.js';
import { present, type Part } from './parts.js';
import { cell } from './question.js';

/** A fabric of the quilt, with what somebody wrote about it. */
interface Cloth {
  letter: string;
  name: string;
  price: string;
  swatch: string;
  /** What it is bought in, if not by length. */
  sheet: string;
  /** What its maker has already. */
  hand: string;
}

const LETTERS = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'];
/** The first colours, so that two fabrics never look the same. */
const COLOURS = ['#d9c7a3', '#3f6f86', '#b9bdc1', '#a63d40', '#6f8f5b', '#8a6a9b', '#d08c3c', '#48505c'];
const KEYS = ['name', 'price', 'swatch', 'sheet', 'hand'] as const;

/** What a fabric may be bought in. */
const BOUGHT = { '': 'a length', 'fat-quarter': 'fat quarters', 'fat-eighth': 'fat eighths' } as const;

/** Parts whose fabric is said elsewhere: batting is no fabric, and a cut list and a chart name the fabric of every piece. */
const ELSEWHERE = ['batting', 'cutting', 'block'];

let cloths: Cloth[] = [];
const section = find('#fabrics');
const place = find('.fabrics', section);

const colourOf = (letter: string): string => COLOURS[LETTERS.indexOf(letter) % COLOURS.length] ?? '';
const fabric = (letter: string): Cloth => ({
  letter,
  name: '',
  price: '',
  swatch: colourOf(letter),
  sheet: '',
  hand: '',
});
const called = ({ letter, name }: Cloth): string => (name ? `${letter} · ${name}` : letter);

/** Writes the fabrics into a link. Every fabric has a colour, so each has an entry. */
export const keep = (kept: URLSearchParams): void => {
  for (const cloth of cloths)
    for (const key of KEYS)
      if (cloth[key] || key === 'swatch') kept.set(`fabric.${cloth.letter}.${key}`, cloth[key]);
};

export const forget = (): void => {
  cloths = [];
};

export const recall = (kept: URLSearchParams): void => {
  for (const letter of LETTERS) {
    const texts = KEYS.map((key) => kept.get(`fabric.${letter}.${key}`));
    if (texts.every((text) => typeof text !== 'string')) continue;
    const [name, price, swatch, sheet, hand] = texts;
    const isColour = /^#[0-9a-f]{6}$/i.test(swatch ?? '');
    cloths.push({
      letter,
      name: name ?? '',
      price: price ?? '',
      swatch: isColour ? (swatch ?? '') : colourOf(letter),
      sheet: sheet && Object.hasOwn(BOUGHT, sheet) ? sheet : '',
      hand: hand ?? '',
    });
  }
};

const add = (): void => {
  const letter = LETTERS.find((one) => cloths.every((cloth) => cloth.letter !== one));
  if (letter) cloths.push(fabric(letter));
  cloths.sort((a, b) => a.letter.localeCompare(b.letter));
  changed();
  place.querySelector<HTMLInputElement>(`[data-letter=${letter}] [name=name]`)?.focus();
};

const takeAway = (letter: string): void => {
  cloths = cloths.filter((cloth) => cloth.letter !== letter);
  for (const { element } of present()) {
    const left = lettersOf(element.fabric).filter((one) => one !== letter);
    if (element.fabric) element.fabric = left.join(' ') || undefined;
  }
  changed();
  find<HTMLButtonElement>('[name=add]', place).focus();
};

/** Draws them again, and tells the page. */
const changed = (): void => {
  draw();
  place.dispatchEvent(new Event('input', { bubbles: true }));
};

const lettersOf = (fabric: string | undefined): string[] => fabric?.split(' ').filter(Boolean) ?? [];

/** What a part cuts from cloth of its own: each border, sashing and cornerstones. */
const piecesOf = ({ element: { answer, calculator, teller, fabric } }: Part): string[] => {
  const takes = answer && calculator.takes?.(answer, lettersOf(fabric));
  const titles = takes?.map(({ title }) => (title ? teller.say(title) : teller.words.title));
  return titles ?? [teller.words.title];
};

const choose = ({ element }: Part, at: number, letter: string): void => {
  const letters = lettersOf(element.fabric);
  if (at === 0 && !letter) letters.length = 0;
  else {
    // Those before it need one too: the letters are read in order.
    while (letters.length < at) letters.push(letters.at(-1) ?? letter);
    letters[at] = letter;
  }
  element.fabric = letters.filter(Boolean).join(' ') || undefined;
  changed();
};

const chooser = (part: Part): TemplateResult[] =>
  piecesOf(part).map((title, at) => {
    const letters = lettersOf(part.element.fabric);
    const chosen = letters[at] ?? letters.at(-1) ?? '';
    const isOffered = (letter: string): boolean => cloths.some((cloth) => cloth.letter === letter);
    return html`<label>${title}
      <select @change=${(event: Event) => choose(part, at, (event.target as HTMLSelectElement).value)}>
        ${at ? nothing : html`<option value="" .selected=${!chosen}>its own cloth</option>`}
        ${chosen && !isOffered(chosen) ? html`<option value=${chosen} .selected=${true}>${chosen}</option>` : nothing}
        ${cloths.map((cloth) => html`<option value=${cloth.letter} .selected=${cloth.letter === chosen}>${called(cloth)}</option>`)}
      </select></label>`;
  });

/** A price is for what the shop counts in. */
const priced = ({ sheet }: Cloth): string => {
  const each = cell('increment').value.endsWith('m') ? 'metre' : 'yard';
  return `Price of a ${sheet ? sheet.replace('-', ' ') : each}`;
};

/** What somebody wrote in the shopping list. */
export const readBack = (target: EventTarget | null): void => {
  if (!(target instanceof Element) || target.localName !== 'quilt-fabric') return;
  const { letter, atHand } = target as HTMLElementTagNameMap['quilt-fabric'];
  for (const cloth of cloths) if (cloth.letter === letter) cloth.hand = textOf(atHand);
};

const rowOf = (cloth: Cloth): TemplateResult => {
  const type = (key: (typeof KEYS)[number]) => (event: Event) => {
    cloth[key] = (event.target as HTMLInputElement | HTMLSelectElement).value;
    draw();
  };
  const { letter, name, price, swatch, sheet, hand } = cloth;
  return html`<fieldset data-letter=${letter}>
    <legend>Fabric ${letter}</legend>
    <label>Name <input name="name" autocomplete="off" .value=${name} @input=${type('name')} /></label>
    <label>${priced(cloth)} <input name="price" inputmode="decimal" autocomplete="off" .value=${price} @input=${type('price')} /></label>
    <label>Colour <input type="color" name="swatch" .value=${swatch} @input=${type('swatch')} /></label>
    <label>Bought in <select name="sheet" @change=${type('sheet')}>${Object.entries(BOUGHT).map(([code, words]) => html`<option value=${code} .selected=${code === sheet}>${words}</option>`)}</select></label>
    <label>I have <input name="hand" autocomplete="off" placeholder="9 fat quarters" .value=${hand} @input=${type('hand')} /></label>
    <button type="button" @click=${() => takeAway(letter)}>Take away ${letter}</button>
  </fieldset>`;
};

/** Draws the fabrics, what is cut from each, and their elements for the worksheet. */
export const draw = (): void => {
  const used = present().filter(({ name }) => !ELSEWHERE.includes(name));
  render(
    html`${cloths.map(rowOf)}
    ${cloths.length < LETTERS.length ? html`<button type="button" name="add" @click=${add}>Add a fabric</button>` : nothing}
    ${cloths[0] ? html`<div class="uses">${used.map(chooser)}</div>` : nothing}
    ${cloths.map(({ letter, name, price, swatch, sheet, hand }) => html`<quilt-fabric letter=${letter} name=${name} price=${price} swatch=${swatch} sheet=${sheet || nothing} .atHand=${hand || undefined}></quilt-fabric>`)}`,
    place,
  );
  write(find('.said', section), cloths.map(called).join(', ') || 'none named');
};
