import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseAst } from 'rollup/parseAst';
import { describe, expect, it } from 'vitest';
import { slimmed } from './slim-lit.mjs';

const MODULES = [
  '@lit/reactive-element/css-tag.js',
  '@lit/reactive-element/reactive-element.js',
  'lit-element/lit-element.js',
  'lit-html/lit-html.js',
].map((name) => readFileSync(fileURLToPath(new URL(`../../node_modules/${name}`, import.meta.url)), 'utf8'));
const LIT = MODULES.join('\n');

/** Lit as it is built into a page with these sources. */
const built = (ours: string): string =>
  MODULES.map((code) => {
    const slim = slimmed(code, ours, LIT);
    parseAst(slim);
    return slim;
  }).join('\n');

describe('Lit without what no source of ours can use', () => {
  const slim = built('static properties = { name: { reflect: true }, flag: { type: Boolean } };');

  it('drops members that nobody names, and reads of what only they set', () => {
    for (const name of [
      'addController',
      'removeController',
      'addInitializer',
      'startNode',
      'endNode',
      '_$EO',
    ])
      expect(slim, name).not.toContain(name);
    expect(built('this.addController(this);')).toContain('addController(t){(this._$EO??=new Set)');
  });

  it('keeps what the browser, a page or Lit itself calls', () => {
    for (const name of [
      ...['connectedCallback', 'disconnectedCallback', 'attributeChangedCallback', 'observedAttributes'],
      ...['updateComplete', 'requestUpdate', 'handleEvent', 'trustedTypes'],
    ])
      expect(slim, name).toContain(name);
  });

  it('takes style sheet objects as given, and needs no stand-ins', () => {
    expect(slim).toMatch(/\be=true,/);
    expect(slim).not.toMatch(/ShadyCSS|litNonce|PolyfillSupport|Versions/);
  });

  it('drops options and attribute types that no property is declared with', () => {
    expect(slim).not.toMatch(/\.(noAccessor|hasChanged|useDefault)\b|case (Number|Object|Array):/);
    expect(slim).toContain('case Boolean:');
    const more = built('x = { hasChanged: () => true, type: Number };');
    expect(more).toMatch(/\.hasChanged\b/);
    expect(more).toMatch(/case Number:.*case Object:case Array:/);
  });

  it('keeps what directives set where our sources use one', () => {
    expect(slim).not.toContain('_$litDirective$');
    expect(slim).toMatch(/function \w+\(part, value\) \{ return value; \}/);
    const directive = 'class Directive { _$AT(t, e, i) { this._$Ct = t; } }; x = { _$litDirective$: t };';
    expect(slimmed(MODULES[3]!, '', LIT + directive)).toMatch(/_\$litDirective\$;.*_\$AT\(/);
  });

  it('drops what only directives read of a template’s parts, and MathML, where no source uses them', () => {
    expect(slim).not.toMatch(/setConnected|_\$AU|_\$Cv|_\$AN|6===|this\.type=|3===/);
    expect(slim).toMatch(/"@"===\w\[1\]/);
    const [html] = MODULES.slice(3);
    const directive = 'class Directive { _$AT(t, e, i) { this._$Ct = t; } }; x = { _$litDirective$: t };';
    const kept = slimmed(html!, 'mathml`<mi>x</mi>`', LIT + directive);
    expect(kept).toMatch(/get _\$AU\(\).*6===.*setConnected/);
    expect(kept).toContain('3===');
  });

  it('puts an undefined in brackets, so that code that reads from it or calls it does no harm', () => {
    expect(slimmed('class A { a() { this._$Xy?.forEach(b), this._$Xy?.(1) } }', '.a', '')).toBe(
      'class A { a() { (void 0)?.forEach(b), (void 0)?.(1) } }',
    );
  });
});
