import { accept, type Problem } from '../quantity/problem.ts';
import { recordKinds } from '../record/kinds.ts';
import { importRecords, type RecordFile } from '../record/record-file.ts';
import { verifySigned } from '../record/verify-signed.ts';
import { readText, type WantedText } from './read-text.ts';
import type { World } from './world.ts';

/** A book with a hundred thousand records stays under 100 MB. */
const largestRecords = 512 * 1024 * 1024;

/** A file of exported records, as text. */
export const recordsText: WantedText = { what: 'records', most: largestRecords };

export type RecordsFile =
  | { readonly ok: true; readonly value: RecordFile }
  | {
      readonly ok: false;
      readonly problems: readonly Problem[];
      /** The file, where it is text but its records are not whole. */
      readonly heading?: string;
    };

/** Exported records out of a file, whole and as they were signed; or everything that is broken. */
export const readRecordsFile = async (path: string, world: World): Promise<RecordsFile> => {
  const text = await readText(path, world, recordsText);
  if (!text.ok) return text;
  const file = importRecords(text.value);
  if (!file.ok) return { ...file, heading: path };
  const { book, heads, records } = file.value;
  const problems = verifySigned(records, { book, heads, kinds: recordKinds });
  return problems.length > 0 ? { ok: false, problems, heading: path } : accept(file.value);
};
