import { accept, type Result, refuse } from '../../quantity/problem.ts';
import { problemOf } from '../problem-of.ts';

const strict = (bytes: Uint8Array, encoding: string): string | undefined => {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
};

/**
 * Text of a file whose encoding nobody says: UTF-16 by its mark, else UTF-8, else the western code page in which
 * spreadsheets still save text, without which every degree and micro sign would be lost.
 */
export const textOfBytes = (bytes: Uint8Array): Result<string> => {
  const [first, second] = bytes;
  const wide =
    first === 0xff && second === 0xfe ? 'utf-16le' : first === 0xfe && second === 0xff ? 'utf-16be' : '';
  const text = wide === '' ? (strict(bytes, 'utf-8') ?? strict(bytes, 'windows-1252')) : strict(bytes, wide);
  // no text has the character 0: it is a picture, a program, a damaged file
  return text === undefined || text.includes('\u0000') ? refuse(problemOf('TABLE_NOT_TEXT')) : accept(text);
};
