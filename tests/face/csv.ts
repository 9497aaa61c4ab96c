/**
 * Reads CSV by RFC 4180, section 2, character by character, and refuses what it does not allow; `between` is what stands
 * between its fields. It has nothing in common with what writes it.
 */
export const readCsv = (text: string, between = ','): string[][] => {
  const records: string[][] = [];
  let record: string[] = [];
  let at = 0;
  const quotedField = (): string => {
    let value = '';
    for (at += 1; at < text.length; at += 1) {
      if (text[at] !== '"') value += text[at];
      else if (text[at + 1] === '"') value += text[(at += 1)];
      else {
        at += 1;
        return value;
      }
    }
    throw new Error('A quoted field does not end.');
  };
  const plainField = (): string => {
    const start = at;
    while (at < text.length && text[at] !== between && !text.startsWith('\r\n', at)) {
      if (/["\r\n]/.test(text[at]!))
        throw new Error(`${JSON.stringify(text[at])} in a field without quotes, at ${at}`);
      at += 1;
    }
    return text.slice(start, at);
  };
  while (at < text.length) {
    record.push(text[at] === '"' ? quotedField() : plainField());
    if (text[at] === between) at += 1;
    else if (text.startsWith('\r\n', at)) {
      at += 2;
      records.push(record);
      record = [];
    } else throw new Error(`Neither a separator nor a line end after a field, at ${at}`);
  }
  if (record.length > 0) throw new Error('The last line does not end.');
  return records;
};
