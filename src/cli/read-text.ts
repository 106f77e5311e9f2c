import { accept, type Result, refuse } from '../quantity/problem.ts';
import { cliProblem } from './problems.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

/** The most bytes that are read: a book of a long line with its joins stays under 1 MB. */
export const largestFile = 5 * 1024 * 1024;

/** What a file should hold, and the most bytes of it that are read. */
export interface WantedText {
  readonly what: 'book' | 'records' | 'readings' | 'reply' | 'witnessFile' | 'columns';
  readonly most: number;
}

/** The text of a file or of standard input, or why it is none; the path is what the person typed. */
export const readText = async (
  path: string,
  world: World,
  { what, most }: WantedText = { what: 'book', most: largestFile },
): Promise<Result<string>> => {
  const expected = words.say(`cli.wanted.${what}`);
  const bytes = await world.readBytes(path, most);
  if (!bytes.ok) return bytes;
  const zero = bytes.value.indexOf(0);
  const first = [...bytes.value.subarray(0, 4)].map((byte) => byte.toString(16).padStart(2, '0')).join(' ');
  const notText = refuse(cliProblem('CLI_FILE_NOT_TEXT', path, { given: first, allowed: expected }));
  if (zero >= 0) return notText;
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes.value);
    if (text.trim() === '') return refuse(cliProblem('CLI_FILE_EMPTY', path, { allowed: expected }));
    return accept(text);
  } catch {
    return notText;
  }
};
