import ts from 'typescript';

/** Stands where a template has an expression: a character for private use, which no source contains. */
const HOLE = '\ue000';

/**
 * CSS without comments and without the whitespace that means nothing. Strings and urls stay as they are, and so does
 * the space around `+` and `-`, which arithmetic needs.
 * @param {string} css
 */
export const shorterCss = (css) =>
  css
    .replace(
      /("(?:[^"\\]|\\[^])*"|'(?:[^'\\]|\\[^])*'|url\([^)]*\))|(?:[ \t\r\n\f]|\/\*[^]*?\*\/)+/g,
      (gap, kept) => {
        if (kept) return kept;
        if (gap.includes(HOLE)) throw new Error('A comment in CSS holds an expression.');
        return ' ';
      },
    )
    .replace(
      /("(?:[^"\\]|\\[^])*"|'(?:[^'\\]|\\[^])*'|url\([^)]*\))| ?([{};,>]) ?/g,
      (_, kept, mark) => kept ?? mark,
    )
    .replace(/([{;][\w-]+): /g, '$1:')
    .replaceAll(';}', '}')
    .trim();

const shorterTag = (tag) =>
  tag.replace(/("[^"]*"|'[^']*')|[ \t\r\n\f]+/g, (_, quoted) => quoted ?? ' ').replace(/ >$/, '>');

/**
 * HTML with every run of whitespace as one space, between words and between attributes, and without comments. Never
 * less than one space, since between words it shows; attribute values, <pre> and <textarea> stay as they are.
 * @param {string} html
 */
export const shorterHtml = (html) =>
  html.replace(
    /(<!--[^]*?-->)|(<(pre|textarea|script|style)\b[^]*?<\/\3>)|(<\/?[a-zA-Z\ue000](?:"[^"]*"|'[^']*'|[^>"'])*>)|[ \t\r\n\f]+/g,
    (_, comment, whole, _name, tag) => {
      // Lit counts the expressions in a comment too, so such a comment stays.
      if (comment) return comment.includes(HOLE) ? comment : '';
      return whole ?? (tag ? shorterTag(tag) : ' ');
    },
  );

const SHORTEN = { css: shorterCss, html: shorterHtml, svg: shorterHtml };

const spansOf = (template) =>
  ts.isNoSubstitutionTemplateLiteral(template)
    ? [template]
    : [template.head, ...template.templateSpans.map((span) => span.literal)];

const rawText = (span, file) => {
  const end = span.kind === ts.SyntaxKind.TemplateHead || span.kind === ts.SyntaxKind.TemplateMiddle ? 2 : 1;
  return span.getText(file).slice(1, -end).replace(/\r\n?/g, '\n');
};

/**
 * A TypeScript transformer that shortens what Lit's `css`, `html` and `svg` templates say.
 * @type {import('typescript').TransformerFactory<import('typescript').SourceFile>}
 */
export const shorterTemplates = (context) => (file) => {
  const { factory } = context;

  const shortened = (template, shorten) => {
    const before = spansOf(template).map((span) => rawText(span, file));
    const after = shorten(before.join(HOLE)).split(HOLE);
    if (after.length !== before.length) throw new Error(`${file.fileName}: shortening lost an expression`);
    if (ts.isNoSubstitutionTemplateLiteral(template))
      return factory.createNoSubstitutionTemplateLiteral(undefined, after[0]);
    return factory.updateTemplateExpression(
      template,
      factory.createTemplateHead(undefined, after[0]),
      template.templateSpans.map((span, index) => {
        const isLast = index === template.templateSpans.length - 1;
        const create = isLast ? factory.createTemplateTail : factory.createTemplateMiddle;
        const expression = ts.visitNode(span.expression, visit);
        return factory.updateTemplateSpan(span, expression, create(undefined, after[index + 1]));
      }),
    );
  };

  const visit = (node) => {
    const shorten =
      ts.isTaggedTemplateExpression(node) && ts.isIdentifier(node.tag) && SHORTEN[node.tag.text];
    if (!shorten) return ts.visitEachChild(node, visit, context);
    const { tag, typeArguments, template } = node;
    return factory.updateTaggedTemplateExpression(node, tag, typeArguments, shortened(template, shorten));
  };
  return ts.visitNode(file, visit);
};
