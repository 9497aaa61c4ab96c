/** Two words of letters with a space between: nobody writes that for a machine. */
const SENTENCE = /\p{L}{2,}[,;:]? \p{L}{2,}/u;

/** Where people's words stand: the languages. */
const isWords = (file) => /(?:^|\/)src\/words\//.test(file);

/** Calls whose texts no reader sees. */
const UNSEEN = /^(css|RegExp)$/;

/** HTML with its tags, its attributes and its comments taken out: what a reader sees. */
const shownIn = (html) =>
  html
    .replace(/<!--[\s\S]*?-->/g, ' ')
    .replace(/<[^>]*>?/g, ' ')
    .replace(/^[^<]*>/, ' ');

/** @type {import('eslint').Rule.RuleModule} */
export const wordsStandApart = {
  meta: {
    type: 'problem',
    schema: [],
    docs: { description: 'Every sentence that a person reads stands in src/words/.' },
    messages: { sentence: 'A sentence stands outside src/words/: “{{text}}”.' },
  },
  create(context) {
    if (isWords(context.filename.replaceAll('\\', '/'))) return {};
    const check = (node, text) => {
      if (SENTENCE.test(text))
        context.report({ node, messageId: 'sentence', data: { text: text.trim().slice(0, 60) } });
    };
    const isUnseen = (node) => {
      for (let at = node.parent; at; at = at.parent) {
        if (at.type === 'TaggedTemplateExpression') return UNSEEN.test(at.tag.name ?? '');
        if (at.type === 'NewExpression' || at.type === 'CallExpression')
          return UNSEEN.test(at.callee.name ?? '');
        if (/Statement|Declaration/.test(at.type)) return false;
      }
      return false;
    };
    return {
      Literal(node) {
        // Not what is imported, nor a type.
        if (typeof node.value !== 'string' || /^(Import|Export|TS)/.test(node.parent.type)) return;
        if (!isUnseen(node)) check(node, node.value);
      },
      TemplateElement(node) {
        const { parent } = node.parent;
        const tag = parent.type === 'TaggedTemplateExpression' ? parent.tag.name : '';
        if (UNSEEN.test(tag ?? '') || isUnseen(node)) return;
        check(node, tag === 'html' || tag === 'svg' ? shownIn(node.value.raw) : node.value.raw);
      },
    };
  },
};

/** Properties and calls that hold what a reader sees. */
const SHOWN = /^(how|label|message|summary|caption|headline)$/;
const SAYING = /^(say|label|told|bought|money|formula|reckoned|cell|value)$/;
const READING =
  /^(startsWith|endsWith|includes|indexOf|split|match|matchAll|test|exec|search|slice|substring|localeCompare)$/;

const isShown = (node) =>
  (node?.type === 'MemberExpression' && SHOWN.test(node.property.name ?? '')) ||
  (node?.type === 'CallExpression' &&
    node.callee.type === 'MemberExpression' &&
    SAYING.test(node.callee.property.name ?? '') &&
    /^(t|teller)$/.test(node.callee.object.name ?? node.callee.object.property?.name ?? ''));

/** @type {import('eslint').Rule.RuleModule} */
export const wordsAreNotRead = {
  meta: {
    type: 'problem',
    schema: [],
    docs: { description: 'No code tests or splits what a reader is shown.' },
    messages: { read: 'This reads back what a person is shown. Ask the value or the code it was made from.' },
  },
  create(context) {
    if (isWords(context.filename.replaceAll('\\', '/'))) return {};
    const report = (node) => context.report({ node, messageId: 'read' });
    return {
      CallExpression(node) {
        const { callee } = node;
        if (callee.type !== 'MemberExpression' || !READING.test(callee.property.name ?? '')) return;
        if (isShown(callee.object) || node.arguments.some(isShown)) report(node);
      },
      BinaryExpression(node) {
        if (!/^[!=]==?$/.test(node.operator)) return;
        const sides = [node.left, node.right];
        if (
          sides.some(isShown) &&
          !sides.some(({ type, name }) => name === 'undefined' || type === 'Identifier')
        )
          report(node);
      },
    };
  },
};
