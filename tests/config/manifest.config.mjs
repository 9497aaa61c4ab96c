const PLAIN = /^(?:\s|\||string|number|boolean|undefined|'[^']*')+$/;

const isPublic = ({ name, privacy = 'public' }) => privacy === 'public' && !/^[_#]|Callback$/.test(name);
const isAttribute = (member) =>
  member.kind === 'field' && !member.static && !member.readonly && PLAIN.test(member.type?.text ?? '');
const dashed = (name) => name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

/** Keeps what is public. A property that a person can write is an attribute too, of the same name with dashes. */
const withAttributes = (declaration) => {
  declaration.members = declaration.members?.filter(isPublic) ?? [];
  // Only a documented event has a description; one that the analyzer guessed has none.
  declaration.events = declaration.events?.filter(({ description }) => description);
  declaration.attributes = declaration.members.filter(isAttribute).map((member) => {
    member.attribute = dashed(member.name);
    const { name: fieldName, type, description, inheritedFrom } = member;
    return { name: member.attribute, type, description, fieldName, ...(inheritedFrom && { inheritedFrom }) };
  });
};

/** The module that registers an element, beside the one that declares it. */
const registering = ({ path, declarations }) => ({
  kind: 'javascript-module',
  path: path.replace(/[^/]+$/, 'define.ts'),
  declarations: [],
  exports: declarations
    .filter(({ tagName }) => tagName)
    .map(({ tagName, name }) => ({
      kind: 'custom-element-definition',
      name: tagName,
      declaration: { name, module: path },
    })),
});

/** Every reference to a module in one form: the path of the source file. */
const withSourcePaths = (value) => {
  for (const [key, inner] of Object.entries(value ?? {})) {
    if (key === 'module' && typeof inner === 'string')
      value[key] = inner.replace(/^\//, '').replace(/\.js$/, '.ts');
    else if (typeof inner === 'object') withSourcePaths(inner);
  }
};

/** Says what is public about the elements, and in an order that does not depend on how the files were found. */
const publicAndInOrder = {
  name: 'public-and-in-order',
  packageLinkPhase({ customElementsManifest: manifest }) {
    const classes = manifest.modules.flatMap((module) => {
      const declarations = module.declarations.filter(({ kind }) => kind === 'class');
      declarations.forEach(withAttributes);
      const names = declarations.map(({ name }) => name);
      const exports = module.exports.filter(({ name }) => names.includes(name));
      return names.length > 0 && exports.length > 0 ? [{ ...module, declarations, exports }] : [];
    });
    const elements = classes.filter(({ declarations }) => declarations.some(({ tagName }) => tagName));
    manifest.modules = [...classes, ...elements.map(registering)].sort((a, b) => (a.path < b.path ? -1 : 1));
    withSourcePaths(manifest.modules);
  },
};

export default {
  globs: ['src/elements/*/*.ts', 'src/sheet/**/*.ts'],
  litelement: true,
  packagejson: false,
  plugins: [publicAndInOrder],
};
