import { readdirSync } from 'node:fs';
import { loaded } from '../tools/bundle.mjs';

/** The classes themselves: they say which of the inputs that all inherit each of them takes. */
const classes = await loaded(
  readdirSync('src/elements')
    .sort()
    .map((name) => `src/elements/${name}/${name}.ts`),
);

const isPublic = ({ name, privacy = 'public' }) => privacy === 'public' && !/^[_#]|Callback$/.test(name);

/** Whether this element has it, and does not merely inherit the words for it. */
const isHad = ({ name, static: isStatic, readonly }, element) =>
  !element || isStatic || readonly || name in element.prototype;

/** The value that the words `Default …` name; none where they say how one is found. */
const defaultIn = (description = '') =>
  /\bDefault:? (?:`([^`]+)`|(\d+|false))/.exec(description)?.slice(1).find(Boolean);

/** A type of many choices is written a line each. */
const oneLine = (text) => text.replace(/\s+/g, ' ').replace(/^\| /, '');

/** What of a property's type can be written as an attribute. */
const asWritten = ({ text }) => ({
  text: oneLine(text)
    .split(' | ')
    .filter((part) => !part.endsWith('[]'))
    .join(' | '),
});

/** `QuiltBacking` → `BackingResult`. */
const resultOf = (name) => `${name.replace('Quilt', '')}Result`;

/** Keeps what is public and what the element has; says the attribute of every property that has one. */
const described = (declaration) => {
  const { name } = declaration;
  const element = classes[name];
  // Asking for them is what makes Lit settle a class's properties.
  const observed = element?.observedAttributes ?? [];
  const own = (declaration.members ?? []).filter((member) => isPublic(member) && isHad(member, element));
  declaration.members = own.map((member) => {
    const { attribute } = element?.elementProperties.get(member.name) ?? { attribute: false };
    const value = member.readonly ? undefined : (member.default ?? defaultIn(member.description));
    return {
      ...member,
      type: { text: element ? member.type?.text.replace(/\bR\b/g, resultOf(name)) : member.type?.text },
      default: value,
      attribute: attribute === false ? undefined : (attribute ?? member.name.toLowerCase()),
    };
  });
  // Only a documented event has a description; one that the analyzer guessed has none.
  declaration.events = declaration.events
    ?.filter(({ description }) => description)
    .map((event) => ({ type: { text: 'Event' }, ...event }));
  // An attribute without a property has been written as one in the class's comment.
  const alone = (declaration.attributes ?? []).filter(
    ({ fieldName, description }) => !fieldName && description,
  );
  declaration.attributes = [
    ...declaration.members
      .filter(({ attribute }) => observed.includes(attribute))
      .map(({ attribute, name: fieldName, type, description, default: value, inheritedFrom }) => ({
        ...{ name: attribute, type: asWritten(type), description, default: value, fieldName },
        ...(inheritedFrom && { inheritedFrom }),
      })),
    ...alone.filter(({ name }) => !observed.includes(name)),
  ];
};

const defineBeside = (path) => path.replace(/[^/]+$/, 'define.ts');

/** The module that registers an element, beside the one that declares it. */
const registering = ({ path, declarations }) => ({
  kind: 'javascript-module',
  path: defineBeside(path),
  declarations: [],
  exports: declarations
    .filter(({ tagName }) => tagName)
    .map(({ tagName, name }) => ({
      kind: 'custom-element-definition',
      name: tagName,
      declaration: { name, module: path },
    })),
});

/** Every reference to a module in one form: the path of the file in the package. */
const withPublishedPaths = (value) => {
  for (const [key, inner] of Object.entries(value ?? {})) {
    if ((key === 'module' || key === 'path') && typeof inner === 'string')
      value[key] = inner.replace(/^\/?src\//, 'dist/modules/').replace(/\.ts$/, '.js');
    else if (typeof inner === 'object') withPublishedPaths(inner);
  }
};

/** Says what is public about the elements, and in an order that does not depend on how the files were found. */
const publicAndInOrder = {
  name: 'public-and-in-order',
  packageLinkPhase({ customElementsManifest: manifest }) {
    const elements = manifest.modules.flatMap((module) => {
      const declarations = module.declarations.filter(({ customElement }) => customElement);
      declarations.forEach(described);
      const names = declarations.map(({ name }) => name);
      const exports = module.exports.filter(({ name }) => names.includes(name));
      return names.length > 0 ? [{ ...module, declarations, exports }] : [];
    });
    const tagged = elements.filter(({ declarations }) => declarations.some(({ tagName }) => tagName));
    manifest.modules = [...elements, ...tagged.map(registering)].sort((a, b) => (a.path < b.path ? -1 : 1));
    withPublishedPaths(manifest.modules);
  },
};

export default {
  globs: ['src/elements/*/*.ts', 'src/face/**/*.ts'],
  litelement: true,
  packagejson: false,
  plugins: [publicAndInOrder],
};
