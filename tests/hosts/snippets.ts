// The pieces of code in the documents.

export interface Snippet {
  language: string;
  code: string;
  /** Its place: `README.md:42`. */
  at: string;
}

export const snippetsIn = (file: string, text: string): Snippet[] =>
  Array.from(text.matchAll(/^( *)```(\w+)\n([^]*?)^\1```$/gm), (found) => ({
    language: found[2]!,
    code: found[3]!,
    at: `${file}:${text.slice(0, found.index).split('\n').length}`,
  }));

/** Whether it is for a page; everything else in JavaScript is for Node. */
export const isOfPage = (code: string): boolean => /\b(document|window|addEventListener)\b/.test(code);
