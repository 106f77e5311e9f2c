import { accept, type Result, refuse } from '../quantity/problem.ts';
import type { Encoding } from './csv/encodings.ts';
import { readCsv } from './csv/read-csv.ts';
import { textOfBytes } from './csv/text-of-bytes.ts';
import { limits } from './limits.ts';
import { problemOf } from './problem-of.ts';
import type { Tab } from './table.ts';
import { readXlsx } from './xlsx/read-xlsx.ts';

const beginsWith = (bytes: Uint8Array, ...mark: readonly number[]): boolean =>
  mark.every((byte, at) => bytes[at] === byte);

/**
 * The tabs of a file that came from outside, whatever it calls itself: a spreadsheet (xlsx), or text (csv).
 *
 * Symbols  said  how the letters of a text file are written, where a person says it; a spreadsheet says it itself
 * Problems TABLE_TOO_LARGE, TABLE_OLD_OR_LOCKED, TABLE_NOT_TEXT, TABLE_NOT_IN_ENCODING, and those of `readXlsx` and `readCsv`
 * Cost     O(size), which the limits bound
 */
export const readTable = (bytes: Uint8Array, said?: Encoding): Result<readonly Tab[]> => {
  if (bytes.length > limits.file) {
    const more = { given: String(bytes.length), allowed: String(limits.file) };
    return refuse(problemOf('TABLE_TOO_LARGE', '', more));
  }
  if (beginsWith(bytes, 0x50, 0x4b, 0x03, 0x04) || beginsWith(bytes, 0x50, 0x4b, 0x05, 0x06))
    return readXlsx(bytes);
  // the mark of compound files: the older binary spreadsheet, and any one that is encrypted
  if (beginsWith(bytes, 0xd0, 0xcf, 0x11, 0xe0)) return refuse(problemOf('TABLE_OLD_OR_LOCKED'));
  const read = textOfBytes(bytes, said);
  if (!read.ok) return read;
  const { text, taken } = read.value;
  const tab = readCsv(text);
  return tab.ok ? accept([taken === undefined ? tab.value : { ...tab.value, taken }]) : tab;
};
