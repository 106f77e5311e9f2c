/** Records of a text, cut at one delimiter; `open` is the row of a quotation mark that is never closed. */
export interface CutText {
  readonly records: readonly (readonly string[])[];
  readonly open?: number;
}

const isEnd = (char: string | undefined): boolean => char === '\n' || char === '\r';

/**
 * Cuts text into records and cells (RFC 4180), and forgives what hands and programs do to it: line ends of any
 * kind, a quotation mark inside a plain cell, letters behind a closing one.
 *
 * Symbols  most  records after which no more is read, for a first look
 * Cost     O(length)
 */
export const cutCsv = (text: string, delimiter: string, most = Number.POSITIVE_INFINITY): CutText => {
  const records: string[][] = [];
  let record: string[] = [];
  let at = 0;
  while (at < text.length && records.length < most) {
    let cell = '';
    if (text[at] === '"') {
      at += 1;
      for (;;) {
        const close = text.indexOf('"', at);
        if (close < 0) return { records, open: records.length + 1 };
        cell += text.slice(at, close);
        at = close + 1;
        if (text[at] !== '"') break;
        cell += '"';
        at += 1;
      }
    }
    const from = at;
    while (at < text.length && text[at] !== delimiter && !isEnd(text[at])) at += 1;
    record.push(cell + text.slice(from, at));
    if (text[at] === delimiter) {
      at += 1;
      // a delimiter at the very end is followed by an empty cell
      if (at < text.length) continue;
      record.push('');
    } else if (at < text.length) at += text[at] === '\r' && text[at + 1] === '\n' ? 2 : 1;
    records.push(record);
    record = [];
  }
  return { records };
};
