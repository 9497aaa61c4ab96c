import { html, LitElement, type TemplateResult } from 'lit';

/** The least that a sheet could be: rows of a word, a cell and a reckoned value, all reckoned and drawn as one types. */
export class PlainTable extends LitElement {
  static override properties = { rows: { type: Number }, first: { state: true } };
  declare rows: number;
  declare first: number;

  constructor() {
    super();
    this.rows = 20;
    this.first = 58;
  }

  #typed = ({ target }: Event): void => {
    this.first = Number((target as HTMLInputElement).value);
  };

  #row = (_: unknown, at: number): TemplateResult =>
    html`<tr>
      <th scope="row"><label for="c${at}">Row ${at}</label></th>
      <td><input id="c${at}" .value=${String(this.first + at)} /></td>
      <td>${this.first} + ${at} = ${this.first + at} in</td>
    </tr>`;

  protected override render(): TemplateResult {
    return html`<table @input=${this.#typed}>
      ${Array.from({ length: this.rows }, this.#row)}
    </table>`;
  }
}

customElements.define('plain-table', PlainTable);
