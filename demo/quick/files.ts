import { download } from '../../src/face/export.js';

/** The mark of a file that this page wrote, with the number of its form. */
const MARK = 'quilt-reckoner';
const FORM = 1;
/** No quilt is this long. */
const LONGEST_FILE = 1_000_000;

/** Offers the quilt as a small file. */
export const save = (kept: URLSearchParams): void =>
  download('quilt.json', JSON.stringify({ [MARK]: FORM, quilt: Object.fromEntries(kept) }, null, 2), {
    type: 'application/json',
  });

const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
};

/** The quilt in a file, or undefined if it is not a file of this page. */
export const quiltIn = async (file: File): Promise<URLSearchParams | undefined> => {
  if (file.size > LONGEST_FILE) return undefined;
  const content = parsed(await file.text());
  if (typeof content !== 'object' || !content || !(MARK in content) || !('quilt' in content))
    return undefined;
  const { quilt } = content;
  if (typeof quilt !== 'object' || !quilt || Array.isArray(quilt)) return undefined;
  const entries = Object.entries(quilt);
  return entries.every((entry): entry is [string, string] => typeof entry[1] === 'string')
    ? new URLSearchParams(entries)
    : undefined;
};
