import type { Book } from '../book/index.ts';
import { type BookAsFound, bookAsFound, onTemporarySupply } from '../floor/found/index.ts';
import type { Problem } from '../quantity/problem.ts';
import type { Call } from './command.ts';
import { cliProblem } from './problems.ts';
import { readReadingsFile } from './read-readings-file.ts';
import type { World } from './world.ts';

/** What of a book was replaced for one assessment; empty where it runs on what was promised. */
export interface LaidOver {
  readonly found?: BookAsFound;
  /** Tags of the floors that stand on their temporary supply. */
  readonly temporary?: readonly string[];
}

export type LaidBook =
  | { readonly ok: true; readonly book: Book; readonly laid: LaidOver }
  | {
      readonly ok: false;
      readonly problems: readonly Problem[];
      readonly heading?: string | undefined;
    };

/**
 * The book as a call wants it assessed: with what was read in the place of what was promised, on the supplies that are
 * there for the visit, or as it is. Readings of the lasting supply do not count on a temporary one.
 */
export const laidOver = async (book: Book, call: Call, world: World): Promise<LaidBook> => {
  const { readings: file } = call.values;
  let as = book;
  let found: BookAsFound | undefined;
  if (file !== undefined) {
    if (file === '-' && call.operands[0] === '-') {
      return { ok: false, problems: [cliProblem('CLI_INPUT_TWICE', '-')] };
    }
    const read = await readReadingsFile(file, world);
    if (!read.ok) {
      const heading = 'heading' in read ? read.heading : undefined;
      return { ok: false, problems: read.problems, heading };
    }
    found = bookAsFound(book, read.value);
    as = found.book;
  }
  if (!call.flags.has('temporary')) {
    return { ok: true, book: as, laid: found === undefined ? {} : { found } };
  }
  const floors = (as.floors ?? []).filter(
    ({ tag, temporarySupply }) =>
      temporarySupply !== undefined && (call.values.floor === undefined || call.values.floor === tag),
  );
  if (floors.length === 0) return { ok: false, problems: [cliProblem('CLI_NO_TEMPORARY', '--temporary')] };
  const temporary = floors.map(({ tag }) => tag);
  const laid = { temporary, ...(found === undefined ? {} : { found }) };
  return { ok: true, book: onTemporarySupply(as), laid };
};

/** Whether something that was read fits nowhere: the rest was assessed all the same. */
export const leftOut = ({ found }: LaidOver): boolean => (found?.refused.length ?? 0) > 0;
