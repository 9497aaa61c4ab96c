const NOTE = '// Written by the build, from custom-elements.json.\n';

/** One member of an interface, with its words over it; `key` as it is written in the framework. */
const member = ({ name, description }, key, owner) =>
  `  /** ${description} */\n  ${/^\w+$/.test(key) ? key : `'${key}'`}?: ${owner}['${name}'] | undefined;\n`;

/** Every element with its class, its module beside the types, and what can be set on it. */
const elementsOf = ({ modules }) =>
  modules.flatMap(({ path, declarations }) =>
    declarations
      .filter(({ tagName }) => tagName)
      .map(({ name, tagName, members }) => ({
        name,
        tagName,
        module: path.replace('dist/modules/', './'),
        settable: members.filter((each) => each.kind === 'field' && !each.readonly && !each.static),
      })),
  );

const importsOf = (elements) =>
  elements.map(({ name, module }) => `import type { ${name} } from '${module}';\n`).join('');

const importsOfProperties = (elements) =>
  `import type {\n${elements.map(({ name }) => `  ${name}Properties,\n`).join('')}} from './properties.js';\n`;

const properties = (elements) =>
  NOTE +
  importsOf(elements) +
  elements
    .map(
      ({ name, tagName, settable }) =>
        `\n/** What can be set on \`<${tagName}>\`. */\nexport interface ${name}Properties {\n${settable.map((each) => member(each, each.name, name)).join('')}}\n`,
    )
    .join('');

const react = (elements) =>
  NOTE +
  "import type { DetailedHTMLProps, HTMLAttributes } from 'react';\n" +
  importsOf(elements) +
  importsOfProperties(elements) +
  '\ntype Props<E, P> = Omit<DetailedHTMLProps<HTMLAttributes<E>, E>, keyof P> & P;\n' +
  elements
    .map(({ name, tagName, settable }) => {
      const dashed = settable.filter(({ attribute, name }) => attribute && attribute !== name);
      const members = dashed.map((each) => member(each, each.attribute, name)).join('');
      return `\n/** Props of \`<${tagName}>\` in JSX. */\nexport interface ${name}Props extends Props<${name}, ${name}Properties> {\n${members}}\n`;
    })
    .join('') +
  "\ndeclare module 'react' {\n  namespace JSX {\n    interface IntrinsicElements {\n" +
  elements.map(({ name, tagName }) => `      '${tagName}': ${name}Props;\n`).join('') +
  '    }\n  }\n}\n';

const vue = (elements) =>
  NOTE +
  "import type { HTMLAttributes, PublicProps } from 'vue';\n" +
  importsOf(elements) +
  importsOfProperties(elements) +
  `
/** An event, as a listener on the element gets it. */
type Heard<E> = Event & { readonly currentTarget: E };

interface Listeners<E> {
  /** Something was typed; \`result\` already follows it. */
  onInput?: ((event: Heard<E>) => void) | undefined;
  /** A cell was left with another value. */
  onChange?: ((event: Heard<E>) => void) | undefined;
}

type Defined<E extends HTMLElement, P> = new () => E & {
  $props: Omit<HTMLAttributes, keyof P | keyof Listeners<E>> & P & Listeners<E> & PublicProps;
};

declare module 'vue' {
  interface GlobalComponents {
` +
  elements.map(({ name, tagName }) => `    '${tagName}': Defined<${name}, ${name}Properties>;\n`).join('') +
  '  }\n}\n';

/** Types for the elements in React's and in Vue's templates, by file name; they follow the manifest, so they cannot drift. */
export const frameworkTypes = (manifest) => {
  const elements = elementsOf(manifest);
  return { properties: properties(elements), react: react(elements), vue: vue(elements) };
};
