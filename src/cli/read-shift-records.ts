import type { Book } from '../book/index.ts';
import type { ShiftRecords } from '../floor/shift/index.ts';
import { accept, type Problem } from '../quantity/problem.ts';
import { allowancesOf } from '../record/allowances.ts';
import { loggedRunsOf } from '../record/logged-runs.ts';
import { trialsOf } from '../record/trials.ts';
import { readTrialsFile } from './read-fill-file.ts';
import { readRecordedFile } from './read-recorded-file.ts';
import type { World } from './world.ts';

type Read =
  | { readonly ok: true; readonly value: ShiftRecords }
  | { readonly ok: false; readonly problems: readonly Problem[]; readonly heading?: string | undefined };

/** Enough of a file to see what it is. */
const headBytes = 512;

/** Whether a file says of itself that it holds records. */
const saysRecords = async (path: string, world: World): Promise<boolean> => {
  if (path === '-') return true;
  const opened = await world.openBytes(path);
  // what can't be opened is told of by who reads it
  if (!opened.ok) return true;
  const bytes = await opened.value.read(0, Math.min(headBytes, opened.value.size));
  await opened.value.close();
  return new TextDecoder().decode(bytes).includes('"twinfloor-records"');
};

/** What was recorded on the floors: exported records, an archive, or a sheet or list of trials as `fill` takes it. */
export const readShiftRecords = async (
  path: string,
  book: Book,
  usual: { readonly floor?: string; readonly format?: string },
  world: World,
): Promise<Read> => {
  const recorded = await readRecordedFile(path, world);
  if (recorded.ok) {
    const { records, close } = recorded.value;
    await close();
    return accept({
      trials: trialsOf(records),
      allowances: allowancesOf(records),
      runs: loggedRunsOf(records),
    });
  }
  if (await saysRecords(path, world)) return recorded;
  const file = await readTrialsFile(path, book, usual, world);
  if (!file.ok) return file;
  const { values, allowances, report } = file.value;
  const unread = (report?.notUnderstood ?? []).flatMap(({ problems }) => problems);
  return unread.length > 0
    ? { ok: false, problems: unread, heading: path }
    : accept({ trials: values, ...(allowances === undefined ? {} : { allowances }) });
};
